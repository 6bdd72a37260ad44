import { describe, expect, it } from "vitest";
import {
  frequencyDroopResponse,
  lineVoltageOfSetting,
  mcs_2012_voltageRiseTarget,
  overfrequencyReduction,
  pennState_acVoltageTarget,
  powerFactorOfPowerResponse,
  rd1699_2011_voltageChangeLimit,
  rebt_2002_voltageChangeLimit,
  rebtOddHarmonicLimit,
  shortCircuitPowerOfNetwork,
  shortTermFlicker,
  smoothedPercentile,
  tapAmpacityByDevices,
  tor_undated_voltageChangeLimit,
  vdeArN4105_2011_voltageChangeLimit,
  vdew_2001_voltageChangeLimit,
  voltageAtInfeed,
  voltageUnbalance,
  voltVarResponse,
  voltVarResponseInVolts,
  voltWattResponseInVolts,
  wattVarResponse,
  westernPower_2017_voltageRiseTarget,
} from "../../src/grid/index.js";

// Values that a person can work out on paper.
describe("curves between unequal points", () => {
  const shares = { voltageShare1: 0.9, voltageShare2: 0.95, voltageShare3: 1.05, voltageShare4: 1.1 };
  const volts = { voltage1: "200 V", voltage2: "210 V", voltage3: "230 V", voltage4: "250 V" };

  it.each([
    [0.5, "0.5"],
    [0.9, "0.5"],
    [0.92, "0.34"],
    [0.95, "0.1"],
    [0.98, "0.01"],
    [1.05, "-0.2"],
    [1.06, "-0.28"],
    [1.1, "-0.6"],
    [1.2, "-0.6"],
  ])("volt-var at %s gives %s", (voltageShare, due) => {
    const reactive = { reactive1: 0.5, reactive2: 0.1, reactive3: -0.2, reactive4: -0.6 };
    expect(voltVarResponse({ voltageShare: `${voltageShare} p.u.`, ...inPerUnit(shares), ...reactive }).text).toBe(due);
  });

  it.each([
    ["195 V", "0.5"],
    ["200 V", "0.5"],
    ["205 V", "0.3"],
    ["210 V", "0.1"],
    ["215 V", "0"],
    ["230 V", "-0.3"],
    ["240 V", "-0.45"],
    ["250 V", "-0.6"],
    ["260 V", "-0.6"],
  ])("volt-var at %s gives %s", (voltage, due) => {
    const reactive = { reactive1: 0.5, reactive2: 0.1, reactive3: -0.3, reactive4: -0.6 };
    expect(voltVarResponseInVolts({ voltage, ...volts, ...reactive }).text).toBe(due);
  });

  it("volt-var without a middle part takes the value where its halves meet", () => {
    const meeting = { voltageShare1: 0.9, voltageShare2: 1, voltageShare3: 1, voltageShare4: 1.1 };
    const reactive = { reactive1: 0.4, reactive2: 0.1, reactive3: 0.1, reactive4: -0.4 };
    const at = (share: string) => voltVarResponse({ voltageShare: share, ...inPerUnit(meeting), ...reactive }).text;
    expect([at("0.95 p.u."), at("1 p.u."), at("1.02 p.u.")]).toEqual(["0.25", "0.1", "0"]);
    const inVolts = { voltage1: "200 V", voltage2: "220 V", voltage3: "220 V", voltage4: "240 V" };
    const atVolts = (voltage: string) => voltVarResponseInVolts({ voltage, ...inVolts, ...reactive }).text;
    expect([atVolts("210 V"), atVolts("220 V"), atVolts("224 V")]).toEqual(["0.25", "0.1", "0"]);
  });

  it.each([
    ["245 V", "0.9"],
    ["250 V", "0.9"],
    ["254 V", "0.62"],
    ["260 V", "0.2"],
    ["270 V", "0.2"],
  ])("volt-watt at %s gives %s", (voltage, due) => {
    expect(
      voltWattResponseInVolts({ voltage, voltage1: "250 V", voltage2: "260 V", active1: 0.9, active2: 0.2 }).text,
    ).toBe(due);
  });

  it.each([
    [0.1, "0.1"],
    [0.2, "0.1"],
    [0.35, "0"],
    [0.5, "-0.1"],
    [0.75, "-0.27"],
    [1, "-0.44"],
  ])("watt-var at %s gives %s", (activeShare, due) => {
    const points = { active1: 0.2, active2: 0.5, active3: 1, reactive1: 0.1, reactive2: -0.1, reactive3: -0.44 };
    expect(wattVarResponse({ activeShare, ...points }).text).toBe(due);
  });

  it("watt-var keeps its last value above its last point", () => {
    const points = { active1: 0.2, active2: 0.5, active3: 0.9, reactive1: 0.1, reactive2: -0.1, reactive3: -0.44 };
    expect(wattVarResponse({ activeShare: 0.7, ...points }).text).toBe("-0.27");
    expect(wattVarResponse({ activeShare: 0.95, ...points }).text).toBe("-0.44");
  });

  it.each([
    [0.4, "0.98"],
    [0.6, "0.964"],
    [0.75, "0.94"],
    [1, "0.9"],
  ])("power factor at %s gives %s", (activeShare, due) => {
    const points = { active1: 0.5, active2: 1, powerFactor1: 0.98, powerFactor2: 0.9 };
    expect(powerFactorOfPowerResponse({ activeShare, ...points }).text).toBe(due);
  });

  it("power factor keeps its last value above its last point", () => {
    const points = { active1: 0.5, active2: 0.9, powerFactor1: 0.98, powerFactor2: 0.9 };
    expect(powerFactorOfPowerResponse({ activeShare: 0.7, ...points }).text).toBe("0.94");
    expect(powerFactorOfPowerResponse({ activeShare: 0.95, ...points }).text).toBe("0.9");
  });
});

