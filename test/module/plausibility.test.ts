import { describe, expect, it } from "vitest";
import { checkDatasheet, type ModuleDatasheet, plausibleCoefficient, readModule } from "../../src/module/index.js";

/** A module of 440 W: a scenario of our own. */
const M440: ModuleDatasheet = {
  maximumPower: "440 W",
  openCircuitVoltage: "39.2 V",
  shortCircuitCurrent: "14.1 A",
  mppVoltage: "32.8 V",
  mppCurrent: "13.42 A",
  openCircuitVoltageCoefficient: "-0.26 %/K",
  shortCircuitCurrentCoefficient: "0.05 %/K",
  mppCurrentCoefficient: "0.02 %/K",
  maximumPowerCoefficient: "-0.31 %/K",
  mppVoltageCoefficient: "-0.33 %/K",
  maximumSeriesFuse: "25 A",
  powerToleranceLow: "0 %",
  powerToleranceHigh: "3 %",
  cellsInSeries: 54,
  nominalOperatingCellTemperature: "45 °C",
};

/** The checks that are not met, without the part of the id that all share. */
const unmet = (change: Partial<ModuleDatasheet>): readonly string[] =>
  checkDatasheet(readModule({ ...M440, ...change }), "M440")
    .filter(({ verdict }) => verdict !== "met")
    .map(({ id }) => id.replace(/^module\//, "").replace("/M440", ""));

describe("plausibility of a datasheet", () => {
  it("finds nothing in a sound datasheet, and checks only what it states", () => {
    expect(unmet({})).toEqual([]);
    expect(checkDatasheet(readModule(M440), "M440")).toHaveLength(25);
    const {
      maximumPower,
      openCircuitVoltage,
      shortCircuitCurrent,
      mppVoltage,
      mppCurrent,
      openCircuitVoltageCoefficient,
    } = M440;
    const facts = {
      maximumPower,
      openCircuitVoltage,
      shortCircuitCurrent,
      mppVoltage,
      mppCurrent,
      openCircuitVoltageCoefficient,
    };
    expect(checkDatasheet(readModule(facts))).toHaveLength(7);
  });

  it("gives each check an id with its place, a remedy and the weakest grade", () => {
    const [first] = checkDatasheet(readModule(M440), "M440");
    expect(first).toMatchObject({
      id: "module/mpp-voltage-below-open-circuit/M440",
      verdict: "met",
      grade: "common-practice",
    });
    expect(first!.remedy).toContain("swapped");
  });

  it.each([
    [
      "U_MPP and U_OC swapped",
      { openCircuitVoltage: "32.8 V", mppVoltage: "39.2 V" },
      ["mpp-voltage-below-open-circuit", "power-matches-operating-point", "fill-factor-low-enough"],
    ],
    [
      "U_MPP equal to U_OC",
      { mppVoltage: "39.2 V", maximumPower: "526.064 W" },
      ["mpp-voltage-below-open-circuit", "fill-factor-low-enough"],
    ],
    [
      "I_MPP and I_SC swapped",
      { shortCircuitCurrent: "13.42 A", mppCurrent: "14.1 A" },
      ["mpp-current-below-short-circuit", "power-matches-operating-point"],
    ],
    ["a power of another module", { maximumPower: "455 W" }, ["power-matches-operating-point"]],
    [
      "a percentage written as a fraction",
      { openCircuitVoltageCoefficient: "-0.0026 %/K" },
      ["coefficient-not-above-plausible/openCircuitVoltageCoefficient"],
    ],
    [
      "volts written as millivolts",
      { openCircuitVoltageCoefficient: "-0.102 mV/K" },
      ["coefficient-not-above-plausible/openCircuitVoltageCoefficient"],
    ],
    [
      "coefficients of power and voltage swapped",
      { openCircuitVoltageCoefficient: "-0.31 %/K", maximumPowerCoefficient: "-0.26 %/K" },
      ["power-falls-faster-than-voltage"],
    ],
    [
      "that of U_OC in place of U_MPP",
      { mppVoltageCoefficient: "-0.24 %/K" },
      ["mpp-voltage-falls-faster-than-open-circuit"],
    ],
    ["a fuse below the current", { maximumSeriesFuse: "14 A" }, ["series-fuse-not-too-small"]],
    ["a fuse of a string of arrays", { maximumSeriesFuse: "100 A" }, ["series-fuse-not-too-large"]],
    ["half cells counted twice", { cellsInSeries: 108 }, ["cell-voltage-high-enough"]],
    ["too few cells", { cellsInSeries: 20 }, ["cell-voltage-low-enough"]],
    ["a tolerance upside down", { powerToleranceLow: "3 %", powerToleranceHigh: "0 %" }, ["tolerance-in-order"]],
    ["a wide tolerance", { powerToleranceLow: "-10 %" }, ["tolerance-not-too-wide"]],
    [
      "an ambient for an operating temperature",
      { nominalOperatingCellTemperature: "25 °C" },
      ["operating-temperature-high-enough"],
    ],
    [
      "a record for an operating temperature",
      { nominalOperatingCellTemperature: "59 °C" },
      ["operating-temperature-low-enough"],
    ],
  ] as const)("finds %s", (_, change, due) => {
    expect(unmet(change)).toEqual(due);
  });

  it.each([
    ["power deviation", "maximumPower", ["444.6 W", "444.7 W"], "power-matches-operating-point"],
    ["series fuse, low", "maximumSeriesFuse", ["17.625 A", "17.624 A"], "series-fuse-not-too-small"],
    ["series fuse, high", "maximumSeriesFuse", ["84.6 A", "84.7 A"], "series-fuse-not-too-large"],
    ["tolerance", "powerToleranceLow", ["-5 %", "-5.1 %"], "tolerance-not-too-wide"],
    ["cell voltage", "openCircuitVoltage", ["70.2 V", "70.3 V"], "cell-voltage-low-enough"],
    ["cell voltage, low", "openCircuitVoltage", ["27 V", "26.9 V"], "cell-voltage-high-enough"],
    [
      "operating temperature, low",
      "nominalOperatingCellTemperature",
      ["33 °C", "32.9 °C"],
      "operating-temperature-high-enough",
    ],
    [
      "operating temperature, high",
      "nominalOperatingCellTemperature",
      ["58 °C", "58.1 °C"],
      "operating-temperature-low-enough",
    ],
    [
      "coefficient, high",
      "openCircuitVoltageCoefficient",
      ["-0.1 %/K", "-0.0999 %/K"],
      "coefficient-not-above-plausible/openCircuitVoltageCoefficient",
    ],
    [
      "coefficient, low",
      "openCircuitVoltageCoefficient",
      ["-0.5 %/K", "-0.501 %/K"],
      "coefficient-not-below-plausible/openCircuitVoltageCoefficient",
    ],
  ] as const)("judges %s exactly at its limit and one last digit beyond", (_, key, [at, beyond], id) => {
    expect(unmet({ [key]: at })).not.toContain(id);
    expect(unmet({ [key]: beyond })).toContain(id);
  });

  it("does not judge an estimate as if the datasheet had stated it", () => {
    const estimated = { ...M440, mppVoltageCoefficient: undefined };
    const ids = checkDatasheet(readModule(estimated)).map(({ id }) => id);
    expect(ids.filter((id) => id.includes("mppVoltageCoefficient") || id.includes("mpp-voltage-falls"))).toEqual([]);
  });

  // EPJ Photovoltaics 2025, table 5: heterojunction, poly-SiOx and perovskite modules, in %/K.
  it.each([
    ["-0.264 %/K", "-0.001 %/K", "-0.322 %/K"],
    ["-0.233 %/K", "0.039 %/K", "-0.25 %/K"],
    ["-0.143 %/K", "0.0009 %/K", "-0.174 %/K"],
  ])("accepts the published coefficients %s, %s, %s", (voltage, current, power) => {
    const rest = { ...M440, mppVoltageCoefficient: undefined };
    const type = readModule({
      ...rest,
      openCircuitVoltageCoefficient: voltage,
      shortCircuitCurrentCoefficient: current,
      maximumPowerCoefficient: power,
    });
    expect(checkDatasheet(type).filter(({ verdict }) => verdict !== "met")).toEqual([]);
  });

  it("keeps its ranges as a table of common practice", () => {
    expect(plausibleCoefficient({ datasheetCoefficient: "maximumPowerCoefficient", bound: "low" }).show()).toBe(
      "-0.65 %/K",
    );
  });
});
