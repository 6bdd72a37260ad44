import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  coldCellTemperature,
  faimanConstantHeatLoss,
  faimanModuleTemperature,
  faimanWindHeatLoss,
  noctCellTemperature,
  nominalModuleOperatingTemperature,
  sandiaCellRise,
  sandiaCellTemperature,
  sandiaExponents,
  sandiaModuleTemperature,
  temperatureRiseByMounting,
} from "../../src/module/index.js";
import { isInputError } from "../../src/quantity/index.js";

const combined = {
  constantHeatLoss: faimanConstantHeatLoss({ fit: "combined" }),
  windHeatLoss: faimanWindHeatLoss({ fit: "combined" }),
};

describe("cell temperatures", () => {
  it("cold cells are as cold as the air", () => {
    expect(coldCellTemperature({ ambient: "-14 °C" }).text).toBe("-14");
  });

  it("NOCT is itself at 800 W/m² and 20 °C, and rises in proportion to the light", () => {
    const at = (irradiance: string) =>
      noctCellTemperature({ ambient: "20 °C", nominalOperatingCellTemperature: "45 °C", irradiance }).text;
    expect([at("800 W/m2"), at("0 W/m2"), at("1000 W/m2")]).toEqual(["45", "20", "51.25"]);
  });

  it("the three models agree within 3 K at 1000 W/m², 20 °C and 1 m/s", () => {
    const conditions = { ambient: "20 °C", irradiance: "1000 W/m2", wind: "1 m/s" };
    const faiman = faimanModuleTemperature({ ...conditions, ...combined });
    const rack = { construction: "glass/cell/polymer sheet", mounting: "open rack" } as const;
    const back = sandiaModuleTemperature({
      ...conditions,
      sandiaExponent: sandiaExponents({ ...rack, exponent: "a" }),
      sandiaWindExponent: sandiaExponents({ ...rack, exponent: "b" }),
    });
    const sandia = sandiaCellTemperature({
      moduleTemperature: back,
      irradiance: conditions.irradiance,
      cellRise: sandiaCellRise(rack),
    });
    expect([faiman.show(), sandia.show()]).toEqual(["51.41 °C", "49.38 °C"]);
  });

  it("NMOT of the combined fit is 45 °C", () => {
    expect(nominalModuleOperatingTemperature(combined).show()).toBe("45.13 °C");
  });

  it("refuses a mounting that the table does not hold", () => {
    const call = (): unknown =>
      sandiaExponents({ construction: "glass/cell/glass", mounting: "insulated back", exponent: "a" });
    expect(call).toThrow(
      expect.toSatisfy((error: unknown) => isInputError(error) && error.problems[0]!.code === "not-tabulated"),
    );
  });

  it("roofs are warmer than racks", () => {
    const rise = (mounting: string): number => temperatureRiseByMounting({ mounting, bound: "high" }).number;
    expect(rise("close roof mount")).toBeGreaterThan(rise("open rack"));
  });
});

describe("laws", () => {
  const sun = fc.integer({ min: 1, max: 1400 });
  const wind = fc.integer({ min: 0, max: 20 });
  const air = fc.integer({ min: -40, max: 50 });

  test.prop([air, sun, wind, fc.integer({ min: 1, max: 10 })])(
    "more wind cools, more light warms, warmer air warms by as much",
    (ambient, irradiance, speed, more) => {
      const models = [
        (a: number, g: number, v: number) =>
          faimanModuleTemperature({ ambient: a, irradiance: g, wind: v, ...combined }).number,
        (a: number, g: number, v: number) =>
          sandiaModuleTemperature({
            ambient: a,
            irradiance: g,
            wind: v,
            sandiaExponent: "-3.56",
            sandiaWindExponent: "-0.075",
          }).number,
      ];
      for (const at of models) {
        expect(at(ambient, irradiance, speed + more)).toBeLessThan(at(ambient, irradiance, speed));
        expect(at(ambient, irradiance + more, speed)).toBeGreaterThan(at(ambient, irradiance, speed));
        expect(at(ambient + more, irradiance, speed) - at(ambient, irradiance, speed)).toBeCloseTo(more, 9);
      }
    },
  );
});
