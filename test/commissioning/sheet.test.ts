import { Ajv2020 } from "ajv/dist/2020.js";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  blankSheetCsv,
  READINGS_FORMAT,
  readingKinds,
  type ReadSheet,
  readSheetCsv,
  readSheetJson,
  sheetJsonSchema,
  sheetOf,
  workSteps,
} from "../../src/commissioning/index.js";

const isSheet = new Ajv2020({ strict: false }).compile(sheetJsonSchema());
const problems = (read: ReadSheet): [string, string][] =>
  read.ok ? [] : read.problems.map(({ path, code }) => [path, code]);
const json = (readings: unknown, more: object = {}) => ({ format: READINGS_FORMAT, readings, ...more });

describe("a filled-in sheet as JSON", () => {
  it("is read, with what was left empty as not taken", () => {
    const { readings, by, date } = sheetOf(
      readSheetJson(
        JSON.stringify(
          json(
            [
              { at: "INV1/A", reading: "openCircuitVoltage", value: "521.4 V", note: "hazy" },
              { at: "INV1/A", reading: "shortCircuitCurrent", value: 11.2 },
              { at: "INV1/A", reading: "operatingVoltage", value: null },
              { at: "INV1/A", reading: "operatingCurrent", value: "" },
              { at: "INV1/B", reading: "openCircuitVoltage", value: "-519 V" },
            ],
            { date: "2026-05-04", by: "A. Fitter" },
          ),
        ),
      ),
    );
    expect(readings.map(({ value }) => value && `${value.text} ${value.unit}`)).toEqual([
      "521.4 V",
      "11.2 A",
      null,
      null,
      "-519 V",
    ]);
    expect([by, date, readings[0]!.note]).toEqual(["A. Fitter", "2026-05-04", "hazy"]);
  });

  it("reports every problem at once, by path", () => {
    const read = readSheetJson({
      format: "readings@2",
      colour: 1,
      by: 7,
      readings: [
        { at: "A", reading: "openCircuitVolts", value: 1 },
        { at: "A", reading: "shortCircuitCurrent", value: "11 V" },
        { at: "A", reading: "operatingCurrent", value: "-3 A" },
        { at: "A", reading: "operatingVoltage", value: "480,5 V" },
        { at: 4, reading: "operatingVoltage" },
        { at: "B", reading: "openCircuitVoltage", value: 500 },
        { at: "B", reading: "openCircuitVoltage", value: 501, size: 3 },
        "nothing",
      ],
    });
    expect(problems(read)).toEqual([
      ["format", "not-in-list"],
      ["colour", "unknown-key"],
      ["by", "wrong-type"],
      ["readings[6].size", "unknown-key"],
      ["readings[7]", "wrong-type"],
      ["readings[0].reading", "not-in-list"],
      ["readings[1].value", "other-dimension"],
      ["readings[2].value", "out-of-domain"],
      ["readings[3].value", "decimal-comma"],
      ["readings[4].at", "wrong-type"],
      ["readings[6]", "contradiction"],
    ]);
    expect(read.ok ? "" : read.problems.find(({ path }) => path === "readings[0].reading")!.message).toContain(
      "openCircuitVoltage",
    );
    expect(() => sheetOf(read)).toThrow("measurement sheet");
  });

  it.each(["{", "[]", "7", "null"])("refuses %s", (text) => {
    expect(readSheetJson(text).ok).toBe(false);
  });

  it("has its schema in shared/, as it is published (npm run schemas)", () => {
    const published = readFileSync(new URL("../../shared/schemas/readings.schema.json", import.meta.url), "utf8");
    expect(published).toBe(`${JSON.stringify(sheetJsonSchema(), null, 2)}\n`);
  });

  it("has a schema that agrees, by a validator of another maker", () => {
    const good = json([{ at: "INV1/A", reading: "openCircuitVoltage", value: "521.4 V" }]);
    expect([isSheet(good), readSheetJson(good).ok]).toEqual([true, true]);
    for (const bad of [
      json([{ at: "A", reading: "volts" }]),
      json([{ reading: "energy" }]),
      json({}),
      { readings: [] },
      json([], { colour: 1 }),
    ])
      expect([isSheet(bad), readSheetJson(bad).ok]).toEqual([false, false]);
  });
});

