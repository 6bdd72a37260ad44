import { defineConfig } from "tsup";
import { entries } from "./package-map.js";

export default defineConfig({
  entry: entries(),
  outDir: "dist",
  format: ["esm", "cjs"],
  // Shared chunks in both formats: one kernel serves every subpath.
  splitting: true,
  esbuildOptions: (options) => {
    options.chunkNames = "chunks/[name]-[hash]";
  },
  target: "es2022",
  clean: true,
  // Declarations come from the compiler, one a source file; see declarations.ts.
  dts: false,
  sourcemap: false,
  removeNodeProtocol: false,
  silent: true,
});
