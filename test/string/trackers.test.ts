import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Check, missing } from "../../src/formula/index.js";
import { InputError, type Quantity } from "../../src/quantity/index.js";
import {
  joinedTrackers,
  maximumStringCurrent,
  stringsPerTracker,
  trackerChecks,
  type TrackerInput,
  type TrackerStrings,
} from "../../src/string/index.js";

const one: TrackerStrings = {
  count: 1,
  modules: 14,
  moduleType: "M440",
  mppCurrent: "13 A",
  shortCircuitCurrent: "14 A",
};
const tracker = { inputs: 2, maximumInputCurrent: "26 A", shortCircuitRating: "35 A" };
const input = (strings: readonly TrackerStrings[], change: Partial<TrackerInput["tracker"]> = {}): TrackerInput => ({
  rules: "IEC 62548-1:2023",
  strings,
  tracker: { ...tracker, ...change },
});
const verdicts = (checks: readonly Check[]) =>
  Object.fromEntries(checks.map(({ id, verdict }) => [id.replace("string/", ""), verdict]));

describe("maximum current", () => {
  it("is 1.25 times the short-circuit current, times the strings, and more with light on the rear", () => {
    expect(maximumStringCurrent({ shortCircuitCurrent: "14 A" }).text).toBe("17.5");
    expect(maximumStringCurrent({ shortCircuitCurrent: "14 A", strings: 3 }).text).toBe("52.5");
    expect(maximumStringCurrent({ shortCircuitCurrent: "14 A", currentCorrection: "1.1" }).text).toBe("19.25");
    expect(maximumStringCurrent({ shortCircuitCurrent: "14 A", currentCorrection: "1" }).origin).toMatchObject({
      rule: { id: "string/maximum-current" },
    });
    expect(() => maximumStringCurrent({ shortCircuitCurrent: "14 A", currentCorrection: "0.99" })).toThrow(InputError);
  });
});

describe("a tracker", () => {
  it("is exact on both of its limits", () => {
    const two = trackerChecks(input([{ ...one, count: 2 }]));
    expect(verdicts(two.checks)).toEqual({
      "strings-within-inputs": "met",
      "mpp-current-within-tracker": "met",
      "short-circuit-current-within-tracker": "met",
    });
    expect([
      two.mppCurrent.text,
      (two.maximumCurrent as Quantity).text,
      two.inputsUsed.text,
      two.inputsToSeal.text,
    ]).toEqual(["26", "35", "2", "0"]);
    const over = trackerChecks(input([{ ...one, count: 2, mppCurrent: "13.01 A", shortCircuitCurrent: "14.01 A" }]));
    expect(verdicts(over.checks)).toMatchObject({
      "mpp-current-within-tracker": "not met",
      "short-circuit-current-within-tracker": "not met",
    });
    expect(over.checks.map(({ rule }) => rule.force)).toEqual(["requirement", "yield", "requirement"]);
  });

  it("counts inputs, and has the empty ones sealed", () => {
    expect(trackerChecks(input([one])).inputsToSeal.text).toBe("1");
    const three = trackerChecks(input([{ ...one, count: 3 }]));
    expect(three.checks[0]).toMatchObject({
      verdict: "not met",
      remedy: "join strings in a described branch or combiner, or leave 1 off",
    });
    const joined = trackerChecks(input([{ ...one, count: 3, junction: "Y" }]));
    expect([joined.checks[0]?.verdict, joined.inputsUsed.text, joined.inputsToSeal.text]).toEqual(["met", "1", "1"]);
  });

  it("limits each plug by what it carries: a string, or all strings of a junction", () => {
    const plug = (strings: readonly TrackerStrings[]) =>
      trackerChecks(input(strings, { inputRating: "17.5 A" }))
        .checks.filter(({ rule }) => rule.id === "string/current-within-input")
        .map(({ verdict, at }) => [at, verdict]);
    expect(plug([{ ...one, count: 2 }])).toEqual([["", "met"]]);
    expect(plug([{ ...one, count: 2, junction: "Y" }])).toEqual([["Y", "not met"]]);
    expect(plug([{ ...one, shortCircuitCurrent: "14.01 A" }])).toEqual([["", "not met"]]);
  });

  it("stays open where a rating or the light on the rear is not known", () => {
    const open = trackerChecks(
      input([{ ...one, currentCorrection: missing("moduleTypes.M440.bifacial") }], {
        maximumInputCurrent: missing("x"),
      }),
    );
    expect(verdicts(open.checks)).toMatchObject({
      "mpp-current-within-tracker": "open",
      "short-circuit-current-within-tracker": "open",
    });
    expect(open.maximumCurrent).toEqual({ missing: ["moduleTypes.M440.bifacial"] });
  });

  it("refuses no string and broken counts, all at once", () => {
    expect(() => trackerChecks(input([]))).toThrow("a tracker is judged with its strings");
    expect(() => trackerChecks(input([{ ...one, count: 0, modules: 1.5 }], { inputs: 0 }))).toThrow(
      /tracker\.inputs.*strings\[0\]\.count.*strings\[0\]\.modules/,
    );
  });
});

