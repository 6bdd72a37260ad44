/** The docs site in a real browser, opened from its files: no complaint, equations visible, the search finds. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { type Browser, chromium as engine, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { chromium, FLAGS } from "./chromium.js";
import { SMALLEST_EQUATION, WIDTH } from "./in-page.js";

const site = fileURLToPath(new URL("../../docs/site/", import.meta.url));
const DESK = { width: 1280, height: 900 };
const PHONE = { width: 390, height: 844 };
const FORMULA = "functions/pv-to-grid_module.openCircuitVoltageAt.html";
const PIECEWISE = "functions/pv-to-grid_conductor.ampacityWithHarmonics.html";
const TABLE = "functions/pv-to-grid_module.nfpa70_2017_690_7_a.html";
const CONDITION = "functions/pv-to-grid_string.coldVoltageWithinModule.html";

let browser: Browser;
const complaints: string[] = [];

beforeAll(async () => {
  if (!existsSync(join(site, "index.html"))) throw new Error("build the site first: npm run docs");
  browser = await engine.launch({ executablePath: chromium(), args: FLAGS });
}, 600_000);

afterAll(async () => {
  await browser.close();
});

async function opened(path: string, viewport = DESK): Promise<Page> {
  const page = await browser.newPage({ viewport });
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => {
    if (!/^(file|data):/.test(request.url())) complaints.push(`asks for ${request.url()}`);
  });
  await page.goto(pathToFileURL(join(site, path)).href);
  await shown(page);
  return page;
}

/** The site's own script hides a page until its reader's settings are read; only then can it be measured. */
async function shown(page: Page): Promise<void> {
  await page.locator("h1, h2").first().waitFor({ state: "visible" });
}

describe.each([
  ["desk", DESK],
  ["phone", PHONE],
])("opens without complaint or request, and fits: %s", (_, viewport) => {
  const guide = "documents/Size_your_first_plant.html";
  it.each(["index.html", "documents/Glossary.html", guide, PIECEWISE, TABLE])("%s", async (path) => {
    complaints.length = 0;
    const page = await opened(path, viewport);
    const width = await page.evaluate<number>(WIDTH);
    await page.close();
    expect(complaints).toEqual([]);
    expect(width).toBeLessThanOrEqual(viewport.width);
  });
});

describe("a rule's page", () => {
  it.each([FORMULA, PIECEWISE, CONDITION])("shows its equation: %s", async (path) => {
    const page = await opened(path);
    const { width, height } = await page.evaluate<{ width: number; height: number }>(SMALLEST_EQUATION);
    await page.close();
    expect(width).toBeGreaterThan(40);
    expect(height).toBeGreaterThan(10);
  });

  it("has every part that an engineer looks for", async () => {
    const page = await opened(FORMULA);
    const heads = await page.locator("h4").allTextContents();
    await page.close();
    for (const head of [
      "Equation",
      "Symbols",
      "Constants",
      "Result",
      "Example",
      "Source",
      "Published cases",
      "Errors",
      "Related rules",
    ])
      expect(heads.map((text) => text.trim())).toContain(head);
  });

  it("prints a table's cells, and a brace before pieces", async () => {
    const table = await opened(TABLE);
    expect(await table.locator("table.cells tbody tr").count()).toBe(13);
    await table.close();
    const pieces = await opened(PIECEWISE);
    expect(await pieces.locator("mtable.pieces mtr").count()).toBe(4);
    await pieces.close();
  });

  it("leads from a symbol to its words in the glossary", async () => {
    const page = await opened(FORMULA);
    await page.locator("table a", { hasText: "cellTemperature" }).click();
    await page.waitForURL(/Glossary\.html#celltemperature/);
    await shown(page);
    expect(await page.locator("#celltemperature").isVisible()).toBe(true);
    await page.close();
  });
});

it("the search finds 'voltage drop'", async () => {
  complaints.length = 0;
  const page = await opened("index.html");
  await page.locator("#tsd-search-trigger").click();
  await page.locator("#tsd-search-input").fill("voltage drop");
  const found = page.locator("#tsd-search-results a");
  await found.first().waitFor();
  const texts = await found.allTextContents();
  expect(texts.filter((text) => /drop|change/i.test(text)).length, texts.join(", ")).toBeGreaterThan(2);
  await found.first().click();
  await page.waitForURL((url) => !url.pathname.endsWith("index.html"));
  await page.close();
  expect(complaints).toEqual([]);
});
