import { describe, expect, it } from "vitest";
import {
  bandGapVoltageAt,
  currentAtJunctionVoltage,
  idealFillFactor,
  idealOpenCircuitVoltage,
  lesserBifaciality,
  maximumPowerUnder,
  moduleEfficiency,
  mppCurrentUnder,
  nominalModuleOperatingTemperature,
  openCircuitVoltageBetween,
  openCircuitVoltageRatio,
  openCircuitVoltageSlope,
  openCircuitVoltageUnder,
  procedure2Current2009,
  procedure2Current2021,
  procedure2Voltage2009,
  procedure2Voltage2021,
  sandiaCellTemperature,
  saturationCurrentFromDatasheet,
  seriesResistanceAt,
  shortCircuitCurrentBetween,
  shortCircuitCurrentUnder,
  thermalVoltage,
} from "../../src/module/index.js";
import { isInputError, type Quantity } from "../../src/quantity/index.js";

// Each value was computed apart from the library, in 50 digits, from the formula as its source has it.
const rows: readonly (readonly [string, () => Quantity, string])[] = [
  [
    "U_OC under half the light at 45 °C",
    () =>
      openCircuitVoltageUnder({
        openCircuitVoltage: "40 V",
        openCircuitVoltageCoefficient: "-0.25 %/K",
        cellTemperature: "45 °C",
        irradiance: "500 W/m2",
        diodeFactor: "1.2",
        cellsInSeries: 60,
      }),
    "36.63175845226203",
  ],
  [
    "I_SC under half the light at 65 °C",
    () =>
      shortCircuitCurrentUnder({
        shortCircuitCurrent: "14 A",
        shortCircuitCurrentCoefficient: "0.05 %/K",
        cellTemperature: "65 °C",
        irradiance: "500 W/m2",
      }),
    "7.14",
  ],
  [
    "I_MPP under half the light at 65 °C",
    () =>
      mppCurrentUnder({
        mppCurrent: "13 A",
        mppCurrentCoefficient: "-0.02 %/K",
        cellTemperature: "65 °C",
        irradiance: "500 W/m2",
      }),
    "6.448",
  ],
  [
    "P_max under half the light at 65 °C",
    () =>
      maximumPowerUnder({
        maximumPower: "440 W",
        maximumPowerCoefficient: "-0.3 %/K",
        cellTemperature: "65 °C",
        irradiance: "500 W/m2",
      }),
    "193.6",
  ],
  [
    "cell temperature in 800 W/m²",
    () => sandiaCellTemperature({ moduleTemperature: "46.4 °C", irradiance: "800 W/m2", cellRise: "3 K" }),
    "48.8",
  ],
  [
    "NMOT",
    () => nominalModuleOperatingTemperature({ constantHeatLoss: "25 W/(m2*K)", windHeatLoss: "6.84 W*s/(m3*K)" }),
    "45.12562814070352",
  ],
  ["thermal voltage at 50 °C", () => thermalVoltage({ cellTemperature: "50 °C" }), "0.027846912436153"],
  ["band gap at 75 °C", () => bandGapVoltageAt({ cellTemperature: "75 °C" }), "1.105995415"],
  [
    "U_OC of a faint diode",
    () => idealOpenCircuitVoltage({ photocurrent: "3 mA", saturationCurrent: "1 mA", thermalVoltage: "0.5 V" }),
    "0.6931471805599453",
  ],
  [
    "current at a low junction voltage",
    () =>
      currentAtJunctionVoltage({
        photocurrent: "3.4 A",
        saturationCurrent: "0.1 A",
        thermalVoltage: "0.0257 V",
        junctionVoltage: "0.05 V",
        shuntResistance: "6.6 ohm",
      }),
    "2.792693590649176",
  ],
  [
    "saturation current at a low voltage",
    () =>
      saturationCurrentFromDatasheet({
        shortCircuitCurrent: "8.21 A",
        openCircuitVoltage: "0.05 V",
        thermalVoltage: "0.0257 V",
      }),
    "1.368947872799275",
  ],
  ["fill factor of Green", () => idealFillFactor({ normalisedVoltage: "22.5" }), "0.823616426541713"],
  [
    "slope of U_OC",
    () =>
      openCircuitVoltageSlope({
        openCircuitVoltage: "0.7 V",
        bandGapVoltage: "1.2 V",
        temperatureExponent: 3,
        cellTemperature: "50 °C",
      }),
    "-0.001805789067951289",
  ],
  [
    "f(G) in half the light",
    () =>
      openCircuitVoltageRatio({
        irradiance: "500 W/m2",
        linearIrradianceFactor: "0.06",
        quadraticIrradianceFactor: "0.002",
      }),
    "1.042549736861433",
  ],
  [
    "R_S1 at 45 °C",
    () => seriesResistanceAt({ seriesResistance: "0.3 ohm", curveCorrection: "0.001 ohm", cellTemperature: "45 °C" }),
    "0.32",
  ],
  [
    "procedure 2 (2009), current",
    () =>
      procedure2Current2009({
        measuredCurrent: "8 A",
        measuredIrradiance: "800 W/m2",
        targetIrradiance: "1000 W/m2",
        measuredTemperature: "45 °C",
        targetTemperature: "25 °C",
        shortCircuitCurrentCoefficient: "0.05 %/K",
      }),
    "9.9",
  ],
  [
    "procedure 2 (2021), current",
    () =>
      procedure2Current2021({
        measuredCurrent: "8 A",
        measuredIrradiance: "800 W/m2",
        targetIrradiance: "1000 W/m2",
        measuredTemperature: "65 °C",
        targetTemperature: "35 °C",
        shortCircuitCurrentCoefficient: "0.05 %/K",
      }),
    "9.852941176470588",
  ],
  [
    "procedure 2 (2009), voltage",
    () =>
      procedure2Voltage2009({
        measuredVoltage: "30 V",
        measuredCurrent: "8 A",
        correctedCurrent: "10 A",
        measuredOpenCircuitVoltage: "37 V",
        measuredIrradiance: "800 W/m2",
        targetIrradiance: "1000 W/m2",
        measuredTemperature: "45 °C",
        targetTemperature: "25 °C",
        openCircuitVoltageCoefficient: "-0.3 %/K",
        irradianceFactor: "0.06",
        seriesResistance: "0.3 ohm",
        curveCorrection: "0.001 ohm",
      }),
    "32.31537868391755",
  ],
  [
    "procedure 2 (2021), voltage",
    () =>
      procedure2Voltage2021({
        measuredVoltage: "30 V",
        measuredCurrent: "8 A",
        correctedCurrent: "10 A",
        openCircuitVoltage: "39 V",
        measuredVoltageRatio: "1.02",
        targetVoltageRatio: "1.01",
        measuredTemperature: "45 °C",
        targetTemperature: "35 °C",
        openCircuitVoltageCoefficient: "-0.3 %/K",
        measuredSeriesResistance: "0.32 ohm",
        curveCorrection: "0.001 ohm",
      }),
    "31.04366726849156",
  ],
  [
    "efficiency in 800 W/m²",
    () => moduleEfficiency({ maximumPower: "440 W", moduleArea: "2.2 m2", irradiance: "800 W/m2" }),
    "0.25",
  ],
  [
    "lesser bifaciality, of the current",
    () => lesserBifaciality({ bifacialityOfCurrent: "0.70", bifacialityOfPower: "0.72" }),
    "0.7",
  ],
  [
    "lesser bifaciality, of the power",
    () => lesserBifaciality({ bifacialityOfCurrent: "0.72", bifacialityOfPower: "0.70" }),
    "0.7",
  ],
];

