import { describe, expect, it } from "vitest";
import { type Check, missing } from "../../src/formula/index.js";
import { InputError } from "../../src/quantity/index.js";
import {
  arcFault,
  clipping,
  clippingOfSeries,
  dcSwitchChecks,
  earthFaultLimits,
  engineeredMaximumCurrent,
  engineeredVoltage,
  junctionChecks,
  moduleWithInverter,
  passThroughUnitChecks,
  rapidShutdown,
  regulatedString,
} from "../../src/string/index.js";

const verdicts = (checks: readonly Check[]) => checks.map(({ verdict }) => verdict);

describe("d.c. switch", () => {
  const dcSwitch = { ratedCurrent: "32 A", ratedVoltage: "1000 V", category: "DC-PV2", poles: 2 };
  const judged = (change: object, strings = 2) =>
    verdicts(
      dcSwitchChecks({
        strings,
        maximumCurrent: "32 A",
        reverseCurrent: "17.5 A",
        coldVoltage: "900 V",
        dcSwitch: { ...dcSwitch, ...change },
      }),
    );

  it("is judged by current, reverse current, voltage, category and poles", () => {
    expect(judged({})).toEqual(["met", "met", "met", "met", "met", "met"]);
    expect(judged({ category: "DC-PV1" })).toEqual(["met", "met", "met", "met", "not met", "met"]);
    expect(judged({ category: "DC-PV1" }, 1)).toEqual(["met", "met", "met", "met", "met"]);
    expect(judged({ category: "DC-21B" }, 1)).toEqual(["met", "met", "met", "met", "met"]);
    expect(judged({ poles: 1, ratedCurrent: "17 A" })).toEqual(["met", "not met", "not met", "met", "met", "not met"]);
    expect(judged({ category: missing("c"), poles: missing("p") })).toEqual([
      "met",
      "met",
      "met",
      "met",
      "open",
      "open",
    ]);
  });

  it("is there, or it is not", () => {
    const present = (value: "none" | "built in") =>
      verdicts(dcSwitchChecks({ strings: 1, maximumCurrent: "1 A", coldVoltage: "1 V", dcSwitch: value }));
    expect([present("built in"), present("none")]).toEqual([["met"], ["not met"]]);
    expect(
      verdicts(dcSwitchChecks({ strings: 1, maximumCurrent: "1 A", coldVoltage: "1 V", dcSwitch: missing("d") })),
    ).toEqual(["open"]);
  });
});

describe("engineered design under the NEC", () => {
  it("needs its size and its stamp", () => {
    expect(verdicts(engineeredVoltage({ systemPower: "100 kW", stamped: true, voltage: "985 V" }).checks)).toEqual([
      "met",
      "met",
    ]);
    expect(verdicts(engineeredVoltage({ systemPower: "99.9 kW", stamped: false, voltage: "985 V" }).checks)).toEqual([
      "not met",
      "not met",
    ]);
    expect(
      engineeredVoltage({ systemPower: missing("p"), stamped: missing("s"), voltage: missing("v") }),
    ).toMatchObject({ value: missing("v"), checks: [{ verdict: "open" }, { verdict: "open" }] });
  });

  it("keeps its floor", () => {
    const current = (averageCurrent: string) =>
      engineeredMaximumCurrent({
        systemPower: "250 kW",
        stamped: true,
        shortCircuitCurrent: "10 A",
        strings: 16,
        averageCurrent,
      }).value;
    expect([current("139 A"), current("141 A")]).toMatchObject([{ text: "140" }, { text: "141" }]);
  });
});

describe("rapid shutdown", () => {
  const shutdown = {
    rules: "NFPA 70:2020",
    place: "dwelling",
    coldOpenCircuitVoltage: "40 V",
    shutdown: "module devices",
  } as const;

  it("finds the modules per device, on the limit too", () => {
    expect(rapidShutdown(shutdown).modulesPerDevice?.text).toBe("2");
    expect(rapidShutdown({ ...shutdown, coldOpenCircuitVoltage: "40.1 V" }).modulesPerDevice?.text).toBe("1");
    expect(rapidShutdown({ ...shutdown, coldOpenCircuitVoltage: "80.1 V" })).toMatchObject({
      modulesPerDevice: null,
      checks: [{ verdict: "met" }, { verdict: "not met" }],
    });
    expect(verdicts(rapidShutdown({ ...shutdown, modulesPerDevice: 3 }).checks)).toEqual(["met", "not met"]);
  });

  it("is asked for on buildings under the NEC alone, and names a switch for the fire service where one is asked for", () => {
    expect(rapidShutdown({ ...shutdown, place: "ground" })).toMatchObject({ required: false, checks: [], toDo: [] });
    expect(rapidShutdown({ ...shutdown, rules: "IEC 62548-1:2023", fireServiceSwitch: true })).toMatchObject({
      required: false,
      toDo: [expect.stringContaining("fire service")],
    });
    expect(rapidShutdown({ ...shutdown, place: missing("site.building") })).toMatchObject({
      required: null,
      checks: [{ verdict: "open" }],
    });
    expect(verdicts(rapidShutdown({ ...shutdown, shutdown: "none" }).checks)).toEqual(["not met"]);
    expect(verdicts(rapidShutdown({ ...shutdown, shutdown: "listed hazard control" }).checks)).toEqual(["met"]);
    expect(verdicts(rapidShutdown({ ...shutdown, shutdown: missing("s") }).checks)).toEqual(["open"]);
    expect(verdicts(rapidShutdown({ ...shutdown, coldOpenCircuitVoltage: missing("v") }).checks)).toEqual([
      "met",
      "open",
    ]);
    expect(rapidShutdown(shutdown).toDo).toHaveLength(1);
  });
});