describe("strings in parallel", () => {
  const pair = (change: Partial<TrackerStrings>, rules: TrackerInput["rules"] = "IEC 62548-1:2023") =>
    verdicts(
      trackerChecks({
        ...input([
          { ...one, name: "a", orientations: ["south"] },
          { ...one, name: "b", orientations: ["south"], ...change },
        ]),
        rules,
      }).checks,
    );

  it("are of one type and one length", () => {
    expect(pair({})).toMatchObject({ "strings-of-one-type/b": "met", "strings-of-one-length/b": "met" });
    expect(pair({ moduleType: "M400" })).toMatchObject({ "strings-of-one-type/b": "not met" });
    expect(pair({ modules: 13 })).toMatchObject({ "strings-of-one-length/b": "not met" });
  });

  it("may face different ways at some loss, but not within one string where the rules say so", () => {
    expect(pair({ orientations: ["north"] })).toMatchObject({ "one-orientation-on-tracker/b": "not met" });
    expect(pair({ orientations: ["south", "north"] })).toMatchObject({ "one-orientation-in-string/b": "not met" });
    expect(pair({ orientations: ["south", "north"] }, "AS/NZS 5033:2021")).toMatchObject({
      "one-orientation-required/b": "not met",
    });
  });

  it("are compared by their voltages in AS/NZS 5033, within 5 %", () => {
    const volts = (voltage: string) =>
      verdicts(
        trackerChecks({
          ...input([
            { ...one, name: "a", openCircuitVoltage: "600 V" },
            { ...one, name: "b", modules: 13, openCircuitVoltage: voltage },
          ]),
          rules: "AS/NZS 5033:2021",
        }).checks,
      )["parallel-voltages-agree/b"];
    expect([volts("570 V"), volts("569.9 V")]).toEqual(["met", "not met"]);
    const unknown = trackerChecks({
      ...input([
        { ...one, openCircuitVoltage: "600 V" },
        { ...one, openCircuitVoltage: missing("x") },
      ]),
      rules: "AS/NZS 5033:2021",
    });
    expect(verdicts(unknown.checks)["parallel-voltages-agree"]).toBe("open");
    expect(pair({ modules: 13 }, "AS/NZS 5033:2021")).toMatchObject({ "strings-of-one-length/b": "not met" });
  });
});

