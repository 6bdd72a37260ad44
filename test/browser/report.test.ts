/** The HTML report in a real browser: desk and phone, light and dark, print, keyboard; nothing is asked of any network. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, chromium as engine, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readSheetCsv, sheetOf } from "../../src/commissioning/index.js";
import { judgeSheet, measurementSheetCsv } from "../../src/plant/index.js";
import { commissioningSheetHtml, judgedSheetHtml, reportHtml } from "../../src/report/index.js";
import { bakery, coldUnknown, hostile, tooThin } from "../report/records.js";
import { chromium, FLAGS } from "./chromium.js";
import { FOCUSED, LOWEST_CONTRAST, ORPHANS, STRUCTURE, type Structure, WIDTH } from "./in-page.js";

const DESK = { width: 1280, height: 900 };
const PHONE = { width: 390, height: 844 };
const A4 = { width: 794, height: 1123 };

let browser: Browser;
let folder: string;
const complaints: string[] = [];
const requests: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pv-to-grid-"));
  browser = await engine.launch({ executablePath: chromium(), args: FLAGS });
}, 600_000);

afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

async function opened(html: string, viewport: typeof DESK, colorScheme: "light" | "dark" = "light"): Promise<Page> {
  const file = join(folder, "report.html");
  writeFileSync(file, html);
  const page = await browser.newPage({ viewport, colorScheme });
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => requests.push(request.url()));
  await page.goto(pathToFileURL(file).href);
  return page;
}

describe.each([
  ["bakery", bakery],
  ["not met", tooThin],
  ["open", coldUnknown],
  ["hostile", hostile],
])("the report of a plant: %s", (_, record) => {
  it.each([
    ["desk", DESK],
    ["phone", PHONE],
  ])("opens without complaint or request, and fits: %s", async (_name, viewport) => {
    complaints.length = requests.length = 0;
    const page = await opened(reportHtml(record), viewport);
    const width = await page.evaluate<number>(WIDTH);
    const title = await page.locator("h1").textContent();
    await page.close();
    expect(complaints).toEqual([]);
    expect(requests.filter((url) => !/^(file|data):/.test(url))).toEqual([]);
    expect(width).toBeLessThanOrEqual(viewport.width);
    expect(title).not.toBe("");
  });
});

it.each([
  ["the commissioning sheet", commissioningSheetHtml(bakery)],
  ["judged readings", judgedSheetHtml(judgeSheet(bakery, sheetOf(readSheetCsv(measurementSheetCsv(bakery)))))],
])("%s opens without complaint or request, and fits a phone", async (_, html) => {
  complaints.length = requests.length = 0;
  const page = await opened(html, PHONE);
  const width = await page.evaluate<number>(WIDTH);
  await page.close();
  expect(complaints).toEqual([]);
  expect(requests.filter((url) => !/^(file|data):/.test(url))).toEqual([]);
  expect(width).toBeLessThanOrEqual(PHONE.width);
});

it("shows hostile names as the text that they are", async () => {
  const page = await opened(reportHtml(hostile), DESK);
  expect(await page.locator("script, img").count()).toBe(0);
  expect(await page.locator("h3").first().textContent()).toContain("<script>alert(1)</script>");
  await page.close();
});

describe("unfolding", () => {
  it("a check unfolds by mouse and by keyboard, and shows its steps", async () => {
    const page = await opened(reportHtml(bakery), DESK);
    const check = page.locator("details.check").nth(3);
    await check.locator("summary").click();
    expect(await check.locator(".steps li").count()).toBeGreaterThan(1);
    expect(await check.locator(".unfolded").isVisible()).toBe(true);
    await check.locator("summary").press("Enter");
    expect(await check.locator(".unfolded").isVisible()).toBe(false);
    await page.close();
  });

  it("a number unfolds to its card, the card to what stands behind it, and Escape folds it away", async () => {
    const page = await opened(reportHtml(bakery), DESK);
    const number = page.locator(".results button.n", { hasText: "557.5" }).first();
    expect(await number.getAttribute("title")).toContain("557.53425");
    await number.focus();
    await page.keyboard.press("Enter");
    const card = page.locator(".card:popover-open");
    expect(await card.count()).toBe(1);
    expect(await card.textContent()).toContain("557.53425");
    await card.locator(".uses button").last().click();
    expect(await page.locator(".card:popover-open").count()).toBe(2);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
    expect(await page.locator(".card:popover-open").count()).toBe(0);
    expect(await page.evaluate<string>(FOCUSED)).toBe(await number.textContent());
    await page.close();
  });

  it("every number that is pressed has a card", async () => {
    const page = await opened(reportHtml(bakery), DESK);
    const orphans = await page.evaluate<number>(ORPHANS);
    expect(orphans).toBe(0);
    await page.close();
  });
});

describe("for readers of every kind", () => {
  it("heads are in order, figures have words, controls have names", async () => {
    const page = await opened(reportHtml(bakery), DESK);
    const found = await page.evaluate<Structure>(STRUCTURE);
    expect(found.heads.filter((level) => level === 1)).toHaveLength(1);
    expect(found.heads.filter((level, at) => at > 0 && level > found.heads[at - 1]! + 1)).toEqual([]);
    expect([found.figures, found.nameless, found.language]).toEqual([0, 0, "en-GB"]);
    await page.close();
  });

  it.each(["light", "dark"] as const)("text stands out from its paper: %s", async (scheme) => {
    const page = await opened(reportHtml(tooThin), DESK, scheme);
    expect(await page.evaluate<number>(LOWEST_CONTRAST)).toBeGreaterThan(4.5);
    await page.close();
  });

  it("prints on A4 with its working folded, or open where it was asked for", async () => {
    const pages = async (html: string): Promise<number> => {
      const page = await opened(html, A4);
      await page.emulateMedia({ media: "print" });
      expect(await page.evaluate<number>(WIDTH)).toBeLessThanOrEqual(A4.width);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      await page.close();
      return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)!.length;
    };
    const folded = await pages(reportHtml(bakery));
    expect(folded).toBeLessThan(await pages(reportHtml(bakery, { working: "open" })));
  });
});
