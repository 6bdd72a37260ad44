import { describe, expect, it } from "vitest";
import { readSheetCsv, sheetOf } from "../../src/commissioning/index.js";
import { judgeSheet, measurementSheetCsv } from "../../src/plant/index.js";
import { commissioningSheetHtml, judgedSheetHtml, judgedSheetText } from "../../src/report/index.js";
import { bakery, hostile } from "./records.js";

/** The bakery's sheet with some readings: `place reading` to value. */
function filled(values: Readonly<Record<string, string>>): string {
  const [head = "", ...lines] = measurementSheetCsv(bakery).trim().split(/\r?\n/);
  const value = head.split(",").indexOf("value");
  const written = lines.map((line) => {
    const cells = line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/);
    cells[value] = values[`${cells[0]} ${cells[1]}`] ?? "";
    return cells.join(",");
  });
  return [head, ...written].join("\n");
}

// Light and module temperature are close to standard, so that the string of 13 modules should read a little under 13 · 38.9 V = 505.7 V.
const light = {
  "East face irradiance": "950",
  "East face moduleTemperature": "28",
  "West face irradiance": "950",
  "West face moduleTemperature": "28",
};
const judged = judgeSheet(
  bakery,
  sheetOf(
    readSheetCsv(filled({ ...light, "Inverter/A openCircuitVoltage": "499", "Inverter/B openCircuitVoltage": "460" })),
  ),
);

describe("the commissioning sheet", () => {
  const page = commissioningSheetHtml(bakery);

  it("says cautions, then the order of work, then what to do and to measure, and cautions again", () => {
    const order = [
      "outcome",
      "cautions",
      "work",
      "to-do",
      "places",
      "insulation",
      "readings",
      "settings",
      "cautions-again",
      "working",
    ];
    const ids = [...page.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!);
    expect(ids.filter((id) => order.includes(id))).toEqual(order);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it("leaves space for each reading, the day, the name and the signature", () => {
    expect(page.match(/class="blank"/g)!.length).toBeGreaterThan(25);
    for (const word of ["date", "name, licence", "signature"]) expect(page).toContain(`<span>${word}</span>`);
  });

  it("has a card for each number, and loads nothing", () => {
    const ids = new Set([...page.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!));
    const wanted = [...page.matchAll(/popovertarget="([^"]+)"/g)].map(([, id]) => id!);
    expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
    expect(page).not.toMatch(/<(script|link|img)\b/);
  });

  it("keeps hostile names as text", () => {
    expect(commissioningSheetHtml(hostile)).not.toMatch(/<script|<img/);
  });
});

describe("judged readings", () => {
  it("say what is outside first, then what is missing, then where to look", () => {
    const text = judgedSheetText(judged);
    expect(text).toContain(
      `${judged.outcome.within} of ${judged.readings.length} readings within their bands, one outside`,
    );
    expect(text).toMatch(/▲ outside: Inverter\/B, open-circuit voltage 460\u202fV \(/);
    expect(text.indexOf("▲ outside")).toBeLessThan(text.indexOf("○ missing"));
    expect(text.indexOf("○ missing")).toBeLessThan(text.indexOf("hints, not verdicts"));
  });

  it("print as a page whose numbers unfold", () => {
    const page = judgedSheetHtml(judged);
    const ids = new Set([...page.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!));
    const wanted = [...page.matchAll(/popovertarget="([^"]+)"/g)].map(([, id]) => id!);
    expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
    expect(page).toContain("▲");
    expect(page).not.toMatch(/\bNaN\b|\bundefined\b/);
  });
});
