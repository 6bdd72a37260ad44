import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stringFuseRatings } from "../../src/device/index.js";
import { type Check, missing } from "../../src/formula/index.js";
import {
  fuseWindow,
  groupFuse,
  minimumCircuitCurrent,
  necConductorChecks,
  stringFuse,
  type StringFuseInput,
} from "../../src/string/index.js";

const four: StringFuseInput = {
  rules: "IEC 62548-1:2023",
  strings: 4,
  shortCircuitCurrent: "10 A",
  maximumSeriesFuse: "20 A",
  backfeedCurrent: "0 A",
  fuse: "choose",
};
const ids = (checks: readonly Check[], verdict: string) =>
  checks.filter((check) => check.verdict === verdict).map(({ rule }) => rule.id.replace("string/", ""));

describe("the need for string fuses", () => {
  const need = (change: Partial<StringFuseInput>) => stringFuse({ ...four, ...change });

  it("is exact where the reverse current equals the module's rating", () => {
    expect(need({ strings: 3, maximumSeriesFuse: "25 A" })).toMatchObject({ needed: false, rating: null });
    expect(need({ strings: 3, maximumSeriesFuse: "24.9 A" }).needed).toBe(true);
    expect(need({ strings: 3, maximumSeriesFuse: "25 A", backfeedCurrent: "0.1 A" }).needed).toBe(true);
  });

  it("differs by the rule set: the form of 2016 has neither 1.25 nor back-feed", () => {
    const text = (change: Partial<StringFuseInput>) => {
      const current = need({ strings: 3, backfeedCurrent: "1 A", ...change }).reverseCurrent;
      return "text" in current ? current.text : null;
    };
    expect(text({ rules: "IEC 62548:2016" })).toBe("20");
    expect(text({ rules: "IEC 62548-1:2023" })).toBe("26");
    expect(text({ rules: "NFPA 70:2020" })).toBe("26");
    expect(text({ rules: "IEC 62548-1:2023", currentCorrection: "1.2" })).toBe("31");
  });

  it("says how many strings may do without", () => {
    expect(need({}).withoutFuses?.text).toBe("2");
    expect(need({ maximumSeriesFuse: "25 A" }).withoutFuses?.text).toBe("3");
    expect(need({ rules: "IEC 62548:2016" }).withoutFuses?.text).toBe("3");
    expect(need({ maximumSeriesFuse: missing("m") })).toMatchObject({
      needed: null,
      withoutFuses: null,
      need: { verdict: "open", missing: ["m"] },
    });
  });

  it("is a requirement where there is no fuse, and looks at unfused parts", () => {
    const none = stringFuse({ ...four, fuse: "none" });
    expect(ids(none.checks, "not met")).toEqual(["reverse-current-within-module"]);
    const two = {
      ...four,
      strings: 2,
      unfusedParts: [
        { name: "cable", rating: "12.5 A" },
        { name: "plug", rating: "12.4 A" },
      ],
    };
    expect(stringFuse(two)).toMatchObject({ need: { verdict: "met" }, needed: true });
    expect(stringFuse({ ...two, fuse: "none" }).checks.map(({ at, verdict }) => [at, verdict])).toEqual([
      ["", "met"],
      ["cable", "met"],
      ["plug", "not met"],
    ]);
  });
});

