import { fc, it as property } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { missing } from "../../src/formula/index.js";
import {
  acSurgeNeed,
  type AcNeedQuestion,
  acSurgeProtection,
  type AcSurgeQuestion,
  allowedDistantProtectionLevel,
  allowedProtectionLevel,
  arrayVoltageByFactor,
  calculatedRiskLevel,
  criticalLength,
  dcSurgeNeed,
  dcSurgeProtection,
  type DcSurgeQuestion,
  effectiveProtectionLevel,
  environmentalFactorOf,
  flashDensityFromThunderDays,
  highestSupplyVoltage,
  riskAssessmentLengthOf,
  separationDistance,
  surgeCautions,
  totalRouteLength,
  typesFor,
} from "../../src/surge/index.js";

const lines = {
  lowVoltageOverhead: "0.4 km",
  lowVoltageBuried: "0.1 km",
  highVoltageOverhead: "0.3 km",
  highVoltageBuried: "0.2 km",
};
const verdicts = (checks: readonly { readonly rule: { readonly id: string }; readonly verdict: string }[]): string =>
  checks.map(({ rule: { id }, verdict }) => `${id.slice(6)} ${verdict}`).join(", ");

describe("numbers", () => {
  it("weighs the lines, the surroundings and the flashes", () => {
    // 2 · 0.4 + 0.1 + 0.4 · 0.3 + 0.2 · 0.2 = 1.06 km; 85 · 2 / (1.06 · 4) = 40.09…
    expect(riskAssessmentLengthOf(lines).text).toBe("1.06");
    expect(environmentalFactorOf({ surroundingsFactor: 85, nationalFactor: 2 }).text).toBe("170");
    expect(
      calculatedRiskLevel({ environmentalFactor: 170, riskAssessmentLength: "1.06 km", lightningDensity: "4" }).show(),
    ).toBe("40.09");
    expect(() => riskAssessmentLengthOf({ ...lines, lowVoltageBuried: "0.1001 km" })).toThrow("first kilometre");
    expect(flashDensityFromThunderDays({ thunderDays: 25 }).text).toBe("2.5");
    expect(criticalLength({ unitCriticalLength: "115 m", lightningDensity: "2.5" }).text).toBe("46");
    expect(totalRouteLength({ routeLengths: ["20 m", "35 m"] }).text).toBe("55");
  });
  it("keeps levels below what equipment withstands", () => {
    expect(allowedProtectionLevel({ impulseWithstand: "2.5 kV" }).text).toBe("2000");
    expect(allowedDistantProtectionLevel({ impulseWithstand: "4 kV" }).text).toBe("1600");
    expect(effectiveProtectionLevel({ protectionLevel: "1.5 kV", leadLength: "0.4 m" }).text).toBe("1900");
    expect(highestSupplyVoltage({ lineToEarth: "230 V" }).text).toBe("253");
    expect(arrayVoltageByFactor({ openCircuitVoltage: "750 V" }).text).toBe("900");
    const distance = {
      lightningClassFactor: "0.04",
      currentShare: "0.66",
      insulationFactor: "0.5",
      downConductorLength: "10 m",
    };
    expect(separationDistance(distance).text).toBe("0.528");
  });
});

describe("need on the a.c. side", () => {
  const base: AcNeedQuestion = {
    at: "Main board",
    consequence: "none of these",
    surroundings: "rural",
    nationalFactor: 1,
    lines,
    lightningDensity: "1",
  };
  it("follows the consequence whatever the risk level, then the risk level exactly at 1000", () => {
    expect(
      acSurgeNeed({ ...base, consequence: "human life", lightningDensity: missing("site.lightningDensity") }).needed,
    ).toBe(true);
    expect(acSurgeNeed(base).needed).toBe(true);
    // 850 / 0.85 = 1000
    const short = {
      lowVoltageOverhead: "0.425 km",
      lowVoltageBuried: "0 km",
      highVoltageOverhead: "0 km",
      highVoltageBuried: "0 km",
    };
    expect(acSurgeNeed({ ...base, surroundings: "urban", lines: short }).needed).toBe(false);
    expect(
      acSurgeNeed({ ...base, surroundings: "urban", lines: { ...short, lowVoltageOverhead: "0.426 km" } }).needed,
    ).toBe(true);
  });
  it("is open where the inputs do not decide it, and decided where a missing one cannot matter", () => {
    const path = missing("site.lightningDensity");
    expect(acSurgeNeed({ ...base, lightningDensity: path }).needed).toEqual({ missing: ["site.lightningDensity"] });
    expect(acSurgeNeed({ ...base, consequence: missing("site.consequence") }).needed).toBe(true);
    const low = {
      ...base,
      surroundings: "urban",
      lightningDensity: "0.1",
      consequence: missing("site.consequence"),
    } as const;
    expect(acSurgeNeed(low).needed).toEqual({ missing: ["site.consequence"] });
  });
});

