import { build } from "esbuild";
import { expect, it } from "vitest";
import { root } from "../harness/built.js";
import { APP, apps, DEPENDENCIES, faultsOf } from "./apps.js";

it("bundles each rule without any other (esbuild)", async () => {
  const { outputFiles } = await build({
    entryPoints: [...apps.keys()].map((id) => ({ in: APP + id, out: id })),
    bundle: true,
    format: "esm",
    write: false,
    logLevel: "silent",
    outdir: "/",
    external: DEPENDENCIES,
    plugins: [
      {
        name: "apps",
        setup: (bundler) => {
          bundler.onResolve({ filter: /^app:/ }, ({ path }) => ({ path: path.slice(APP.length), namespace: "app" }));
          bundler.onLoad({ filter: /.*/, namespace: "app" }, ({ path }) => ({
            contents: apps.get(path)!,
            resolveDir: root,
          }));
        },
      },
    ],
  });
  expect(outputFiles).toHaveLength(apps.size);
  expect(outputFiles.flatMap(({ path, text }) => faultsOf(path.replace(/^\/|\.js$/g, ""), text))).toEqual([]);
});