function inPerUnit<K extends string>(shares: Readonly<Record<K, number>>): Record<K, string> {
  return Object.fromEntries(Object.entries<number>(shares).map(([key, share]) => [key, `${share} p.u.`])) as Record<
    K,
    string
  >;
}

describe("frequency", () => {
  it("leaves the power as it is within the dead band", () => {
    const plant = {
      nominalFrequency: "50 Hz",
      deadBand: "0.5 Hz",
      droop: 0.05,
      activeShareBefore: 0.6,
      availableShare: 1,
    };
    const at = (frequency: string) => frequencyDroopResponse({ frequency, ...plant }).text;
    expect([at("49.7 Hz"), at("50.3 Hz"), at("51 Hz"), at("49 Hz")]).toEqual(["0.6", "0.6", "0.4", "0.8"]);
  });

  it("reduces nothing below the frequency at which the reduction starts", () => {
    const plant = { startFrequency: "50.2 Hz", frequencyDroop: 0.05, nominalFrequency: "50 Hz" };
    const at = (frequency: string) => overfrequencyReduction({ frequency, ...plant }).text;
    expect([at("50.1 Hz"), at("50.7 Hz"), at("54 Hz")]).toEqual(["0", "0.2", "1"]);
  });
});

describe("voltage", () => {
  it("limits and targets are their share of the nominal voltage", () => {
    const nominalVoltage = "200 V";
    expect([
      mcs_2012_voltageRiseTarget({ nominalVoltage }).text,
      pennState_acVoltageTarget({ nominalVoltage }).text,
      rd1699_2011_voltageChangeLimit({ nominalVoltage }).text,
      rebt_2002_voltageChangeLimit({ nominalVoltage }).text,
      tor_undated_voltageChangeLimit({ nominalVoltage }).text,
      vdeArN4105_2011_voltageChangeLimit({ nominalVoltage }).text,
      vdew_2001_voltageChangeLimit({ nominalVoltage }).text,
      westernPower_2017_voltageRiseTarget({ nominalVoltage }).text,
    ]).toEqual(["2", "2", "5", "3", "6", "6", "4", "2"]);
  });

  it("a setting between line and neutral stands for one between lines", () => {
    expect(lineVoltageOfSetting({ phaseVoltage: "253 V", lineToNeutral: "230 V", lineToLine: "400 V" }).text).toBe(
      "440",
    );
  });

  it("the greatest power that an impedance carries halves the voltage", () => {
    const most = {
      networkVoltage: "400 V",
      activePower: "-40 kW",
      reactivePower: "0 var",
      resistance: "1 ohm",
      reactance: "0 ohm",
    };
    expect(voltageAtInfeed(most).text).toBe("200");
    expect(() => voltageAtInfeed({ ...most, activePower: "-40001 W" })).toThrow("no voltage carries that power");
  });

  it("unbalance is the larger deviation from the mean, above or below", () => {
    expect(voltageUnbalance({ lineVoltages: ["400 V", "400 V", "385 V"] }).show()).toBe("0.02532");
    expect(voltageUnbalance({ lineVoltages: ["400 V", "415 V", "400 V"] }).show()).toBe("0.02469");
  });

  it("short-circuit power of a network of 0.3 and 0.4 Ω at 400 V", () => {
    expect(
      shortCircuitPowerOfNetwork({ nominalVoltage: "400 V", resistance: "0.3 ohm", reactance: "0.4 ohm" }).text,
    ).toBe("320000");
  });
});

describe("flicker, harmonics and taps", () => {
  it("each level alone gives the root of its weight times the level", () => {
    const none = { percentile01: 0, percentile1: 0, percentile3: 0, percentile10: 0, percentile50: 0 };
    const alone = (key: keyof typeof none, level: string) => shortTermFlicker({ ...none, [key]: level }).text;
    // A level equal to its weight gives the weight.
    expect(alone("percentile01", "0.0314")).toBe("0.0314");
    expect(alone("percentile1", "0.0525")).toBe("0.0525");
    expect(alone("percentile3", "0.0657")).toBe("0.0657");
    expect(alone("percentile10", "0.28")).toBe("0.28");
    expect(alone("percentile50", "0.08")).toBe("0.08");
    const ones = { percentile01: 1, percentile1: 1, percentile3: 1, percentile10: 1, percentile50: 1 };
    expect(shortTermFlicker(ones).show({ digits: 5 })).toBe("0.71386");
  });

  it("a smoothed level is a mean", () => expect(smoothedPercentile({ percentiles: [1, 2, 9] }).text).toBe("4"));

  it("the fourth harmonic is no third one", () => {
    expect([rebtOddHarmonicLimit({ order: 3 }).text, rebtOddHarmonicLimit({ order: 4 }).text]).toEqual([
      "0.05",
      "0.0625",
    ]);
  });

  it("a tap carries a third of all devices", () => {
    expect(tapAmpacityByDevices({ feederDevice: "200 A", sourceDevices: ["60 A", "40 A"] }).text).toBe("100");
  });
});
