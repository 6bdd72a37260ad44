/** Whatever the description leaves out, the reports stay whole. */
import { fc, test } from "@fast-check/vitest";
import { expect, vi } from "vitest";
import { isInputError, sizePlant, type PlantDescription } from "../../src/index.js";
import {
  checksCsv,
  commissioningSheetHtml,
  materialsCsv,
  reportHtml,
  reportMarkdown,
  reportText,
} from "../../src/report/index.js";
import { bakeryWith } from "../plant/demo.js";

const MAY_BE_MISSING = [
  "site.coldest",
  "site.hottest",
  "site.altitude",
  "site.building",
  "roofs[0].mounting",
  "boards",
  "lightningProtection",
  "surgeDevices",
  "supply.loop",
  "supply.network",
  "supply.earthing",
  "supply.largestFaultCurrent",
  "supply.serviceDevice",
  "supply.lineToNeutral",
  "moduleTypes.Hearth 430.maximumPowerCoefficient",
  "moduleTypes.Hearth 430.maximumSystemVoltage",
  "moduleTypes.Hearth 430.shortCircuitCurrentCoefficient",
  "inverters[0].maximumAcCurrent",
  "inverters[0].startVoltage",
  "inverters[0].dcSwitch",
  "inverters[0].terminals",
  "inverters[0].statedIn",
  "routes[0].stretches[0].ambient",
  "routes[0].stretches[1].grouped",
  "routes[2].stretches[0].ambient",
  "routes[2].breaker",
  "routes[2].rcd",
  "routes[0].conductorLimit",
];

const RUNS = 12;

vi.setConfig({ testTimeout: 120_000 });

test.prop([fc.subarray(MAY_BE_MISSING)], { numRuns: RUNS })("no report prints what is not there", (gone) => {
  const plant = bakeryWith(Object.fromEntries(gone.map((path) => [path, undefined]))) as PlantDescription;
  let record;
  try {
    record = sizePlant(plant);
  } catch (error) {
    // A board that a route ends at cannot be left out.
    if (isInputError(error)) return;
    throw error;
  }
  const texts = [
    reportHtml(record),
    commissioningSheetHtml(record),
    reportText(record),
    reportMarkdown(record),
    checksCsv(record),
    materialsCsv(record),
  ];
  for (const text of texts) expect(text).not.toMatch(/\bNaN\b|\bundefined\b|\[object|\bnull\b|Infinity/);
});
