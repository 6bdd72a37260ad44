/** The package's types, compiled in the settings that users have. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, inject, it } from "vitest";
import { subjects } from "../../.config/package-map.js";
import type { Format } from "./app.js";

const STRICTEST: ts.CompilerOptions = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  skipLibCheck: false,
  noEmit: true,
  target: ts.ScriptTarget.ES2022,
  lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
  types: [],
};

const { Node10, Node16, NodeNext, Bundler } = ts.ModuleResolutionKind;

/** How users have TypeScript find modules. */
const SETTINGS: Readonly<Record<string, ts.CompilerOptions>> = {
  node16: { module: ts.ModuleKind.Node16, moduleResolution: Node16 },
  nodenext: { module: ts.ModuleKind.NodeNext, moduleResolution: NodeNext },
  bundler: { module: ts.ModuleKind.ESNext, moduleResolution: Bundler },
  // Without `esModuleInterop` the types of the schema library itself do not compile.
  node10: { module: ts.ModuleKind.CommonJS, moduleResolution: Node10, esModuleInterop: true },
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

function complaints(format: Format, name: string, code: string, options: ts.CompilerOptions): string[] {
  const project = inject("installed")[format];
  const file = join(project, name);
  writeFileSync(file, code);
  const program = ts.createProgram([file], { ...STRICTEST, ...options });
  return ts
    .getPreEmitDiagnostics(program)
    .map(({ file: at, messageText }) => `${at?.fileName ?? ""}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`);
}

describe.each(Object.entries(SETTINGS))("types under %s", (name, options) => {
  it.each(["module", "commonjs"] as const)("compile in an app of format %s", (format) => {
    expect(complaints(format, `${name}.ts`, EVERY_SUBPATH + USE, options)).toEqual([]);
  });

  it("compile with looser settings", () => {
    const loose = { ...options, exactOptionalPropertyTypes: false, noUncheckedIndexedAccess: false };
    expect(complaints("module", `${name}-loose.ts`, EVERY_SUBPATH + USE, loose)).toEqual([]);
  });
});

it("takes the types of either format for the other's", () => {
  expect(complaints("module", "both.mts", TWO_COPIES, SETTINGS["nodenext"]!)).toEqual([]);
});
