import { builtinModules } from "node:module";
import tseslint from "typescript-eslint";

const nodeBuiltins = {
  // A pattern of names would also forbid the folder `../module`.
  regex: `^(node:.*|${builtinModules.filter((name) => !name.startsWith("_")).join("|")})$`,
  message: "Only src/cli may use Node built-ins; the library runs in browsers too.",
};
const decimals = {
  group: ["decimal.js", "**/quantity/decimal.js"],
  message: "Only src/quantity and src/formula compute with decimals; elsewhere, declare a formula.",
};
const makers = {
  group: ["**/quantity/quantity.js"],
  importNames: ["makeQuantity", "keptOf"],
  message: "Only src/quantity and src/formula make quantities, so that no number arises without an origin.",
};
const itself = { group: ["pv-to-grid", "pv-to-grid/*"], message: "Import the source file." };

/** What the files of a folder must not import. */
const restricted = (...patterns) => ({ "no-restricted-imports": ["error", { patterns: [itself, ...patterns] }] });

export default tseslint.config(
  { ignores: ["dist/", "coverage/", "**/*.js", "docs/examples/"] },
  { linterOptions: { reportUnusedDisableDirectives: "error" } },
  ...tseslint.configs.strictTypeChecked,
  ...tseslint.configs.stylisticTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: new URL("..", import.meta.url).pathname },
    },
    rules: {
      eqeqeq: "error",
      "no-restricted-syntax": [
        "error",
        { selector: "ExportDefaultDeclaration", message: "A name at the export is the name everywhere." },
      ],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/no-import-type-side-effects": "error",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      "@typescript-eslint/prefer-nullish-coalescing": ["error", { ignorePrimitives: { string: true } }],
      "@typescript-eslint/unbound-method": ["error", { ignoreStatic: true }],
      // Mapped types over named keys say what the keys are.
      "@typescript-eslint/consistent-indexed-object-style": "off",
      // With `noUncheckedIndexedAccess`, `!` is how a proven index is written.
      "@typescript-eslint/no-non-null-assertion": "off",
    },
  },
  {
    files: ["src/**"],
    rules: {
      ...restricted(nodeBuiltins, decimals, makers),
      "no-console": "error",
      "no-restricted-globals": ["error", "process", "Buffer", "require", "window", "document"],
    },
  },
  { files: ["src/quantity/**", "src/formula/**"], rules: restricted(nodeBuiltins) },
  {
    files: ["src/cli/**"],
    rules: { ...restricted(decimals, makers), "no-console": "off", "no-restricted-globals": "off" },
  },
  // Tools ask for a default export.
  { files: [".config/**", "test/package/installed.ts"], rules: { "no-restricted-syntax": "off" } },
);