describe("joined trackers", () => {
  const single = { inputs: 1, maximumInputCurrent: "16 A", shortCircuitRating: "24 A", inputRating: "20 A" };
  const join = (
    declared: Parameters<typeof joinedTrackers>[0]["declared"],
    joints: Parameters<typeof joinedTrackers>[0]["joints"] = [],
  ) =>
    joinedTrackers({
      rules: "IEC 62548-1:2023",
      trackers: [single, single],
      declared,
      strings: [{ ...one, name: "s", count: 2 }],
      joints,
    });

  it("have the limits that the maker declares, and none are added up in their place", () => {
    const declared = join({ maximumInputCurrent: "32 A", shortCircuitRating: "48 A" });
    expect(verdicts(declared.checks)).toMatchObject({
      "joining-allowed": "met",
      "mpp-current-within-tracker": "met",
      "short-circuit-current-within-tracker": "met",
      "declared-current-plausible": "met",
    });
    const silent = join(missing("inverters[0].joinedTrackers"));
    expect(verdicts(silent.checks)).toMatchObject({
      "joining-allowed": "open",
      "mpp-current-within-tracker": "open",
      "short-circuit-current-within-tracker": "open",
    });
    const one24 = join({ maximumInputCurrent: "32 A", shortCircuitRating: missing("y") });
    expect(verdicts(one24.checks)).toMatchObject({
      "mpp-current-within-tracker": "met",
      "short-circuit-current-within-tracker": "open",
    });
    expect(verdicts(join("not allowed").checks)).toMatchObject({
      "joining-allowed": "not met",
      "short-circuit-current-within-tracker": "open",
    });
    expect(verdicts(join({ maximumInputCurrent: "33 A", shortCircuitRating: "48 A" }).checks)).toMatchObject({
      "declared-current-plausible": "not met",
    });
  });

  it("keep the limit of each plug, and load whatever joins them", () => {
    const ratings = { maximumInputCurrent: "32 A", shortCircuitRating: "48 A" };
    const checks = join(ratings, [
      { name: "branch", ratedCurrent: "30 A" },
      { name: "pole", ratedCurrent: "35 A", feeds: ["s"] },
      { name: "other", ratedCurrent: "5 A", feeds: ["t"] },
    ]).checks;
    expect(verdicts(checks)).toMatchObject({
      "current-within-input/s": "met",
      "current-within-joint/branch": "not met",
      "current-within-joint/pole": "met",
      "current-within-joint/other": "open",
    });
  });
});

describe("strings per tracker", () => {
  it("are found by the conditions, on the limit too", () => {
    const most = stringsPerTracker({ mppCurrent: "13 A", shortCircuitCurrent: "14 A", tracker });
    expect(most).toEqual({ forSafety: 2, forYield: 2, open: [] });
    expect(stringsPerTracker({ mppCurrent: "13.01 A", shortCircuitCurrent: "14.01 A", tracker })).toMatchObject({
      forSafety: 1,
      forYield: 1,
    });
    expect(stringsPerTracker({ mppCurrent: "30 A", shortCircuitCurrent: "31 A", tracker })).toMatchObject({
      forSafety: null,
      forYield: null,
    });
    expect(
      stringsPerTracker({
        mppCurrent: "13 A",
        shortCircuitCurrent: "14 A",
        currentCorrection: missing("b"),
        tracker: { ...tracker, maximumInputCurrent: missing("a") },
      }),
    ).toEqual({ forSafety: null, forYield: null, open: ["b", "a"] });
  });

  it("law: n pass and n + 1 do not", () => {
    const tenth = fc.integer({ min: 10, max: 400 }).map((value) => `${value / 10} A`);
    fc.assert(
      fc.property(tenth, fc.integer({ min: 100, max: 2000 }), (current, rating) => {
        const limits = { inputs: 9, maximumInputCurrent: `${rating / 10} A`, shortCircuitRating: `${rating / 10} A` };
        const { forSafety } = stringsPerTracker({ mppCurrent: current, shortCircuitCurrent: current, tracker: limits });
        const safe = (strings: number) =>
          maximumStringCurrent({ shortCircuitCurrent: current, strings }).number <= rating / 10;
        expect(safe((forSafety ?? 0) + 1)).toBe(false);
        if (forSafety !== null) expect(safe(forSafety)).toBe(true);
      }),
    );
  });

  it("law: more strings never reduce the current", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 0, max: 30 }),
        (strings, tenths, percent) => {
          const at = (count: number) =>
            maximumStringCurrent({
              shortCircuitCurrent: `${tenths / 10} A`,
              currentCorrection: `${1 + percent / 100}`,
              strings: count,
            }).number;
          expect(at(strings + 1)).toBeGreaterThan(at(strings));
        },
      ),
    );
  });
});
