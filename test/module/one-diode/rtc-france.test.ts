import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { curveResidual, type ResidualOf } from "../../../src/module/index.js";
import { allReferenceFiles } from "../../harness/reference-data.js";

// The measured points stand once, in the case that holds the published residual.
const held = allReferenceFiles.cases
  .flatMap(({ content }) => content)
  .find(({ id }) => id === "rtc-residual-implicit")!;
const listOf = (key: string): readonly string[] => {
  const input = held.inputs[key]!;
  return "printed" in input ? (input.printed as string[]) : [];
};
const curve = {
  voltages: listOf("voltages"),
  currents: listOf("currents"),
  cellsInSeries: 1,
  cellTemperature: "33 °C",
};

/** The literature's parameters as they are printed (recalled). */
const printed: ResidualOf = {
  ...curve,
  photocurrent: 0.760776,
  saturationCurrent: "3.23021e-7 A",
  seriesResistance: 0.036377,
  shuntResistance: 53.718526,
  diodeFactor: 1.481184,
};

const best = {
  photocurrent: 0.76078797,
  saturationCurrent: 3.1068455e-7,
  seriesResistance: 0.03654695,
  shuntResistance: 52.889781,
  diodeFactor: 1.4772693,
};

describe("the RTC France cell, 26 measured points", () => {
  it("has two residuals at the printed parameters, which differ by a fifth", () => {
    const { implicit, exact } = curveResidual(printed);
    expect(implicit.toFixed(10)).toBe("0.0009860303");
    expect(exact.toFixed(10)).toBe("0.0007753906");
  });

  // The published minimum is a minimum: no neighbour lies nearer to the points.
  test.prop([fc.array(fc.double({ min: -1e-3, max: 1e-3, noNaN: true }), { minLength: 5, maxLength: 5 })])(
    "has its least exact residual where the literature has it",
    (shifts) => {
      const neighbour = Object.fromEntries(
        Object.entries(best).map(([key, value], index) => [key, value * (1 + shifts[index]!)]),
      );
      const at = curveResidual({
        ...curve,
        ...(neighbour as typeof best),
        saturationCurrent: `${neighbour["saturationCurrent"]} A`,
      });
      expect(at.exact).toBeGreaterThan(7.730062e-4);
    },
  );
});
