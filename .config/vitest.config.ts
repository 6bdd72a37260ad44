import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));
const NEEDS_BUILD = ["test/package/**/*.test.ts", "test/bundling/**/*.test.ts"];
// A browser, installed where it is missing.
const NEEDS_BROWSER = ["test/browser/**/*.test.ts"];
const SEEDS = 2 ** 31;

// Set here, once, so that every worker of a run draws from the same printed seed.
process.env["PV_SEED"] ??= String(Math.floor(Math.random() * SEEDS));

export default defineConfig({
  root,
  resolve: {
    // Examples import the package by its name; here that means the sources.
    alias: [
      { find: /^pv-to-grid$/, replacement: `${root}src/index.ts` },
      { find: /^pv-to-grid\/([a-z]+)$/, replacement: `${root}src/$1/index.ts` },
    ],
  },
  test: {
    reporters: ["default", `${root}.config/count-reporter.ts`],
    setupFiles: [`${root}test/harness/fast-check.ts`],
    projects: [
      {
        extends: true,
        test: { name: "source", include: ["test/**/*.test.ts"], exclude: [...NEEDS_BUILD, ...NEEDS_BROWSER] },
      },
      { extends: true, test: { name: "browser", include: NEEDS_BROWSER, testTimeout: 60_000 } },
      {
        extends: true,
        test: {
          name: "package",
          include: NEEDS_BUILD,
          globalSetup: `${root}test/package/installed.ts`,
          testTimeout: 120_000,
        },
      },
    ],
    coverage: { provider: "v8", include: ["src/**"], reporter: ["text"], reportsDirectory: "coverage" },
  },
});