describe("the rating of a string fuse", () => {
  it.each([
    ["IEC 62548-1:2023", "15", false, "24", "16"],
    ["AS/NZS 5033:2021", "15", false, "24", "16"],
    ["IEC 60364-7-712:2017", "13.75", true, undefined, "15"],
    ["NFPA 70:2017", "15.625", true, undefined, "20"],
    ["NFPA 70:2023", "15.625", true, undefined, "20"],
  ] as const)("has the window of %s", (rules, low, lowAllowed, high, chosen) => {
    const fuse = stringFuse({ ...four, rules });
    expect([fuse.window.low.text, fuse.window.lowAllowed, fuse.window.high?.text]).toEqual([low, lowAllowed, high]);
    expect(fuse.rating?.text).toBe(chosen);
  });

  it("is strict at both bounds of IEC 62548, and may equal the module's rating", () => {
    const verified = (rating: string, current = "10 A") =>
      ids(stringFuse({ ...four, shortCircuitCurrent: current, fuse: rating }).checks, "not met");
    expect(verified("15 A")).toEqual(["fuse-above-lower-bound"]);
    expect(verified("16 A")).toEqual([]);
    expect(verified("20 A")).toEqual([]);
    expect(verified("25 A")).toEqual(["fuse-below-upper-bound", "fuse-within-module-rating"]);
    expect(verified("12 A", "5 A")).toEqual(["fuse-below-upper-bound"]);
    expect(verified("10 A", "5 A")).toEqual([]);
  });

  it("may be 125 % smaller under the NEC where the device is rated for continuous duty", () => {
    expect(fuseWindow({ ...four, rules: "NFPA 70:2020", ratedForContinuousDuty: true }).low.text).toBe("12.5");
  });

  it("says which bound fails where nothing fits", () => {
    const none = stringFuse({ ...four, shortCircuitCurrent: "14 A" });
    expect(none.rating).toBeNull();
    expect(none.blockedBy.map(({ rule }) => rule.id)).toEqual(["string/fuse-within-module-rating"]);
    expect(none.checks).toEqual(none.blockedBy);
    const huge = stringFuse({ ...four, shortCircuitCurrent: "30 A", maximumSeriesFuse: "60 A" });
    expect(huge.blockedBy.map(({ rule }) => rule.id)).toEqual(["string/fuse-above-lower-bound"]);
  });

  it("is shared by several strings only within what the module has left", () => {
    const shared = (rules: StringFuseInput["rules"], maximumSeriesFuse: string) =>
      stringFuse({ ...four, rules, stringsPerDevice: 2, shortCircuitCurrent: "4 A", maximumSeriesFuse }).window;
    expect([shared("IEC 62548-1:2023", "20 A").low.text, shared("IEC 62548-1:2023", "20 A").high]).toEqual([
      "12",
      null,
    ]);
    expect(shared("IEC 62548-1:2023", "20 A").module).toMatchObject({ text: "16" });
    expect([shared("NFPA 70:2020", "20 A").low.text, shared("NFPA 70:2020", "20 A").module]).toMatchObject([
      "12.5",
      { text: "15" },
    ]);
    expect(fuseWindow({ ...four, stringsPerDevice: 2, maximumSeriesFuse: missing("m") }).module).toEqual(missing("m"));
  });

  it("is corrected for the heat of its box", () => {
    const hot = (change: Partial<StringFuseInput>) => stringFuse({ ...four, fuse: "20 A", ...change }).checks.at(-1);
    expect(hot({ fuseAmbient: "45 °C" })).toMatchObject({ id: "string/fuse-ambient-within-reference", verdict: "met" });
    expect(hot({ fuseAmbient: "46 °C" })).toMatchObject({ id: "string/fuse-carries-when-hot", verdict: "open" });
    expect(hot({ fuseAmbient: "46 °C", ambientFactor: missing("junctions[0].derating") })).toMatchObject({
      verdict: "open",
      missing: ["junctions[0].derating"],
    });
    expect(hot({ fuseAmbient: missing("junctions[0].ambient") })).toMatchObject({
      verdict: "open",
      missing: ["junctions[0].ambient"],
    });
    expect(hot({ ambientFactor: "0.7" })).toMatchObject({ id: "string/fuse-carries-when-hot", verdict: "met" });
    expect(hot({ ambientFactor: "0.6" })?.verdict).toBe("not met");
    expect(hot({ ambientFactor: "0.625" })?.verdict).toBe("met");
  });

  it("has its voltage judged where both are given", () => {
    const voltage = (fuseVoltage: string) =>
      stringFuse({ ...four, coldVoltage: "980 V", fuseVoltage }).checks.at(-1)?.verdict;
    expect([voltage("1000 V"), voltage("979 V")]).toEqual(["met", "not met"]);
  });

  it("law: a rating in the window passes and its neighbours outside fail", () => {
    const ratings = stringFuseRatings.sizes();
    let premises = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 200 }),
        fc.constantFrom("15 A", "20 A", "25 A", "30 A"),
        (tenths, maximumSeriesFuse) => {
          const fused = { ...four, shortCircuitCurrent: `${tenths / 10} A`, maximumSeriesFuse };
          const [low, high] = [tenths * 1.5, Math.min(tenths * 2.4, Infinity)];
          for (const rating of ratings) {
            const inside =
              rating.number * 10 > low &&
              rating.number * 10 < high &&
              rating.number <= Number.parseFloat(maximumSeriesFuse);
            const refused = stringFuse({ ...fused, fuse: rating }).checks.some(
              ({ verdict, rule }) => verdict === "not met" && rule.force === "requirement",
            );
            expect(refused).toBe(!inside);
            if (inside) premises += 1;
          }
          const chosen = stringFuse(fused);
          const fits = ratings.some(
            (rating) =>
              rating.number * 10 > low &&
              rating.number * 10 < high &&
              rating.number <= Number.parseFloat(maximumSeriesFuse),
          );
          if (chosen.needed) expect(chosen.rating !== null).toBe(fits);
        },
      ),
    );
    expect(premises).toBeGreaterThan(0);
  });
});

