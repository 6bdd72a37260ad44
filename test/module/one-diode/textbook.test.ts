import { describe, expect, it } from "vitest";
import { combineDiodes, diodeCurrent, diodePoints, fitDiode, type OneDiode } from "../../../src/module/index.js";

// Problem 4.8 of "Solar cells textbook:2024" (seen as a copy of the authors' notebooks): what costs a fifth of the power.
const cell: OneDiode = {
  photocurrent: 10,
  saturationCurrent: 2e-9,
  seriesResistance: 0,
  shuntResistance: 1e6,
  exponentVoltage: 1.2 * 8.617333262145179e-5 * 298.15,
};
const half: OneDiode = { ...cell, photocurrent: 5, saturationCurrent: 1e-9 };
const AREA = 275.56;

/** Where a falling function reaches a value. */
function where(value: number, low: number, high: number, f: (x: number) => number): number {
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > value) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const share = (diode: OneDiode, of: OneDiode): number => diodePoints(diode).maximumPower / diodePoints(of).maximumPower;
const costlySeries = (of: OneDiode): number =>
  where(0.8, 0, 1, (seriesResistance) => share({ ...of, seriesResistance }, of));
const costlyShunt = (of: OneDiode): number =>
  1 /
  where(0.8, 1 / 100, 10, (conductance) =>
    share({ ...of, shuntResistance: 1 / conductance }, { ...of, shuntResistance: 100 }),
  );

describe("resistances that cost a fifth of the power", () => {
  it("are the printed series resistances", () => {
    expect(costlySeries(cell).toFixed(4)).toBe("0.0128");
    expect((costlySeries(cell) * AREA).toFixed(2)).toBe("3.54");
    expect(costlySeries(half).toFixed(4)).toBe("0.0257");
    expect((costlySeries(half) * AREA).toFixed(2)).toBe("7.08");
  });

  // Erratum textbook-4-8-rp: the notebook interpolates in steps of 0.2 Ω and prints 0.309 and 0.626.
  it("are a little below the printed shunt resistances", () => {
    expect(costlyShunt(cell).toFixed(4)).toBe("0.3057");
    expect(costlyShunt(half).toFixed(4)).toBe("0.6098");
  });
});

describe("a 200 W module whose parameters are printed", () => {
  // Villalva et al. 2009, tables I to III (recalled; inputs seen in a copy).
  const fitted = combineDiodes(
    {
      photocurrent: 8.214,
      saturationCurrent: 9.825e-8,
      seriesResistance: 0.221 / 54,
      shuntResistance: 415.405 / 54,
      exponentVoltage: 1.3 * 8.617333262145179e-5 * 298.15,
    },
    { series: 54, parallel: 1 },
  );

  it("gives its datasheet's current at its datasheet's voltage", () => {
    expect(diodeCurrent(fitted, 26.3).toFixed(2)).toBe("7.61");
    expect((26.3 * diodeCurrent(fitted, 26.3)).toFixed(1)).toBe("200.1");
  });

  it("falls 16 mV short of its open-circuit voltage, where five fitted parameters do not", () => {
    expect((32.9 - diodePoints(fitted).openCircuitVoltage).toFixed(3)).toBe("0.017");
    const five = fitDiode({
      shortCircuitCurrent: 8.21,
      openCircuitVoltage: 32.9,
      mppVoltage: 26.3,
      mppCurrent: 7.61,
      openCircuitVoltageSlope: -0.123,
      shortCircuitCurrentSlope: 0.0032,
    });
    expect(diodePoints(five).openCircuitVoltage).toBeCloseTo(32.9, 9);
  });
});
