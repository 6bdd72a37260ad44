import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  acceptanceBands,
  cellTemperatureFrom,
  evaluateReading,
  expectedReadings,
  type ReadingKey,
} from "../../src/commissioning/index.js";
import { isMissing, type Known, missing } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";
import { bareModule440, module440 } from "./modules.js";

const known = <Q extends Quantity>(value: Known<Q>): Q => {
  if (isMissing(value)) throw new Error(`missing ${value.missing.join(", ")}`);
  return value;
};

describe("expected readings of a string", () => {
  const readings = expectedReadings({
    module: module440,
    modules: 14,
    cellTemperature: "45 °C",
    irradiance: "800 W/m2",
  });

  it("are the datasheet at the measured temperature and irradiance", () => {
    // 14 · 39.2 · (1 − 0.0026 · 20); 14.1 · 0.8 · (1 + 0.0005 · 20); 13.42 · 0.8 · (1 + 0.0002 · 20)
    expect(known(readings.openCircuitVoltage.expected).text).toBe("520.2624");
    expect(known(readings.shortCircuitCurrent.expected).text).toBe("11.3928");
    expect(known(readings.operatingCurrent.expected).text).toBe("10.778944");
    expect(known(readings.power.expected).text).toBe("4622.464");
  });

  it("carry the band of 5 % of the contract", () => {
    expect(known(readings.openCircuitVoltage.low).text).toBe("494.24928");
    expect(known(readings.openCircuitVoltage.high).text).toBe("546.27552");
  });

  it("take another tolerance where the contract has its own", () => {
    const own = expectedReadings({
      module: module440,
      modules: 14,
      cellTemperature: "25 °C",
      irradiance: "1000 W/m2",
      tolerance: "3 %",
    });
    expect(known(own.openCircuitVoltage.low).text).toBe("532.336");
    expect(known(own.shortCircuitCurrent.high).text).toBe("14.523");
  });

  it("fall in weak light where the factor is given", () => {
    const string = { module: module440, modules: 14, cellTemperature: "45 °C", irradianceFactor: "0.06" };
    const at = (irradiance: string) => known(expectedReadings({ ...string, irradiance }).openCircuitVoltage.expected);
    expect(at("1000 W/m2").text).toBe("520.2624");
    expect(at("500 W/m2").show({ digits: 5 })).toBe("497.44 V");
  });

  it("are missing where a coefficient or a condition is, and say which", () => {
    const bare = expectedReadings({
      module: bareModule440,
      modules: 14,
      cellTemperature: "45 °C",
      irradiance: missing("irradiance"),
    });
    expect(known(bare.openCircuitVoltage.expected).text).toBe("520.2624");
    expect(bare.shortCircuitCurrent.expected).toEqual(missing("module.shortCircuitCurrentCoefficient", "irradiance"));
    expect(bare.operatingVoltage.low).toEqual(missing("module.mppVoltageCoefficient"));
  });

  it("say when the coefficient of I_SC stands in for that of I_MPP", () => {
    const lacking = { ...module440, mppCurrentCoefficient: missing("module.mppCurrentCoefficient") };
    const { notes } = expectedReadings({
      module: lacking,
      modules: 14,
      cellTemperature: "45 °C",
      irradiance: "800 W/m2",
    });
    expect(notes.join(" ")).toContain("I_SC stands in");
    expect(readings.notes.join(" ")).not.toContain("I_SC stands in");
  });

  it("name their practice: the standard compares strings, contracts compare with the datasheet", () => {
    expect(acceptanceBands.find(({ key }) => key === "identical strings")!.label).toContain("the standard");
    expect(acceptanceBands.find(({ key }) => key === "expected voltage")!.label).toContain("contract practice");
  });
});

const conditions = {
  cell: fc.integer({ min: -20, max: 80 }),
  irradiance: fc.integer({ min: 100, max: 1200 }),
  modules: fc.integer({ min: 1, max: 30 }),
};
const inLight = (cell: number, irradiance: number, modules: number) =>
  expectedReadings({ module: module440, modules, cellTemperature: cell, irradiance, irradianceFactor: "0.06" });

describe("laws of expected readings", () => {
  test.prop(conditions)("a reading equal to what is expected is within", ({ cell, irradiance, modules }) => {
    const readings = inLight(cell, irradiance, modules);
    const keys = ["openCircuitVoltage", "shortCircuitCurrent", "operatingVoltage", "operatingCurrent"] as const;
    for (const reading of keys) {
      const { expected, low, high } = readings[reading];
      expect(
        evaluateReading({ reading: reading satisfies ReadingKey, at: "A", value: expected, low, high }).verdict,
      ).toBe("within");
    }
  });

  test.prop(conditions)("twice the irradiance doubles the currents and the power", ({ cell, irradiance, modules }) => {
    const [once, twice] = [irradiance / 2, irradiance].map((light) => inLight(cell, light, modules));
    expect(known(twice!.shortCircuitCurrent.expected).number).toBeCloseTo(
      2 * known(once!.shortCircuitCurrent.expected).number,
      9,
    );
    expect(known(twice!.operatingCurrent.expected).number).toBeCloseTo(
      2 * known(once!.operatingCurrent.expected).number,
      9,
    );
    expect(known(twice!.power.expected).number).toBeCloseTo(2 * known(once!.power.expected).number, 6);
  });

  test.prop(conditions)("warmer cells read less voltage, more light reads more", ({ cell, irradiance, modules }) => {
    const voltage = (t: number, g: number) => known(inLight(t, g, modules).openCircuitVoltage.expected).number;
    expect(voltage(cell + 1, irradiance)).toBeLessThan(voltage(cell, irradiance));
    expect(voltage(cell, irradiance + 10)).toBeGreaterThan(voltage(cell, irradiance));
  });

  test.prop(conditions)(
    "the voltage of a sound string tells the cell temperature it was expected at",
    ({ cell, irradiance, modules }) => {
      const voltage = known(inLight(cell, irradiance, modules).openCircuitVoltage.expected);
      const told = cellTemperatureFrom({
        by: "open-circuit voltage",
        module: module440,
        modules,
        openCircuitVoltage: voltage,
        light: { irradiance, irradianceFactor: "0.06" },
      });
      expect(told.number).toBeCloseTo(cell, 9);
    },
  );
});

describe("cell temperature", () => {
  it("is that of the back with the rise of the cells in that light", () => {
    expect(
      cellTemperatureFrom({ by: "back of module", moduleTemperature: "43 °C", irradiance: "800 W/m2", cellRise: "3 K" })
        .text,
    ).toBe("45.4");
  });

  it("is told by the voltage alone in full light", () => {
    const string = { by: "open-circuit voltage", module: module440, modules: 14 } as const;
    expect(cellTemperatureFrom({ ...string, openCircuitVoltage: "548.8 V" }).text).toBe("25");
  });
});