describe("arc-fault protection", () => {
  const given = {
    rules: "NFPA 70:2023",
    place: "building",
    coldVoltage: "80 V",
    protection: "in the inverter",
  } as const;

  it("is due on buildings from 80 V under the NEC", () => {
    expect(arcFault(given)).toMatchObject({ required: true, checks: [{ verdict: "met" }] });
    expect(arcFault({ ...given, coldVoltage: "79.9 V" }).required).toBe(false);
    expect(arcFault({ ...given, place: "ground" }).required).toBe(false);
    expect(arcFault({ ...given, rules: "IEC 60364-7-712:2017" })).toMatchObject({
      required: false,
      because: "the rule set does not ask for it",
    });
    expect(arcFault({ ...given, protection: "none" }).checks[0]?.verdict).toBe("not met");
    expect(arcFault({ ...given, protection: "separate" }).checks[0]?.verdict).toBe("met");
    expect(arcFault({ ...given, place: missing("b"), coldVoltage: missing("c") })).toMatchObject({
      required: null,
      checks: [{ verdict: "open", missing: ["b", "c"] }],
    });
  });
});

describe("module with inverter", () => {
  const fit = (change: object) =>
    verdicts(
      moduleWithInverter({
        protectionClass: "II",
        functionalEarthing: false,
        isolated: false,
        altitude: "2000 m",
        maximumAltitude: missing("h"),
        ...change,
      }),
    );

  it("is class II, isolated where a pole is earthed, and within its height", () => {
    expect(fit({})).toEqual(["met", "met"]);
    expect(fit({ protectionClass: "0", functionalEarthing: true })).toEqual(["not met", "not met", "met"]);
    expect(fit({ functionalEarthing: true, isolated: true })).toEqual(["met", "met", "met"]);
    expect(fit({ functionalEarthing: true, isolated: missing("i") })).toEqual(["met", "open", "met"]);
    expect(fit({ functionalEarthing: missing("f") })).toEqual(["met", "open", "met"]);
    expect(fit({ altitude: "2001 m" })).toEqual(["met", "open"]);
    expect(fit({ altitude: "3000 m", maximumAltitude: "3000 m" })).toEqual(["met", "met"]);
    expect(fit({ altitude: "3001 m", maximumAltitude: "3000 m" })).toEqual(["met", "not met"]);
    expect(fit({ altitude: missing("a") })).toEqual(["met", "open"]);
  });
});

describe("junctions", () => {
  const combiner = {
    kind: "combiner",
    inputs: 4,
    strings: 4,
    ratedCurrent: "80 A",
    ratedVoltage: "1000 V",
    maximumCurrent: "70 A",
    coldVoltage: "900 V",
  } as const;

  it("are judged in the heat that they work in", () => {
    expect(verdicts(junctionChecks(combiner).checks)).toEqual(["met", "met", "met"]);
    expect(verdicts(junctionChecks({ ...combiner, derating: "0.875" }).checks)).toEqual(["met", "met", "met"]);
    expect(
      verdicts(junctionChecks({ ...combiner, derating: "0.874", strings: 5, loadBreakSwitch: false }).checks),
    ).toEqual(["not met", "not met", "met", "not met"]);
    expect(
      verdicts(junctionChecks({ ...combiner, derating: missing("d"), loadBreakSwitch: missing("s") }).checks),
    ).toEqual(["met", "open", "met", "open"]);
    expect(verdicts(junctionChecks({ ...combiner, kind: "branch plug", loadBreakSwitch: false }).checks)).toEqual([
      "met",
      "met",
      "met",
    ]);
    expect(junctionChecks(combiner).diodeLoss).toBeNull();
    expect(
      junctionChecks({ ...combiner, diodes: { diodeVoltage: "0.8 V", mppVoltage: "640 V" } }).diodeLoss?.text,
    ).toBe("0.00125");
  });
});

