import { describe, expect, it } from "vitest";
import { curveResidual, diodeCurve, diodePoints, measuredPoints } from "../../src/module/index.js";
import { isInputError } from "../../src/quantity/index.js";
import { rtcCell } from "./one-diode/diodes.js";

function refusal(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (isInputError(error)) return error.problems.map(({ path }) => path).join();
    throw error;
  }
  return "none";
}

describe("points of a measured curve", () => {
  it("lie on the straight line beside the axes, and on the best point", () => {
    const points = measuredPoints({
      voltages: ["-0.1 V", "0.1 V", "0.5 V", "0.7 V"],
      currents: ["8.1 A", "7.9 A", "7 A", "-1 A"],
    });
    expect([points.shortCircuitCurrent.text, points.openCircuitVoltage.text, points.maximumPower.text]).toEqual([
      "8",
      "0.675",
      "3.5",
    ]);
    expect(points.fillFactor.show()).toBe("0.6481");
  });

  it("are those of the model that made the curve", () => {
    const { voltage, current } = diodeCurve(rtcCell, 2001);
    const exact = diodePoints(rtcCell);
    const ends = { voltages: [-0.01, ...voltage, 0.58], currents: [0.76045, ...current, -0.0758] };
    const points = measuredPoints(ends);
    expect(points.openCircuitVoltage.number).toBeCloseTo(exact.openCircuitVoltage, 6);
    expect(points.shortCircuitCurrent.number).toBeCloseTo(exact.shortCircuitCurrent, 6);
    expect(points.maximumPower.number).toBeCloseTo(exact.maximumPower, 6);
  });

  it("are refused of lists that are no curve", () => {
    expect(refusal(() => measuredPoints({ voltages: ["0 V"], currents: [] }))).toBe("currents");
    expect(refusal(() => measuredPoints({ voltages: ["-0.1 V", "-0.1 V"], currents: ["1 A", "1 A"] }))).toBe(
      "voltages[1]",
    );
    expect(refusal(() => measuredPoints({ voltages: ["0.1 V", "0.2 V"], currents: ["1 A", "-1 A"] }))).toBe("voltages");
    expect(refusal(() => measuredPoints({ voltages: ["-0.1 V", "0.2 V"], currents: ["2 A", "1 A"] }))).toBe("currents");
    const cell = {
      photocurrent: 1,
      saturationCurrent: "1e-9 A",
      diodeFactor: 1,
      cellsInSeries: 1,
      seriesResistance: 0,
      shuntResistance: 10,
      cellTemperature: 25,
    };
    expect(refusal(() => curveResidual({ ...cell, voltages: [0], currents: [] }))).toBe("currents");
  });
});
