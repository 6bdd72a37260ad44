import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  combineDiodes,
  diodeCurrent,
  diodeCurve,
  diodePoints,
  diodeUnder,
  diodeVoltage,
  oneDiode,
} from "../../../src/module/index.js";
import { isInputError } from "../../../src/quantity/index.js";
import { idealCell, modules } from "./diodes.js";

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe("laws of the one-diode model", () => {
  test.prop([modules, share, share])("the current falls strictly with the voltage", (diode, a, b) => {
    const { openCircuitVoltage: end } = diodePoints(diode);
    const [low, high] = [Math.min(a, b) * end, Math.max(a, b) * end];
    fc.pre(high - low > end * 1e-9);
    expect(diodeCurrent(diode, low)).toBeGreaterThan(diodeCurrent(diode, high));
  });

  test.prop([modules])("the ends are short circuit and open circuit", (diode) => {
    const { shortCircuitCurrent, openCircuitVoltage } = diodePoints(diode);
    expect(diodeCurrent(diode, 0)).toBe(shortCircuitCurrent);
    expect(Math.abs(diodeCurrent(diode, openCircuitVoltage))).toBeLessThan(shortCircuitCurrent * 1e-12);
  });

  test.prop([modules, fc.double({ min: -0.1, max: 1.05, noNaN: true })])(
    "voltage and current are inverse",
    (diode, at) => {
      const voltage = at * diodePoints(diode).openCircuitVoltage;
      expect(diodeVoltage(diode, diodeCurrent(diode, voltage))).toBeCloseTo(voltage, 8);
    },
  );

  test.prop([modules, share])("no point of the curve gives more than the maximum power", (diode, at) => {
    const { openCircuitVoltage, maximumPower } = diodePoints(diode);
    const voltage = at * openCircuitVoltage;
    expect(voltage * diodeCurrent(diode, voltage)).toBeLessThanOrEqual(maximumPower * (1 + 1e-14));
  });

  test.prop([modules])("the slope of the power vanishes at the maximum power point", (diode) => {
    const { mppVoltage, mppCurrent, maximumPower } = diodePoints(diode);
    const step = mppVoltage * 1e-5;
    const power = (voltage: number): number => voltage * diodeCurrent(diode, voltage);
    expect(power(mppVoltage - step)).toBeLessThan(maximumPower);
    expect(power(mppVoltage + step)).toBeLessThan(maximumPower);
    expect(mppVoltage * mppCurrent).toBe(maximumPower);
  });

  test.prop([modules, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 })])(
    "strings add voltages, parallel strings add currents",
    (diode, series, parallel) => {
      const [one, all] = [diodePoints(diode), diodePoints(combineDiodes(diode, { series, parallel }))];
      expect(all.openCircuitVoltage / one.openCircuitVoltage / series).toBeCloseTo(1, 12);
      expect(all.shortCircuitCurrent / one.shortCircuitCurrent / parallel).toBeCloseTo(1, 12);
      expect(all.maximumPower / one.maximumPower / series / parallel).toBeCloseTo(1, 12);
      expect(all.fillFactor).toBeCloseTo(one.fillFactor, 12);
    },
  );

  test.prop([modules, fc.integer({ min: 2, max: 300 })])(
    "a curve starts at short circuit, ends at open circuit and falls",
    (diode, points) => {
      const { voltage, current, power } = diodeCurve(diode, points);
      expect([voltage[0], current.at(-1), power[0]]).toEqual([0, 0, 0]);
      for (let index = 1; index < points; index += 1) {
        expect(voltage[index]).toBeGreaterThan(voltage[index - 1]!);
        expect(current[index]).toBeLessThan(current[index - 1]!);
      }
    },
  );
});

describe("De Soto scaling", () => {
  test.prop([modules])("is the identity at standard test conditions", (atStc) => {
    const { photocurrent, saturationCurrent, seriesResistance, shuntResistance, exponentVoltage } = atStc;
    const diode = { photocurrent, saturationCurrent, seriesResistance, shuntResistance, exponentVoltage };
    expect(diodeUnder(atStc, { irradiance: 1000, cellTemperature: 25 })).toEqual(diode);
  });

  test.prop([modules, fc.double({ min: -40, max: 90, noNaN: true }), fc.double({ min: 0.1, max: 20, noNaN: true })])(
    "colder cells have a higher open-circuit voltage",
    (atStc, temperature, colder) => {
      const at = (cellTemperature: number): number =>
        diodePoints(diodeUnder(atStc, { irradiance: 1000, cellTemperature })).openCircuitVoltage;
      expect(at(temperature - colder)).toBeGreaterThan(at(temperature));
    },
  );

  test.prop([modules, fc.double({ min: 10, max: 1000, noNaN: true })])(
    "less light gives less of everything",
    (atStc, irradiance) => {
      const [full, part] = [1100, irradiance].map((sun) =>
        diodePoints(diodeUnder(atStc, { irradiance: sun, cellTemperature: 25 })),
      );
      expect(part!.openCircuitVoltage).toBeLessThan(full!.openCircuitVoltage);
      expect(part!.shortCircuitCurrent).toBeLessThan(full!.shortCircuitCurrent);
      expect(part!.maximumPower).toBeLessThan(full!.maximumPower);
    },
  );
});

describe("what the model refuses", () => {
  const codes = (call: () => unknown): readonly string[] => {
    try {
      call();
    } catch (error) {
      if (isInputError(error)) return error.problems.map(({ path, code }) => `${path} ${code}`);
      throw error;
    }
    return [];
  };

  it("names every parameter that is out of its domain, NaN included", () => {
    expect(
      codes(() => oneDiode({ ...idealCell, photocurrent: NaN, saturationCurrent: 0, shuntResistance: -1 })),
    ).toEqual(["photocurrent out-of-domain", "saturationCurrent out-of-domain", "shuntResistance out-of-domain"]);
  });

  it("passes no NaN on", () => {
    expect(codes(() => diodeCurrent(idealCell, NaN))).toEqual(["voltage not-finite"]);
    expect(codes(() => diodeVoltage(idealCell, NaN))).toEqual(["current not-finite"]);
    expect(codes(() => diodeCurrent(idealCell, 1000))).toEqual(["current not-finite"]);
    expect(codes(() => diodeCurve(idealCell, 1.5))).toEqual(["points out-of-domain"]);
    expect(codes(() => combineDiodes(idealCell, { series: 0, parallel: 2.5 }))).toEqual([
      "series out-of-domain",
      "parallel out-of-domain",
    ]);
    expect(
      codes(() => diodeUnder({ ...idealCell, shortCircuitCurrentSlope: 0 }, { irradiance: 0, cellTemperature: 200 })),
    ).toEqual(["irradiance out-of-domain", "cellTemperature out-of-domain"]);
  });

  it("refuses a current that no voltage drives", () => {
    expect(codes(() => diodeVoltage(idealCell, 9.1))).toEqual(["current refused"]);
    expect(diodeVoltage({ ...idealCell, shuntResistance: 10 }, 9.1)).toBeCloseTo(-1, 6);
  });

  it("has no power in the dark", () => {
    const dark = diodePoints({ ...idealCell, photocurrent: 0, shuntResistance: 10 });
    expect([dark.openCircuitVoltage, dark.maximumPower, dark.fillFactor]).toEqual([0, 0, 0]);
  });
});