const DIGITS = 16;

describe("values computed apart from the library", () => {
  it.each(rows)("%s", (_, call, due) => {
    expect(call().show({ digits: DIGITS }).split(" ")[0]).toBe(due);
  });
});

describe("requirements between symbols", () => {
  const codeOf = (call: () => unknown): string => {
    try {
      call();
    } catch (error) {
      if (isInputError(error)) return error.problems.map(({ code }) => code).join();
      throw error;
    }
    return "none";
  };
  const junction = (junctionVoltage: string, scale: string): string =>
    codeOf(() =>
      currentAtJunctionVoltage({
        photocurrent: "3.4 A",
        saturationCurrent: "1e-9 A",
        thermalVoltage: scale,
        junctionVoltage,
        shuntResistance: "6.6 ohm",
      }),
    );
  const open = (openCircuitVoltage: string, scale: string): string =>
    codeOf(() =>
      saturationCurrentFromDatasheet({ shortCircuitCurrent: "8 A", openCircuitVoltage, thermalVoltage: scale }),
    );

  it.each([
    ["5 V", "0.05 V", "none"],
    ["5 V", "0.0499 V", "requirement"],
    ["4.999 V", "0.05 V", "none"],
  ])("%s at %s: %s, since nothing carries a hundred thermal voltages", (voltage, scale, code) => {
    expect([junction(voltage, scale), open(voltage, scale)]).toEqual([code, code]);
  });

  it("compare with a hundred times the thermal voltage, not with a hundred volts", () => {
    expect(open("120 V", "2 V")).toBe("none");
    expect(open("150 V", "1.6 V")).toBe("none");
  });

  it("keep two points of a line apart", () => {
    const point = { voltageBefore: "0.1 V", currentBefore: "1 A", voltageAfter: "0.1 V", currentAfter: "1 A" };
    expect(codeOf(() => shortCircuitCurrentBetween(point))).toBe("requirement");
    expect(codeOf(() => openCircuitVoltageBetween(point))).toBe("requirement");
  });
});
