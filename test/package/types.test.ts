/** The package's types, compiled in the settings that users have. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, inject, it } from "vitest";
import { subjects } from "../../.config/package-map.js";
import { compiler, COMPILERS } from "./compilers.js";

type Compiler = typeof ts;

const OWN = ts.version;

const STRICTEST = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  noPropertyAccessFromIndexSignature: true,
  verbatimModuleSyntax: false,
  noEmit: true,
  target: ts.ScriptTarget.ES2022,
  // No library of the browser or of Node.js: the types ask for neither.
  lib: ["lib.es2022.d.ts"],
  types: [],
} satisfies ts.CompilerOptions;

const STRICT = { ...STRICTEST, exactOptionalPropertyTypes: false, noUncheckedIndexedAccess: false };
const LOOSE = { ...STRICT, strict: false, noPropertyAccessFromIndexSignature: false };

const { Node10, Node16, NodeNext, Bundler } = ts.ModuleResolutionKind;

/** How users have TypeScript find modules, and the kinds of file that they write then. */
const SETTINGS: Readonly<Record<string, { readonly files: readonly string[]; readonly options: ts.CompilerOptions }>> =
  {
    node16: { files: ["mts", "cts"], options: { module: ts.ModuleKind.Node16, moduleResolution: Node16 } },
    nodenext: { files: ["mts", "cts"], options: { module: ts.ModuleKind.NodeNext, moduleResolution: NodeNext } },
    bundler: { files: ["ts"], options: { module: ts.ModuleKind.ESNext, moduleResolution: Bundler } },
    node10: { files: ["ts"], options: { module: ts.ModuleKind.CommonJS, moduleResolution: Node10 } },
  };

const EVERY_SUBPATH = subjects()
  .map((name) => `export * as ${name} from "pv-to-grid/${name}";`)
  .join("\n");

const USE = `
import { formula } from "pv-to-grid/formula";
import { given, type Quantity } from "pv-to-grid/quantity";

const power = formula({
  id: "app/power", about: "power", source: [],
  takes: { voltage: { unit: "V", symbol: "U", about: "voltage" } },
  gives: { unit: "V", symbol: "U" },
  expression: "voltage * 2",
});
const voltage: Quantity<"voltage"> = power({ voltage: given("1 kV", "kV") });
export const text: string = voltage.text;
// @ts-expect-error another dimension does not compile
power({ voltage: given("3 A", "A") });
// @ts-expect-error nor does an unknown symbol
power({ voltage: "3 V", current: "3 A" });
// @ts-expect-error nor a missing one
power({});
`;

const TWO_COPIES = `
import * as imported from "pv-to-grid/quantity";
import * as rules from "pv-to-grid/formula";
import required = require("pv-to-grid/quantity");
import requiredRules = require("pv-to-grid/formula");

const declaration = {
  id: "app/voltage", about: "voltage", source: [],
  takes: { voltage: { unit: "V", symbol: "U", about: "voltage" } },
  gives: { unit: "V", symbol: "U" },
  expression: "voltage",
} as const;
const rule = rules.formula(declaration);
const requiredRule = requiredRules.formula(declaration);
export const there: required.Quantity<"voltage"> = rule({ voltage: required.given("3 V", "V") });
export const back: imported.Quantity<"voltage"> = requiredRule({ voltage: imported.given("3 V", "V") });
export const steps: readonly rules.Step[] = requiredRules.steps(imported.given("3 V", "V"));
export const error: Error = new required.InputError("x", []) satisfies imported.InputError;
`;

function complaints(
  { createProgram, getPreEmitDiagnostics, flattenDiagnosticMessageText, versionMajorMinor }: Compiler,
  code: Readonly<Record<string, string>>,
  options: ts.CompilerOptions,
): string[] {
  const project = inject("installed").module;
  const files = Object.entries(code).map(([name, text]) => {
    const file = join(project, name);
    writeFileSync(file, text);
    return file;
  });
  const deprecated = options.moduleResolution === Node10 && Number(versionMajorMinor) >= 6;
  const program = createProgram(files, { ...options, ...(deprecated && { ignoreDeprecations: "6.0" }) });
  return getPreEmitDiagnostics(program).map(
    ({ file, messageText }) => `${file?.fileName ?? ""}: ${flattenDiagnosticMessageText(messageText, "\n")}`,
  );
}

describe.each([OWN, ...COMPILERS])("types by TypeScript %s", (version) => {
  const given = (): Compiler => (version === OWN ? ts : compiler(version, inject("installed").compilers));

  describe.each(Object.entries(SETTINGS))("as %s finds modules", (name, { files, options }) => {
    const code = Object.fromEntries(files.map((kind) => [`${name}.${kind}`, EVERY_SUBPATH + USE]));

    it("compile in the strictest settings", () => {
      // Every declaration is checked once with each compiler, and by the project's own each way that it is found.
      const skipLibCheck = version !== OWN && name !== "nodenext";
      expect(complaints(given(), code, { ...STRICTEST, ...options, skipLibCheck })).toEqual([]);
    });

    it("compile in strict settings where a missing property may be undefined", () => {
      expect(complaints(given(), code, { ...STRICT, ...options, skipLibCheck: true })).toEqual([]);
    });
  });
});

it("compile in loose settings", () => {
  const { options } = SETTINGS["bundler"]!;
  expect(complaints(ts, { "loose.ts": EVERY_SUBPATH + USE }, { ...LOOSE, ...options, skipLibCheck: true })).toEqual([]);
});

it("takes the types of either format for the other's", () => {
  const { options } = SETTINGS["nodenext"]!;
  expect(complaints(ts, { "both.mts": TWO_COPIES }, { ...STRICTEST, ...options, skipLibCheck: true })).toEqual([]);
});
