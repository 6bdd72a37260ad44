import { defineConfig } from "tsup";
import { entries } from "./package-map.js";

// The bundler writes an object of all that a subject exports as a bare call, which would keep the whole subject in every
// app; as a pure expression it goes with its user.
const OBJECT_OF_EXPORTS = /^var (\w+_exports) = \{\};\n__export\(\1, (\{[^}]*\})\);$/gm;
const PURE = "var $1 = /* @__PURE__ */ ((exports) => (__export(exports, $2), exports))({});";

export default defineConfig({
  entry: entries(),
  outDir: "dist",
  format: ["esm", "cjs"],
  // Shared chunks in both formats: one kernel serves every subpath.
  splitting: true,
  esbuildOptions: (options) => {
    options.chunkNames = "chunks/[name]-[hash]";
  },
  plugins: [{ name: "pure-exports", renderChunk: (code) => ({ code: code.replace(OBJECT_OF_EXPORTS, PURE) }) }],
  target: "es2022",
  clean: true,
  // Declarations come from the compiler, one a source file; see declarations.ts.
  dts: false,
  sourcemap: false,
  removeNodeProtocol: false,
  silent: true,
});