describe("devices and conductors beyond the string", () => {
  it("chooses the device of an array", () => {
    const group = { shortCircuitCurrent: "80 A", maximumCurrent: "100 A", fuse: "choose" as const };
    expect(groupFuse({ ...group, rules: "IEC 62548-1:2023" }).rating?.text).toBe("125");
    expect(groupFuse({ ...group, rules: "NFPA 70:2020" }).rating?.text).toBe("125");
    expect(groupFuse({ ...group, rules: "NFPA 70:2020", fuse: "124 A" }).checks[0]?.verdict).toBe("not met");
    expect(
      groupFuse({
        ...group,
        rules: "IEC 62548-1:2023",
        fuse: "192 A",
        coldVoltage: "900 V",
        fuseVoltage: "1000 V",
      }).checks.map(({ verdict }) => verdict),
    ).toEqual(["met", "not met", "met"]);
  });

  it("rates circuits with and without devices", () => {
    const string = {
      circuit: "string",
      device: null,
      downstreamDevice: null,
      strings: 3,
      maximumCurrent: "17.5 A",
    } as const;
    expect(minimumCircuitCurrent(string).text).toBe("35");
    expect(minimumCircuitCurrent({ ...string, downstreamDevice: "32 A" }).text).toBe("67");
    expect(minimumCircuitCurrent({ ...string, device: "20 A" }).text).toBe("20");
    expect(
      minimumCircuitCurrent({
        circuit: "sub-array",
        device: null,
        arrayDevice: null,
        maximumCurrent: "35 A",
        others: "20 A",
      }).text,
    ).toBe("35");
    expect(
      minimumCircuitCurrent({
        circuit: "sub-array",
        device: null,
        arrayDevice: "160 A",
        maximumCurrent: "35 A",
        others: "70 A",
      }).text,
    ).toBe("230");
    expect(minimumCircuitCurrent({ circuit: "array", device: null, maximumCurrent: "105 A" }).text).toBe("105");
  });

  it("keeps the checks of the NEC apart: 156 % before correction, 125 % after it, and the device", () => {
    const wire = {
      rules: "NFPA 70:2020" as const,
      maximumCurrent: "17.3375 A",
      terminalAmpacity: "35 A",
      correctedAmpacity: "17.3375 A",
    };
    expect(necConductorChecks(wire).map(({ verdict }) => verdict)).toEqual(["met", "met"]);
    expect(necConductorChecks({ ...wire, correctedAmpacity: "17.3374 A" })[1]?.verdict).toBe("not met");
    expect(necConductorChecks({ ...wire, terminalAmpacity: "21.671875 A" })[0]?.verdict).toBe("met");
    expect(necConductorChecks({ ...wire, terminalAmpacity: "21.6718 A" })[0]?.verdict).toBe("not met");
    const device = (rating: string, limit?: string) =>
      necConductorChecks({
        ...wire,
        correctedAmpacity: "29.12 A",
        device: rating,
        ...(limit ? { smallConductorLimit: limit } : {}),
      })
        .slice(2)
        .map(({ verdict }) => verdict);
    expect(device("30 A")).toEqual(["met"]);
    expect(device("35 A")).toEqual(["not met"]);
    expect(device("30 A", "30 A")).toEqual(["met", "met"]);
    expect(device("30 A", "20 A")).toEqual(["met", "not met"]);
    const large = (correctedAmpacity: string, rating: string) =>
      necConductorChecks({ ...wire, correctedAmpacity, device: rating })[2]?.verdict;
    expect([large("750 A", "800 A"), large("850 A", "1000 A"), large("7000 A", "6000 A")]).toEqual([
      "met",
      "not met",
      "met",
    ]);
    expect(
      necConductorChecks({ ...wire, correctedAmpacity: missing("routes[0]"), device: "30 A" })[2]?.missing,
    ).toEqual(["routes[0]"]);
  });
});
