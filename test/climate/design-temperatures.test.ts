import { describe, expect, it } from "vitest";
import {
  coldestNoWarmerThanMean,
  designTemperaturePractices,
  designTemperatures,
  regionalDesignTemperature,
  type SiteExtremes,
} from "../../src/climate/index.js";
import { gradeOf, steps } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";

/** A site of our own, with the extremes of a mountain valley. */
const valley: SiteExtremes = {
  recordLow: "-60 °F",
  recordHigh: "95 °F",
  meanAnnualMinimum: "-24 °F",
  meanAnnualMaximum: "31 °C",
  deviationOfMinimum: "4 K",
  deviationOfMaximum: "1.5 K",
  returnPeriod: "20 a",
  guide: "GSES handout",
  statedIn: "station sheet, 1986 to 2010",
};
const coldest = (practice: Parameters<typeof designTemperatures>[0], site = valley) =>
  designTemperatures(practice, site).coldest as Quantity;

describe("design temperatures", () => {
  it("are chosen by a practice that is named, each with its own result", () => {
    const found = designTemperaturePractices.map(({ key }) => [key, coldest(key).show({ digits: 3 })]);
    expect(found).toEqual([
      ["record", "-51.1 °C"],
      ["return period", "-38.6 °C"],
      ["mean annual extreme", "-31.1 °C"],
      ["guide", "0 °C"],
    ]);
  });

  // "Home Power record lows:undated" prints 36 °F between the two practices for one site of Colorado: 20 K.
  it("differ by 20 K between the record and the mean of one published site", () => {
    expect(coldest("mean annual extreme").number - coldest("record").number).toBeCloseTo(20, 12);
  });

  it("say whether they are of the air or of the cells, and where they are from", () => {
    expect(designTemperatures("guide", valley).of).toBe("cells");
    expect(designTemperatures("record", valley)).toMatchObject({ of: "ambient", practice: { key: "record" } });
    expect(steps(coldest("record"))[0]!.detail).toBe("station sheet, 1986 to 2010");
  });

  it("name what the practice needs and the site does not state", () => {
    expect(designTemperatures("return period", { meanAnnualMinimum: "-12 °C" })).toMatchObject({
      coldest: { missing: ["site.deviationOfMinimum", "site.returnPeriod"] },
      hottest: { missing: ["site.meanAnnualMaximum", "site.deviationOfMaximum", "site.returnPeriod"] },
    });
    expect(designTemperatures("record", {}).coldest).toEqual({ missing: ["site.recordLow"] });
    expect(designTemperatures("guide", {}).hottest).toEqual({ missing: ["site.guide"] });
    expect(
      designTemperatures("mean annual extreme", { meanAnnualMinimum: { missing: ["site.station"] } }).coldest,
    ).toEqual({ missing: ["site.station"] });
  });

  it("have no default practice", () => {
    expect(() => designTemperatures("usual" as never, valley)).toThrow("one of record");
  });

  it("carry the grade of a recalled guide", () => {
    expect(gradeOf(regionalDesignTemperature({ guide: "central Europe, rule of thumb", extreme: "cold" }))).toBe(
      "memory",
    );
    expect(gradeOf(regionalDesignTemperature({ guide: "GSES handout", extreme: "hot" }))).toBe("original");
    expect(() => regionalDesignTemperature({ guide: "United Kingdom, MCS guide", extreme: "hot" })).toThrow(
      "nothing is tabulated",
    );
  });
});

describe("a coldest temperature against the station's mean", () => {
  // Munich in the station data of 2013: −17.3 °C.
  it.each([
    ["-17.3 °C", "met"],
    ["-17.4 °C", "met"],
    ["-17.2 °C", "not met"],
    ["-10 °C", "not met"],
  ])("%s is %s", (value, verdict) => {
    expect(coldestNoWarmerThanMean({ value, limit: "-17.3 °C" }).verdict).toBe(verdict);
  });
});
