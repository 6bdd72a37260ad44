/** The packed tarball, installed and used from both module formats, and by both in one process. */
import { describe, expect, it } from "vitest";
import { subjects } from "../../.config/package-map.js";
import { type Format, runApp } from "./app.js";

const FORMATS: readonly Format[] = ["module", "commonjs"];

/** `const { names } = …` in the words of a format. */
function taking(format: Format, names: string, from: string): string {
  return format === "module" ? `import { ${names} } from "${from}";` : `const { ${names} } = require("${from}");`;
}

const POWER = `formula({
  id: "app/power", about: "power", source: [],
  takes: {
    voltage: { unit: "V", symbol: "U", about: "voltage" },
    current: { unit: "A", symbol: "I", about: "current" },
    oneWatt: { unit: "W", symbol: "P", about: "one watt" },
  },
  gives: { unit: "1", symbol: "p" },
  expression: "voltage * current / oneWatt / 3",
})`;

const THIRD = "0.3333333333333333333333333333333333";

describe.each(FORMATS)("installed in an app of format %s", (format) => {
  it("offers every subpath", () => {
    const load = format === "module" ? "await import(path)" : "require(path)";
    const paths = subjects().map((name) => `pv-to-grid/${name}`);
    const code = `
      const counts = {};
      for (const path of ${JSON.stringify(paths)}) counts[path] = Object.keys(${load}).length;
      console.log(JSON.stringify(counts));`;
    const counts = runApp(format, code) as Record<string, number>;
    expect(Object.keys(counts)).toEqual(paths);
    expect(Object.entries(counts).filter(([, count]) => count === 0)).toEqual([]);
  });

  it("computes", () => {
    const code = `
      ${taking(format, "given", "pv-to-grid/quantity")}
      ${taking(format, "formula", "pv-to-grid/formula")}
      const power = ${POWER};
      const voltage = given("1 kV", "kV");
      console.log(JSON.stringify(power({ voltage, current: "0.001 A", oneWatt: "1 W" }).text));`;
    expect(runApp(format, code)).toBe(THIRD);
  });

  it("serves every subpath with one kernel", () => {
    const code = `
      ${taking(format, "InputError", "pv-to-grid/quantity")}
      ${taking(format, "formula", "pv-to-grid/formula")}
      try { ${POWER}({}); } catch (error) { console.log(JSON.stringify(error instanceof InputError)); }`;
    expect(runApp(format, code)).toBe(true);
  });

  it("neither reads nor changes the host's settings of decimal.js", () => {
    const code = `
      ${taking(format, "Decimal", "decimal.js")}
      Decimal.set({ precision: 5, rounding: 0, toExpNeg: -1, toExpPos: 1, maxE: 3, minE: -3 });
      ${format === "module" ? `const { formula } = await import("pv-to-grid/formula");` : taking(format, "formula", "pv-to-grid/formula")}
      const result = ${POWER}({ voltage: "1000 V", current: "0.001 A", oneWatt: "1 W" }).text;
      const { precision, rounding, toExpNeg, toExpPos, maxE, minE } = Decimal;
      console.log(JSON.stringify({ result, host: [precision, rounding, toExpNeg, toExpPos, maxE, minE, new Decimal(1).div(3)] }));`;
    expect(runApp(format, code)).toEqual({ result: THIRD, host: [5, 0, -1, 1, 3, -3, "3.3334e-1"] });
  });
});

describe("two copies of the package in one process", () => {
  it.each([
    ["imported", "required"],
    ["required", "imported"],
  ])("a quantity that was %s is accepted by a formula that was %s", (quantity, rule) => {
    const code = `
      import { createRequire } from "node:module";
      import * as quantities from "pv-to-grid/quantity";
      import * as formulas from "pv-to-grid/formula";
      const require = createRequire(import.meta.url);
      const imported = { ...quantities, ...formulas };
      const required = { ...require("pv-to-grid/quantity"), ...require("pv-to-grid/formula") };
      if (imported.given === required.given) throw new Error("this is one copy, not two");
      const { given } = ${quantity};
      const { formula, steps } = ${rule};
      const result = ${POWER}({ voltage: given("1 kV", "V"), current: given("0.001 A", "A"), oneWatt: "1 W" });
      const again = (${quantity}).formula({ id: "app/twice", about: "twice", source: [],
        takes: { once: { unit: "1", symbol: "x", about: "once" } }, gives: { unit: "1", symbol: "y" },
        expression: "once * 3" })({ once: result });
      console.log(JSON.stringify({ text: result.text, steps: steps(again).length, again: again.rounded }));`;
    expect(runApp("module", code)).toEqual({ text: THIRD, steps: 6, again: true });
  });

  it("an error of one copy is known to the other", () => {
    const code = `
      import { createRequire } from "node:module";
      import { isInputError } from "pv-to-grid/quantity";
      const { given } = createRequire(import.meta.url)("pv-to-grid/quantity");
      try { given("3 apples", "V"); } catch (error) { console.log(JSON.stringify(isInputError(error))); }`;
    expect(runApp("module", code)).toBe(true);
  });
});