describe("need on the d.c. side", () => {
  const base = { at: "South", building: "dwelling", lightningDensity: "2.5", routes: ["20 m", "25.9 m"] } as const;
  it("begins exactly at the critical length of the building, the shortest where that is not known", () => {
    expect(dcSurgeNeed(base).needed).toBe(false);
    expect(dcSurgeNeed({ ...base, routes: ["20 m", "26 m"] }).needed).toBe(true);
    expect(dcSurgeNeed({ ...base, routes: ["79.9 m"], building: "ground-mounted plant" }).needed).toBe(false);
    expect(dcSurgeNeed({ ...base, routes: ["80 m"], building: "ground-mounted plant" }).needed).toBe(true);
    expect(dcSurgeNeed({ ...base, routes: ["179.9 m"], building: "other building" }).needed).toBe(false);
    const unknown = dcSurgeNeed({ ...base, routes: ["46 m"], building: missing("site.building") });
    expect([unknown.needed, unknown.because.includes("not known")]).toEqual([true, true]);
  });
  it("is open without flash density or a route", () => {
    expect(dcSurgeNeed({ ...base, lightningDensity: missing("site.lightningDensity") }).needed).toEqual({
      missing: ["site.lightningDensity"],
    });
    expect(dcSurgeNeed({ ...base, routes: ["20 m", missing("routes[1].length")] }).needed).toEqual({
      missing: ["routes[1].length"],
    });
  });
  property.prop([fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 100 })])(
    "longer routes and more flashes never end the need",
    (a, b, tenths) => {
      const needed = (length: number, density: number): boolean =>
        dcSurgeNeed({ ...base, routes: [length], lightningDensity: `${density}` }).needed === true;
      const [short, long] = [Math.min(a, b), Math.max(a, b)];
      if (needed(short, tenths / 10)) {
        expect(needed(long, tenths / 10)).toBe(true);
        expect(needed(short, tenths / 5)).toBe(true);
      }
    },
  );
});

describe("type by lightning protection", () => {
  it.each([
    ["no lightning protection", "inverter, d.c. side", "type 2, type 1, type 1 and 2"],
    ["separation distance kept", "service entrance", "type 1, type 1 and 2"],
    ["separation distance kept", "inverter, a.c. side", "type 2, type 1, type 1 and 2"],
    ["separation distance not kept", "inverter, d.c. side", "type 1, type 1 and 2"],
  ] as const)("%s, %s: %s", (situation, place, due) => {
    const types = typesFor(situation, place);
    expect("length" in types && types.join(", ")).toBe(due);
  });
});