describe("module-level electronics", () => {
  it("judges pass-through units by their input ratings", () => {
    const unit = {
      modules: 2,
      coldOpenCircuitVoltage: "40 V",
      shortCircuitCurrent: "12 A",
      maximumPower: "400 W",
      maximumInputVoltage: "80 V",
      maximumInputCurrent: "12 A",
      maximumInputPower: "800 W",
      ratedAgainstDatasheetCurrent: true,
    };
    expect(verdicts(passThroughUnitChecks(unit))).toEqual(["met", "met", "met"]);
    expect(verdicts(passThroughUnitChecks({ ...unit, ratedAgainstDatasheetCurrent: false }))).toEqual([
      "met",
      "not met",
      "met",
    ]);
    expect(verdicts(passThroughUnitChecks({ ...unit, modules: 3 }))).toEqual(["not met", "met", "not met"]);
    expect(verdicts(passThroughUnitChecks({ ...unit, coldOpenCircuitVoltage: missing("t") }))).toEqual([
      "open",
      "met",
      "met",
    ]);
  });

  it("finds the range of a regulated string between its power and its voltage", () => {
    const string = { inverterVoltage: "360 V", outputVoltage: "60 V", outputCurrent: "15 A", unitPower: "450 W" };
    const range = regulatedString(string);
    expect([range.shortest?.text, range.longest?.text]).toEqual(["6", "12"]);
    expect([range.limitedBy.shortest?.rule.id, range.limitedBy.longest?.rule.id]).toEqual([
      "string/units-reach-string-voltage",
      "string/regulated-power-within-limit",
    ]);
    expect(regulatedString({ ...string, maximumStringPower: "4500 W" }).longest?.text).toBe("10");
    expect(regulatedString({ ...string, maximumUnits: 8 }).longest?.text).toBe("8");
    const open = regulatedString({ ...string, maximumUnits: missing("u"), maximumStringPower: missing("w") });
    expect([open.longest?.text, open.open.length]).toEqual(["12", 2]);
    expect(verdicts(range.checksFor(13))).toEqual(["met", "not met"]);
    expect(regulatedString({ ...string, unitPower: "9000 W" }).longest).toBeNull();
    const ceilings = [
      { name: "inverter", limit: "500 V" },
      { name: "law", limit: "400 V" },
    ];
    expect(verdicts(regulatedString({ ...string, ceilings }).checks)).toEqual(["met", "met"]);
    expect(verdicts(regulatedString({ ...string, ceilings, largestVoltage: "480 V" }).checks)).toEqual([
      "met",
      "not met",
    ]);
  });
});

describe("clipping", () => {
  it("weighs a histogram exactly", () => {
    const share = clipping({
      arrayPower: "20 kW",
      limit: "15 kW",
      performance: "1",
      histogram: [
        { irradiance: 500, duration: "100 h" },
        { irradiance: 1000, duration: "50 h" },
      ],
    });
    expect(share.text).toBe("0.125");
    expect(() => clipping({ arrayPower: "20 kW", limit: "15 kW", performance: "1", histogram: [] })).toThrow(
      InputError,
    );
  });

  it("weighs a series the same, whatever the step", () => {
    const series = [...Array<number>(100).fill(10000), ...Array<number>(50).fill(20000)];
    expect(clippingOfSeries(series, 15000).number).toBeCloseTo(0.125, 12);
    expect(clippingOfSeries(Float64Array.from(series), 15000, 0.25).number).toBeCloseTo(0.125, 12);
    expect(clippingOfSeries(series, 15000).keeps).toBe(11);
    expect(() => clippingOfSeries([1, Number.NaN], 15000)).toThrow("powers[1]");
    expect(() => clippingOfSeries([0, 0], 15000)).toThrow(InputError);
  });
});

describe("earth-fault limits", () => {
  const array = {
    rules: "NFPA 70:2020",
    arrayPower: "18 kW",
    coldVoltage: "30 V",
    maximumCurrent: "8 A",
    apparentPower: "15 kVA",
    insulationMonitoring: true,
    functionalEarthing: false,
  } as const;

  it("follow the rating, and the threshold of the NEC on both sides", () => {
    const limits = earthFaultLimits({ ...array, rules: "IEC 62548-1:2023", functionalEarthing: true });
    expect([limits.insulationByPower.text, limits.residualCurrent.text, limits.groundFaultProtection]).toEqual([
      "30",
      "300",
      null,
    ]);
    expect([limits.functionalEarthDevice, limits.insulationBeforeConnection]).toMatchObject([
      { text: "1" },
      { text: "1000" },
    ]);
    const due = (change: object) => earthFaultLimits({ ...array, ...change }).groundFaultProtection;
    expect([
      due({}),
      due({ coldVoltage: "30.1 V" }),
      due({ maximumCurrent: "8.1 A" }),
      due({ coldVoltage: missing("c") }),
    ]).toEqual([false, true, true, null]);
    expect(earthFaultLimits(array).checks).toEqual([]);
    expect(verdicts(earthFaultLimits({ ...array, coldVoltage: "600 V", insulationMonitoring: false }).checks)).toEqual([
      "not met",
    ]);
    expect(
      verdicts(
        earthFaultLimits({
          ...array,
          rules: "IEC 62548-1:2023",
          insulationMonitoring: missing("i"),
          functionalEarthing: missing("f"),
        }).checks,
      ),
    ).toEqual(["open"]);
    expect(earthFaultLimits({ ...array, functionalEarthing: missing("f") }).functionalEarthDevice).toEqual(
      missing("f"),
    );
  });
});
