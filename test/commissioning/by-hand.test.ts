import { describe, expect, it } from "vitest";
import {
  averageTolerance,
  cellTemperatureFromVoltage,
  currentAgainstOthers,
  earthFaultPosition,
  highestCurrent,
  highestPower,
  highestVoltage,
  lowestCurrent,
  lowestPower,
  lowestVoltage,
  openCircuitVoltageInLightAtStandard,
  operatingTolerance,
  pointByPointCurrent,
  pointByPointVoltage,
  stringsTolerance,
  typicalIrradianceFactor,
  voltageTolerance,
} from "../../src/commissioning/index.js";

// Values that a person finds with pencil and paper, for the rules that no publication prints an example of.
describe("by hand", () => {
  it("a string at 97.4 % of its voltage is 10 K warmer than 25 °C at −0.26 %/K", () => {
    const string = { modules: 10, openCircuitVoltage: "40 V", openCircuitVoltageCoefficient: "-0.26 %/K" };
    expect(cellTemperatureFromVoltage({ ...string, measuredVoltage: "389.6 V" }).text).toBe("35");
  });

  it("8 A beside 10 A and 6 A is their mean, 9 A lies an eighth above it", () => {
    const beside = (measuredCurrent: string) =>
      currentAgainstOthers({ measuredCurrent, stringCurrents: ["10 A", "6 A"] }).text;
    expect([beside("8 A"), beside("9 A")]).toEqual(["0", "0.125"]);
  });

  it("tolerances are 5 %, each under its own practice, and a crystalline module loses 6 % of ln in the light", () => {
    const shares = [voltageTolerance({}), operatingTolerance({}), stringsTolerance({}), averageTolerance({})];
    expect(shares.map((share) => share.text)).toEqual(["0.05", "0.05", "0.05", "0.05"]);
    expect(typicalIrradianceFactor({}).text).toBe("0.06");
  });

  it("a current of 10 A within 4 % lies between 9.6 A and 10.4 A, 500 V between 480 V and 520 V", () => {
    const band = { expectedCurrent: "10 A", expectedVoltage: "500 V", bandTolerance: "4 %" };
    const { expectedVoltage, expectedCurrent, bandTolerance } = band;
    expect([lowestCurrent, highestCurrent].map((end) => end({ expectedCurrent, bandTolerance }).text)).toEqual([
      "9.6",
      "10.4",
    ]);
    expect([lowestVoltage, highestVoltage].map((end) => end({ expectedVoltage, bandTolerance }).text)).toEqual([
      "480",
      "520",
    ]);
  });

  it("a power of 4000 W within 5 % lies between 3800 W and 4200 W", () => {
    const band = { expectedPower: "4000 W", bandTolerance: "5 %" };
    expect([lowestPower(band).text, highestPower(band).text]).toEqual(["3800", "4200"]);
  });

  it("a current of 8 A at 800 W/m² and 45 °C is 9.9 A at 1000 W/m² and 25 °C by 0.05 %/K", () => {
    const light = {
      measuredIrradiance: "800 W/m2",
      targetIrradiance: "1000 W/m2",
      measuredTemperature: "45 °C",
      targetTemperature: "25 °C",
    };
    expect(
      pointByPointCurrent({ ...light, measuredCurrent: "8 A", shortCircuitCurrentCoefficient: "0.05 %/K" }).text,
    ).toBe("9.9");
  });

  it("a voltage of 100 V, 10 K colder at −0.3 %/K, is 103 V, and 5 % of ln 2 more in twice the light", () => {
    const point = {
      measuredVoltage: "100 V",
      measuredTemperature: "35 °C",
      targetTemperature: "25 °C",
      openCircuitVoltageCoefficient: "-0.3 %/K",
    };
    const at = (targetIrradiance: string) =>
      pointByPointVoltage({ ...point, measuredIrradiance: "500 W/m2", targetIrradiance, irradianceFactor: "0.05" });
    expect(at("500 W/m2").text).toBe("103");
    // 103 · (1 + 0.05 · 0.693147) = 106.5697
    expect(at("1000 W/m2").show({ digits: 7 })).toBe("106.5697 V");
  });

  it("a fault at the very end of a string leaves one pole on earth", () => {
    const fault = (positiveToEarth: string, negativeToEarth: string) =>
      earthFaultPosition({ modules: 10, positiveToEarth, negativeToEarth }).text;
    expect([fault("0 V", "0.4 V"), fault("0.4 V", "0 V"), fault("0.1 V", "0.3 V")]).toEqual(["0", "10", "2.5"]);
  });

  it("a string is not corrected from light in which its voltage would vanish", () => {
    const dim = {
      measuredVoltage: "1 V",
      openCircuitVoltageCoefficient: "-0.26 %/K",
      cellTemperature: "25 °C",
      irradianceFactor: "0.3",
    };
    // 1 + 0.3 · ln (G / 1000) vanishes at 1000 · e^(−10/3) = 35.67 W/m².
    expect(openCircuitVoltageInLightAtStandard({ ...dim, irradiance: "35.8 W/m2" }).number).toBeGreaterThan(500);
    expect(() => openCircuitVoltageInLightAtStandard({ ...dim, irradiance: "35.6 W/m2" })).toThrow("vanish");
    // 1000 · e^−4 W/m², to the last digit that is kept: with a quarter, exactly nothing is left.
    const vanishing = { irradianceFactor: "0.25", irradiance: "18.31563888873418029371802127324124 W/m2" };
    expect(() => openCircuitVoltageInLightAtStandard({ ...dim, ...vanishing })).toThrow("vanish");
    // Heat counts as well: 1 − 0.0099 · 95 − 0.3 · ln 2 = −0.149, where light alone would leave 0.79.
    const hot = { openCircuitVoltageCoefficient: "-0.99 %/K", cellTemperature: "120 °C", irradiance: "500 W/m2" };
    expect(() => openCircuitVoltageInLightAtStandard({ ...dim, ...hot })).toThrow("vanish");
  });
});
