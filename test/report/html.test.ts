import { describe, expect, it } from "vitest";
import { reportHtml } from "../../src/report/index.js";
import { sizePlant } from "../../src/index.js";
import { villageBakery } from "../plant/demo.js";
import { bakery, coldUnknown, hostile, tooThin } from "./records.js";

const html = reportHtml(bakery);
const ids = (page: string): string[] => [...page.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!);

describe("the HTML report", () => {
  it("is the same bytes for the same record, with a date only where one is given", () => {
    expect(reportHtml(sizePlant(villageBakery()))).toBe(html);
    expect(html).not.toMatch(/\b20[2-9]\d-\d\d-\d\d\b/);
    expect(reportHtml(bakery, { date: "2026-05-04" })).toContain("2026-05-04");
  });

  it("loads nothing and runs nothing", () => {
    expect(html).toContain(`content="default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;; img-src data:"`);
    expect(html).not.toMatch(/<(script|link|iframe|object|img|form)\b/);
    expect(html.match(/(?:src|href)="(?!#)[^"]*"/g)).toBeNull();
    expect(html.match(/url\("(?!data:)/g)).toBeNull();
  });

  it("says first what needs a person, then cautions, to do, the line, the places, and cautions again", () => {
    const order = [
      "outcome",
      "cautions",
      "to-do",
      "line",
      "places",
      "settings",
      "material",
      "sources",
      "assumptions",
      "cautions-again",
      "working",
    ];
    expect(ids(html).filter((id) => order.includes(id))).toEqual(order);
  });

  it.each([
    ["bakery", bakery],
    ["not met", tooThin],
    ["open", coldUnknown],
    ["hostile", hostile],
  ])("has one element a name, and a target for each link and number: %s", (_, record) => {
    const page = reportHtml(record);
    const known = ids(page);
    expect(known.filter((id, at) => known.indexOf(id) !== at)).toEqual([]);
    const wanted = [...page.matchAll(/(?:popovertarget|href)="#?([^"]+)"/g)].map(([, id]) => id!);
    expect(wanted.filter((id) => !known.includes(id))).toEqual([]);
  });

  it("unfolds every number of its tables and sheets", () => {
    const cells = [...html.matchAll(/<table class="results">(.*?)<\/table>/gs)].flatMap(([, table]) =>
      [...table!.matchAll(/<td[^>]*>(.*?)<\/td>/gs)].map(([, cell]) => cell!),
    );
    const loose = cells
      .map((cell) =>
        cell
          .replace(/<button class="n".*?<\/button>|<button type="button" class="n".*?<\/button>/gs, "")
          .replace(/<[^>]+>/g, ""),
      )
      .filter((rest) => /\d/.test(rest.replace(/seal \d+|fixed by .*|type \d.*/g, "")));
    expect(loose).toEqual([]);
    expect(cells.length).toBeGreaterThan(80);
  });

  it("shows a step with its equation, numbers, result, source and grade", () => {
    const card =
      /<div popover id="w-[^"]+"[^>]*aria-label="voltage of a string of equal modules in series">(.*?)<\/div>/s.exec(
        html,
      )![1]!;
    const text = card.replace(/<[^>]+>/g, "").replace(/\u202f/g, " ");
    expect(text).toContain("Ustring = n · Umod");
    expect(text).toMatch(/= 1[34] · \d+\.\d+ V/);
    expect(text).toMatch(/Grade: \w+/);
  });

  it("unfolds the working only where it was asked for", () => {
    expect(html).not.toMatch(/<details class="check"[^>]* open/);
    expect(reportHtml(bakery, { working: "open" })).toMatch(/<details class="check"[^>]* open/);
  });

  it("says so where the record was made without its working, and prints its numbers plainly", () => {
    const page = reportHtml(sizePlant(villageBakery(), { working: false }));
    expect(page).toContain("made without its working");
    expect(page).not.toMatch(/popovertarget="w-/);
  });
});