describe("a filled-in sheet as text", () => {
  it("is read whichever separator, order of columns, quotes and line ends it has", () => {
    const commas =
      'at,reading,unit,value,note\r\n"East, upper",irradiance,W/m²,812,"he said ""hazy"""\r\nINV1/A,openCircuitVoltage,V,-519.5,\r\n\r\n';
    const semicolons = "\uFEFFvalue;at;reading\n0.52 kV;INV1/A;openCircuitVoltage\n;INV1/B;openCircuitVoltage\n";
    expect(sheetOf(readSheetCsv(commas)).readings.map(({ at, value, note }) => [at, value?.text, note])).toEqual([
      ["East, upper", "812", 'he said "hazy"'],
      ["INV1/A", "-519.5", null],
    ]);
    expect(sheetOf(readSheetCsv(semicolons)).readings.map(({ value }) => value?.text ?? null)).toEqual(["520", null]);
  });

  it("takes the unit of its column for a bare number", () => {
    const read = sheetOf(
      readSheetCsv("at,reading,unit,value\nR,breakTime,s,0.024\nR,residualCurrent,mA,22\nA,insulationPositive,GΩ,\n"),
    );
    expect(read.readings.map(({ value }) => value?.text ?? null)).toEqual(["0.024", "0.022", null]);
  });

  it.each([
    ["", "missing"],
    ["at,reading\nA,energy\n", "missing"],
    ["at,reading,value,at\n", "contradiction"],
    ["at,reading,value,volts\n", "unknown-key"],
    ['at,reading,value\n"A,energy,1\n', "not-readable"],
    ["at,reading,value\nA,openCircuitVoltage,520,4\n", "not-readable"],
    ["at;reading;value\nA;openCircuitVoltage;520,4\n", "decimal-comma"],
    ["at,reading,value\nA,openCircuitVoltage,520 A\n", "other-dimension"],
    ["at,reading,value\nA,openCircuitVoltage,five\n", "not-a-number"],
  ])("refuses %j as %s", (text, code) => {
    expect(problems(readSheetCsv(text)).map(([, each]) => each)).toContain(code);
  });

  it("names the line of a problem", () => {
    expect(problems(readSheetCsv('at,reading,value\n"A\nB",energy,1 kWh\nA,energy,2 V\n'))[0]![0]).toBe("line 4.value");
  });

  it("reads its own blank form back as nothing taken", () => {
    const rows = readingKinds.map(({ key, of }) => ({ at: of === "plant" ? "" : "Main, old", reading: key, low: "1" }));
    const { readings } = sheetOf(readSheetCsv(blankSheetCsv(rows)));
    expect(readings.map(({ reading, value, at }) => [reading, value, at])).toEqual(
      rows.map(({ reading, at }) => [reading, null, at]),
    );
  });

  it("disarms names that a spreadsheet would run", () => {
    expect(blankSheetCsv([{ at: "=1+1", reading: "energy" }])).toContain("\n'=1+1,");
  });
});

describe("order of work", () => {
  const place = (key: string): number => {
    const at = workSteps.findIndex((step) => step.key === key);
    expect(at).toBeGreaterThanOrEqual(0);
    return at;
  };

  it.each([
    ["isolated", "acConnector"],
    ["switches", "connectStrings"],
    ["polarity", "connectStrings"],
    ["seal", "connectStrings"],
    ["acConductors", "acConnector"],
    ["settings", "start"],
    ["instructions", "isolated"],
  ])("%s comes before %s", (first, then) => {
    expect(place(first)).toBeLessThan(place(then));
  });

  it("names each step once, and only readings of the sheet", () => {
    const keys = workSteps.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    const known = readingKinds.map(({ key }) => key as string);
    expect(workSteps.flatMap(({ readings }) => readings).filter((key) => !known.includes(key))).toEqual([]);
  });

  it("carries the usual cautions", () => {
    const said = workSteps.flatMap(({ text, cautions }) => [text, ...cautions]).join(" ");
    for (const words of [
      "live in daylight",
      "lock it off",
      "prove it dead",
      "d.c. switch open",
      "polarity",
      "Seal every unused",
      "L1, L2, L3, N and the protective conductor",
      "must not feed before",
      "they prevail",
    ])
      expect(said).toContain(words);
  });
});
