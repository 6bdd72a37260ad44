import { describe, expect, it } from "vitest";
import { reportText } from "../../src/report/index.js";
import { concernsOf, placesText } from "../../src/report/view/attention.js";
import { attentionOf, outcomeSentence } from "../../src/report/view/outcome.js";
import { placesOf } from "../../src/report/view/places.js";
import { bakery, coldUnknown, tooThin } from "./records.js";

describe("the outcome", () => {
  it("counts what the record counts", () => {
    const { met, notMet, open } = bakery.outcome;
    expect([notMet, open]).toEqual([0, 1]);
    expect(outcomeSentence(bakery)).toMatch(
      new RegExp(`^${met} requirements met, none not met, one open: .* not known at Inverter-Main board\\.$`),
    );
  });

  it("says what is not met before what is open, each with its remedy", () => {
    const { notMet, open } = attentionOf(tooThin);
    expect(notMet.length).toBe(tooThin.outcome.notMet);
    const text = reportText(tooThin);
    expect(text.indexOf("▲ not met")).toBeLessThan(text.indexOf("○ open"));
    for (const { missing } of open) for (const path of missing) expect(text.replace(/\s+/g, " ")).toContain(path);
  });

  it("names what is missing in the words of the schema", () => {
    expect(outcomeSentence(coldUnknown)).toContain("lowest ambient temperature to design for not known");
  });
});

describe("many equal checks", () => {
  const wanting = (index: number) => ({
    ...bakery.checks.find(({ verdict }) => verdict === "open")!,
    id: `x/${index}`,
    at: `INV${index}`,
    missing: [`routes[${index}].breaker.ambientFactor`],
  });
  const many = { ...bakery, checks: [1, 2, 3, 4, 5, 6, 7, 8].map(wanting) };

  it("are told once, with all their places and paths", () => {
    const concerns = concernsOf(many);
    expect(concerns).toHaveLength(1);
    expect(placesText(concerns[0]!.places)).toBe("INV1, INV2, INV3, INV4, INV5, INV6 and 2 more");
    expect(concerns[0]!.remedy).toMatch(
      /^Find out and state: .* \(routes\[1\]\.breaker\.ambientFactor, .* and 4 more\)\.$/,
    );
  });

  it("stay apart where their values differ", () => {
    const [first, second] = many.checks;
    expect(concernsOf({ ...many, checks: [first!, { ...second!, because: "another reason" }] })).toHaveLength(2);
  });
});

describe("the places", () => {
  it("follow the energy, and hold every check once", () => {
    const places = placesOf(bakery);
    expect(places.map(({ kind }) => kind).filter((kind, at, all) => kind !== all[at - 1])).toEqual([
      "module",
      "string",
      "d.c. route",
      "inverter",
      "a.c. route",
      "board",
      "connection point",
    ]);
    const ids = places.flatMap(({ checks }) => checks.map(({ id }) => id));
    expect([...ids].sort()).toEqual(bakery.checks.map(({ id }) => id).sort());
  });

  it("find the checks of a string under its tracker", () => {
    const string = placesOf(bakery).find(({ kind, name }) => kind === "string" && name.endsWith("C"))!;
    expect(string.checks.map(({ at }) => at.split("/").slice(0, 2).join("/"))).toEqual(
      string.checks.map(() => "Inverter/C"),
    );
  });
});