describe("device on the d.c. side", () => {
  const device = {
    type: "type 2",
    continuousVoltage: "1000 V",
    shortCircuitRating: "1000 A",
    protectionLevel: "3 kV",
    leadLength: "0.5 m",
  } as const;
  const base: DcSurgeQuestion = {
    at: "INV1",
    needed: true,
    lightning: "no lightning protection",
    coldVoltage: "1000 V",
    maximumCurrent: "35 A",
    cableLength: "10 m",
    impulseWithstand: "6 kV",
    device,
  };
  it("is judged exactly at voltage, current, level, leads and reach", () => {
    const all =
      "surge-type-suits-lightning met, surge-device-carries-voltage met, surge-device-stands-short-circuit met, protection-level-low-enough met, leads-short-enough met, leads-short met, one-device-reaches met";
    expect(verdicts(dcSurgeProtection(base).checks)).toBe(all);
    const worse = dcSurgeProtection({
      ...base,
      coldVoltage: "1000.1 V",
      maximumCurrent: "1000.1 A",
      cableLength: "10.1 m",
      device: { ...device, leadLength: "1.1 m" },
    });
    expect(worse.checks.map((check) => check.verdict)).toEqual([
      "met",
      "not met",
      "not met",
      "not met",
      "not met",
      "not met",
      "not met",
    ]);
    expect([dcSurgeProtection(base).secondDevice, worse.secondDevice]).toEqual([false, true]);
  });
  it("must hold half the level where the cable is long", () => {
    const level = (other: object) =>
      dcSurgeProtection({ ...base, ...other }).checks.find(
        ({ rule }) => rule.id === "surge/protection-level-low-enough",
      )?.verdict;
    expect(level({ cableLength: "11 m", device: { ...device, protectionLevel: "1.9 kV" } })).toBe("met");
    expect(level({ cableLength: "11 m", device: { ...device, protectionLevel: "1.901 kV" } })).toBe("not met");
    expect(level({ impulseWithstand: missing("inverters[0].impulseWithstand") })).toBe("open");
    expect(level({ cableLength: missing("routes[0].length") })).toBe("open");
  });
  it("that is absent is not met where it is needed, open where that is not known", () => {
    const absent = (needed: boolean | { readonly missing: readonly string[] }): string =>
      verdicts(dcSurgeProtection({ ...base, needed, device: "none" }).checks);
    expect([absent(true), absent(false), absent(missing("site.lightningDensity"))]).toEqual([
      "surge-device-present not met",
      "",
      "surge-device-present open",
    ]);
    expect(
      dcSurgeProtection({ ...base, lightning: missing("lightningProtection"), device: "none" }).checks[0]?.verdict,
    ).toBe("not met");
    expect(dcSurgeProtection({ ...base, lightning: missing("lightningProtection") }).checks[0]?.verdict).toBe("open");
    expect(verdicts(dcSurgeProtection({ ...base, needed: false }).checks)).not.toContain("type");
  });
});

describe("device on the a.c. side", () => {
  const device = {
    type: "type 1",
    continuousVoltage: "253 V",
    nominalDischargeCurrent: "5 kA",
    largestBackUpFuse: "125 A",
    earthSection: "16 mm²",
    protectionLevel: "1.5 kV",
    leadLength: "0.5 m",
  } as const;
  const base: AcSurgeQuestion = {
    at: "Main board",
    place: "service entrance",
    needed: true,
    lightning: "separation distance kept",
    lineToEarth: "230 V",
    deviceAhead: "125 A",
    impulseWithstand: "2.5 kV",
    device,
  };
  it("is judged exactly at supply, discharge, back-up fuse and earth", () => {
    expect(acSurgeProtection(base).checks.every((check) => check.verdict === "met")).toBe(true);
    const worse = acSurgeProtection({
      ...base,
      deviceAhead: "126 A",
      device: { ...device, continuousVoltage: "252.9 V", nominalDischargeCurrent: "4.9 kA", earthSection: "15.9 mm²" },
    });
    expect(worse.checks.map((check) => check.verdict).slice(0, 5)).toEqual([
      "met",
      "not met",
      "not met",
      "not met",
      "not met",
    ]);
    expect(
      acSurgeProtection({ ...base, device: { ...device, type: "type 2", earthSection: "6 mm²" } })
        .checks.map((check) => check.verdict)
        .slice(0, 5),
    ).toEqual(["not met", "met", "met", "met", "met"]);
  });
  it("is open, naming what is missing", () => {
    const open = acSurgeProtection({
      ...base,
      lineToEarth: missing("supply.lineToNeutral"),
      device: { ...device, type: missing("surge.type") },
    });
    expect(open.checks.flatMap((check) => check.missing)).toEqual(["surge.type", "supply.lineToNeutral", "surge.type"]);
    expect(acSurgeProtection({ ...base, device: "none" }).checks[0]?.verdict).toBe("not met");
  });
});

describe("cautions", () => {
  const count = (
    lightning: Parameters<typeof surgeCautions>[0]["lightning"],
    groundMounted: boolean,
    earthing: string,
  ): number => surgeCautions({ lightning, groundMounted, earthing }).length;
  it("come with lightning protection and with ground-mounted arrays on a combined conductor", () => {
    expect(count("no lightning protection", false, "TN-C-S")).toBe(1);
    expect(count("no lightning protection", true, "TT")).toBe(1);
    expect(count("no lightning protection", true, "TN-C")).toBe(2);
    expect(count("separation distance kept", true, "TN-C-S")).toBe(3);
    expect(count(missing("lightningProtection"), false, "TN-S")).toBe(2);
  });
});
