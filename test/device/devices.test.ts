import { describe, expect, it } from "vitest";
import {
  breakerConventionalTrippingCurrent,
  breakerRatings,
  conventionalTripping,
  deviceRatings,
  disconnectingCurrent,
  fuseConventionalTrippingCurrent,
  fuseRatings,
  fuseRatingsWithIntermediate,
  iec60898_1_2015_instantaneous_time,
  iec61008_1_2010_break_times,
  industrialRatings,
  instantaneousTripCurrent,
  mouldedCaseConventionalTrippingCurrent,
  nfpa70_2017_240_6,
  nfpa70_2017_240_6_fuses,
  nfpa70_2020_240_6,
  nfpa70_2020_240_6_fuses,
  nfpa70_2023_240_6,
  nfpa70_2023_240_6_fuses,
  stringFuseConventionalTrippingCurrent,
  stringFuseRatings,
  switchRatings,
} from "../../src/device/index.js";
import { missing, type Series } from "../../src/formula/index.js";

const text = (series: Series<"A">): string =>
  series
    .sizes()
    .map((size) => size.text)
    .join(" ");
const operatingCurrent = missing("routes[0].breaker.operatingCurrent");

describe("standard ratings", () => {
  it("rise, and are those of their documents", () => {
    const all = [
      breakerRatings,
      industrialRatings,
      switchRatings,
      fuseRatings,
      fuseRatingsWithIntermediate,
      stringFuseRatings,
      nfpa70_2017_240_6,
      nfpa70_2017_240_6_fuses,
      nfpa70_2020_240_6_fuses,
      nfpa70_2023_240_6_fuses,
    ];
    for (const series of all) {
      const sizes = series.sizes().map((size) => size.number);
      expect(sizes).toEqual([...new Set(sizes)].sort((a, b) => a - b));
    }
    expect(text(stringFuseRatings)).toBe("1 2 3 4 5 6 8 10 12 15 16 20 25 30 32");
    expect(text(breakerRatings)).toContain("10 13 16 20 25 32 40 50 63");
  });

  it("of NEC gained 10 A for breakers in 2023 and are the same otherwise", () => {
    expect(text(nfpa70_2020_240_6)).toBe(text(nfpa70_2017_240_6));
    expect(text(nfpa70_2023_240_6)).toBe(`10 ${text(nfpa70_2020_240_6)}`);
    expect(nfpa70_2017_240_6.sizes().length).toBe(37);
    const extra = nfpa70_2020_240_6_fuses
      .sizes()
      .map((size) => size.text)
      .filter((size) => !text(nfpa70_2020_240_6).split(" ").includes(size));
    expect(extra).toEqual(["1", "3", "6", "10", "601"]);
  });

  it("are found by the kind of device and the rules", () => {
    expect(deviceRatings("gG fuse", "BS 7671:2018")).toBe(fuseRatings);
    expect(deviceRatings("gPV fuse", "")).toBe(stringFuseRatings);
    expect(deviceRatings("moulded-case breaker", "")).toBe(industrialRatings);
    expect(deviceRatings("NEC fuse", "NFPA 70:2017")).toBe(nfpa70_2017_240_6_fuses);
    expect(deviceRatings("NEC fuse", "NFPA 70:2020")).toBe(nfpa70_2020_240_6_fuses);
    expect(deviceRatings("NEC fuse", "NFPA 70:2023")).toBe(nfpa70_2023_240_6_fuses);
    expect(deviceRatings("NEC breaker", "NFPA 70:2017")).toBe(nfpa70_2017_240_6);
    expect(() => deviceRatings("NEC fuse", "IEC 60364:2009-2017")).toThrow("NFPA 70");
  });
});

describe("conventional tripping current", () => {
  it.each([
    ["4", "8.4"],
    ["4.1", "7.79"],
    ["15.9", "30.21"],
    ["16", "25.6"],
    ["35", "56"],
    ["63", "100.8"],
  ])("of a gG fuse of %s A is %s A", (rated, due) => {
    expect(fuseConventionalTrippingCurrent({ ratedCurrent: `${rated} A` }).text).toBe(due);
  });
  it("of the others is a multiple", () => {
    expect(breakerConventionalTrippingCurrent({ ratedCurrent: "20 A" }).text).toBe("29");
    expect(mouldedCaseConventionalTrippingCurrent({ ratedCurrent: "100 A" }).text).toBe("130");
    expect(stringFuseConventionalTrippingCurrent({ ratedCurrent: "20 A" }).text).toBe("29");
    expect(conventionalTripping("gPV fuse", "20 A")?.text).toBe("29");
    expect(conventionalTripping("NEC breaker", "20 A")).toBeNull();
    expect(conventionalTripping("NEC fuse", "20 A")).toBeNull();
  });
});

describe("current at which a device surely disconnects", () => {
  const base = {
    kind: "miniature breaker",
    ratedCurrent: "16 A",
    characteristic: "B",
    disconnectionTime: "0.4 s",
    operatingCurrent,
  } as const;
  const current = (other: object): string | readonly string[] => {
    const found = disconnectingCurrent({ ...base, ...other });
    return "text" in found ? found.text : found.missing;
  };
  it("is the upper end of the band of a miniature breaker", () => {
    expect([current({}), current({ characteristic: "C" }), current({ characteristic: "D" })]).toEqual([
      "80",
      "160",
      "320",
    ]);
    expect(instantaneousTripCurrent({ ratedCurrent: "16 A", tripMultiple: 5 }).text).toBe("80");
    expect(current({ characteristic: missing("routes[0].breaker.characteristic") })).toEqual([
      "routes[0].breaker.characteristic",
    ]);
  });
  it("is the gate of a gG fuse for 0.4 s and 5 s, and the maker's value otherwise", () => {
    expect([current({ kind: "gG fuse" }), current({ kind: "gG fuse", disconnectionTime: "5 s" })]).toEqual([
      "110",
      "65",
    ]);
    expect(current({ kind: "gG fuse", disconnectionTime: "0.2 s" })).toEqual(operatingCurrent.missing);
    expect(current({ kind: "gG fuse", ratedCurrent: "35 A" })).toEqual(operatingCurrent.missing);
    expect(current({ kind: "moulded-case breaker" })).toEqual(operatingCurrent.missing);
    expect(current({ kind: "moulded-case breaker", operatingCurrent: "370 A" })).toBe("370");
  });
});

describe("break times", () => {
  it("never rise with the residual current, and leave room for a time-delayed device", () => {
    const at = (device: string) =>
      (["I_Δn", "2 I_Δn", "5 I_Δn"] as const).map(
        (residualCurrent) => iec61008_1_2010_break_times({ device, residualCurrent }).number,
      );
    expect(at("general, longest break")).toEqual([0.3, 0.15, 0.04]);
    const [longest, least] = [at("time-delayed S, longest break"), at("time-delayed S, no break before")];
    least.forEach((time, index) => expect(time).toBeLessThan(longest[index]!));
    expect(iec60898_1_2015_instantaneous_time({ characteristic: "D" }).text).toBe("0.1");
  });
});
