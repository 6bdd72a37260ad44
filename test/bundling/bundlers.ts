/** The bundlers of users, each as one function from an app to the minified text that a browser would load. */
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build as esbuild } from "esbuild";
import { build as vite } from "vite";
import webpack from "webpack";

type Bundler = (entry: string, project: string) => Promise<string>;

/** Writes an app into a project and bundles it there. */
export async function bundled(bundler: Bundler, code: string, project: string): Promise<string> {
  const folder = mkdtempSync(join(project, "app-"));
  const entry = join(folder, "entry.js");
  writeFileSync(entry, code);
  return bundler(entry, folder);
}

export const bundlers: Readonly<Record<string, Bundler>> = {
  esbuild: async (entry) => {
    const options = { bundle: true, minify: true, format: "esm", platform: "browser", write: false } as const;
    const { outputFiles } = await esbuild({ ...options, entryPoints: [entry] });
    return outputFiles[0]!.text;
  },

  vite: async (entry, folder) => {
    const rolldownOptions = { input: entry, output: { entryFileNames: "bundle.js" } };
    await vite({
      root: folder,
      configFile: false,
      logLevel: "silent",
      build: { rolldownOptions, modulePreload: false, outDir: "dist", target: "es2022" },
    });
    return readFileSync(join(folder, "dist/bundle.js"), "utf8");
  },

  webpack: (entry, folder) =>
    new Promise((resolve, reject) => {
      const output = { path: folder, filename: "bundle.js" };
      webpack({ mode: "production", target: ["web", "es2022"], entry, output }, (error, stats) => {
        if (error || stats?.hasErrors()) reject(error ?? new Error(stats!.toString("errors-only")));
        else resolve(readFileSync(join(folder, "bundle.js"), "utf8"));
      });
    }),
};
