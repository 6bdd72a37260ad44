import { describe, expect, it } from "vitest";
import { type MeasurementSheet, readSheetCsv, readSheetJson, sheetOf } from "../../src/commissioning/index.js";
import { type PlantDescription, sizePlant } from "../../src/index.js";
import { diodePoints, type DiodePoints, diodeUnder, fitDiode } from "../../src/module/index.js";
import { commissioningOf, judgeSheet, type JudgedSheet, measurementSheetCsv } from "../../src/plant/index.js";
import { bakeryWith, villageBakery } from "./demo.js";

const record = sizePlant(villageBakery());

// The readings are those of the one-diode model of the bakery's module, fitted to its datasheet and carried to another
// light and warmth by the physics of the diode; the expectations that judge them are linear in the coefficients.
function modelAt(irradiance: number, cellTemperature: number): DiodePoints {
  const stc = fitDiode({
    shortCircuitCurrent: 13.95,
    openCircuitVoltage: 38.9,
    mppVoltage: 32.6,
    mppCurrent: 13.19,
    openCircuitVoltageSlope: -0.0025 * 38.9,
    shortCircuitCurrentSlope: 0.00045 * 13.95,
  });
  return diodePoints(diodeUnder(stc, { irradiance, cellTemperature }));
}

const EAST = { irradiance: 640, cell: 38 };
const WEST = { irradiance: 310, cell: 27 };

type Fill = Record<string, string>;

/** The blank sheet of the bakery, filled in as the model reads, and then with what the test changes. */
function filled(changes: Fill = {}): string {
  const [east, west] = [modelAt(EAST.irradiance, EAST.cell), modelAt(WEST.irradiance, WEST.cell)];
  const string = (at: string, modules: number, points: DiodePoints): Fill => ({
    [`${at}|openCircuitVoltage`]: (modules * points.openCircuitVoltage).toFixed(1),
    [`${at}|shortCircuitCurrent`]: points.shortCircuitCurrent.toFixed(2),
    [`${at}|operatingVoltage`]: (modules * points.mppVoltage).toFixed(1),
    [`${at}|operatingCurrent`]: points.mppCurrent.toFixed(2),
    [`${at}|insulationPositive`]: "180",
    [`${at}|insulationNegative`]: "240",
  });
  const values: Fill = {
    "East face|irradiance": "640",
    // One kelvin at full sun from cell to back, by construction and mounting.
    "East face|moduleTemperature": (EAST.cell - 0.64).toFixed(2),
    "West face|irradiance": "310",
    "West face|moduleTemperature": (WEST.cell - 0.31).toFixed(2),
    ...string("Inverter/A", 13, east),
    ...string("Inverter/B", 13, east),
    ...string("Inverter/C", 14, west),
    "Inverter-Main board|acInsulation": "150",
    "Inverter-Main board|continuity": "0.06",
    "Inverter-Main board|loopImpedance": "0.41",
    "Main board|voltageL1": "231.2",
    "Main board|voltageL2": "230.8",
    "Main board|voltageL3": "232.0",
    "|irradiation": "5.2",
    "|energy": "73.5",
    ...changes,
  };
  const [head, ...lines] = measurementSheetCsv(record).trimEnd().split("\n");
  return [head, ...lines.map((line) => fillLine(line, values))].join("\n");
}

function fillLine(line: string, values: Fill): string {
  const [at, reading] = line.split(",");
  const value = values[`${at!}|${reading!}`] ?? "";
  return line.replace(/,[^,]*,([^,]*)$/, `,${value},$1`);
}

const sheet = (changes?: Fill): MeasurementSheet => sheetOf(readSheetCsv(filled(changes)));
const judge = (changes?: Fill): JudgedSheet => judgeSheet(record, sheet(changes));
const outside = ({ readings }: JudgedSheet): string[] =>
  readings.filter(({ verdict }) => verdict === "outside").map(({ at, reading }) => `${at} ${reading}`);
const hints = (judged: JudgedSheet): string[] => judged.hints.map(({ key, at }) => `${key} ${at.join(" ")}`);

describe("the measurement sheet of a plant", () => {
  it("has a place for every reading of every string, roof, circuit and supply", () => {
    const { places, steps, tells, insulation, toSeal } = commissioningOf(record);
    expect(new Set(places.map(({ at }) => at))).toEqual(
      new Set([
        "East face",
        "West face",
        "Inverter/A",
        "Inverter/B",
        "Inverter/C",
        "Inverter-Main board",
        "Main board",
        "",
      ]),
    );
    expect(places.filter(({ at }) => at === "Inverter/A").map(({ reading }) => reading)).toEqual([
      "openCircuitVoltage",
      "shortCircuitCurrent",
      "insulationPositive",
      "insulationNegative",
      "operatingVoltage",
      "operatingCurrent",
    ]);
    expect(steps.length).toBeGreaterThan(20);
    expect(toSeal.every(({ kind }) => kind === "seal")).toBe(true);
    expect(tells).toEqual({ againstExpected: 19, amongIdentical: 20, tooLong: [] });
    // 13 · 38.9 V · 1.25 = 632.1 V asks for 1000 V.
    expect(insulation.tests[0]).toMatchObject({
      systemVoltage: { value: "632.125" },
      testVoltage: { value: "1000" },
      minimum: { value: "1" },
    });
  });

  it("prints limits to four digits, never wider than the record", () => {
    const { places } = commissioningOf(record);
    const lines = measurementSheetCsv(record).split("\n");
    for (const { at, reading, low, high } of places.filter(({ at }) => !at.includes(","))) {
      const cells = lines
        .find((line) => line.startsWith(`${at},${reading},`))!
        .split(",")
        .slice(-4, -2);
      if (low) expect(Number(cells[0])).toBeGreaterThanOrEqual(Number(low.value) * (1 - 1e-12));
      if (high) expect(Number(cells[1])).toBeLessThanOrEqual(Number(high.value) * (1 + 1e-12));
    }
  });

  it("expects readings on three kinds of day, in the record and in its working", () => {
    expect(record.readings).toHaveLength(36);
    const clear = record.readings.find(
      ({ tracker, what, at }) => tracker === "C" && what === "open-circuit voltage" && at.startsWith("1000"),
    )!;
    // 14 · 38.9 · (1 − 0.0025 · 35)
    expect(Number(clear.expected!.value)).toBeCloseTo(496.9475, 9);
    expect(record.steps![clear.expected!.step]!.id).toBe("commissioning/expected-open-circuit-voltage-in-light");
  });
});

describe("a filled-in sheet", () => {
  it("of a sound plant has nothing outside, by readings of the one-diode model in weak light", () => {
    const judged = judge();
    expect(outside(judged)).toEqual([]);
    expect(hints(judged)).toEqual([]);
    expect(judged.outcome).toMatchObject({ outside: 0, within: 24, missing: 1, open: 0 });
    expect(judged.unplaced).toEqual([]);
    expect(judged.checks.filter(({ verdict }) => verdict !== "met").map(({ id }) => id)).toEqual([]);
  });

  it("with a module missing in one string finds it, by the band and among identical strings, and hints at it", () => {
    const east = modelAt(EAST.irradiance, EAST.cell);
    const judged = judge({
      "Inverter/B|openCircuitVoltage": (12 * east.openCircuitVoltage).toFixed(1),
      "Inverter/B|operatingVoltage": (12 * east.mppVoltage).toFixed(1),
    });
    expect(outside(judged)).toEqual(["Inverter/B openCircuitVoltage", "Inverter/B operatingVoltage"]);
    expect(hints(judged)).toEqual(["oneModuleFewer Inverter/B", "bypassed Inverter/B"]);
    expect(Number(judged.hints[0]!.modulesRead!.value)).toBeCloseTo(12, 0);
    const unequal = judged.checks.filter(
      ({ rule, verdict }) => rule === "commissioning/identical-voltages-agree" && verdict === "not-met",
    );
    expect(unequal.map(({ at }) => at)).toEqual(["Inverter/A and Inverter/B"]);
  });

  it("with reversed poles or a shaded string hints at them", () => {
    const east = modelAt(EAST.irradiance, EAST.cell);
    expect(hints(judge({ "Inverter/A|openCircuitVoltage": (-13 * east.openCircuitVoltage).toFixed(1) }))).toEqual([
      "reversedPolarity Inverter/A",
    ]);
    expect(hints(judge({ "Inverter/C|shortCircuitCurrent": "3.2", "Inverter/C|operatingCurrent": "3.0" }))).toEqual([
      "lessCurrent Inverter/C",
    ]);
  });

  it("with poor insulation, a long loop or a broken protective conductor finds each", () => {
    const judged = judge({
      "Inverter/A|insulationNegative": "0.4",
      "Inverter-Main board|loopImpedance": "0.59",
      "Inverter-Main board|continuity": "0.3",
      "Inverter-Main board|acInsulation": "0.99",
      "Main board|voltageL2": "399",
    });
    expect(outside(judged)).toEqual([
      "Inverter/A insulationNegative",
      "Inverter-Main board acInsulation",
      "Inverter-Main board continuity",
      "Inverter-Main board loopImpedance",
      "Main board voltageL2",
    ]);
  });

  it("leaves readings open whose light or warmth was not read, and missing what was not taken", () => {
    const judged = judge({ "West face|irradiance": "", "Inverter/A|openCircuitVoltage": "" });
    const of = (at: string, reading: string) =>
      judged.readings.find((each) => each.at === at && each.reading === reading)!;
    expect(of("Inverter/C", "openCircuitVoltage")).toMatchObject({
      verdict: "open",
      missing: ["sheet: irradiance at West face"],
    });
    expect(of("Inverter/A", "openCircuitVoltage")).toMatchObject({ verdict: "missing", value: null });
    expect(judged.checks.find(({ id }) => id.startsWith("commissioning/identical-voltages-agree"))!.verdict).toBe(
      "open",
    );
  });

  it("takes a noted cell temperature before a thermometer, and poles joined before apart", () => {
    const readings = [
      { at: "East face", reading: "irradiance", value: 640 },
      { at: "East face", reading: "cellTemperature", value: "38 °C" },
      { at: "Inverter/A", reading: "insulationJoined", value: "40 MΩ" },
    ];
    const judged = judgeSheet(
      record,
      sheetOf(readSheetJson({ format: "pv-to-grid/readings@1", by: "A. Fitter", readings })),
    );
    const own = judged.readings.filter(({ at }) => at === "Inverter/A");
    expect(own.map(({ reading }) => reading)).toEqual([
      "openCircuitVoltage",
      "shortCircuitCurrent",
      "operatingVoltage",
      "operatingCurrent",
      "insulationJoined",
    ]);
    expect(own.at(-1)!.verdict).toBe("within");
    expect(own[0]!.low).not.toBeNull();
    expect([judged.by, judged.performance]).toEqual(["A. Fitter", null]);
  });

  it("says which readings fit no place of the plant", () => {
    const read = readSheetJson({
      format: "pv-to-grid/readings@1",
      readings: [
        { at: "Invertor/A", reading: "openCircuitVoltage", value: 500 },
        { at: "East face", reading: "moduleTemperature", value: 40 },
        { at: "", reading: "energy", value: 70 },
        { at: "Inverter/A", reading: "loopImpedance", value: "0.4 Ω" },
        { at: "Invertor/B", reading: "openCircuitVoltage", value: null },
      ],
    });
    expect(judgeSheet(record, sheetOf(read)).unplaced).toEqual([
      { at: "Invertor/A", reading: "openCircuitVoltage" },
      { at: "Inverter/A", reading: "loopImpedance" },
    ]);
  });

  it("gives the ratio of the first day", () => {
    // 40 modules of 430 W: 17.2 kW; 73.5 kWh at 5.2 kWh/m².
    const { performance } = judge();
    expect(Number(performance!.performanceRatio.value)).toBeCloseTo(73.5 / 17.2 / 5.2, 12);
  });

  it("is frozen plain JSON that carries the working of each number", () => {
    const judged = judge();
    expect(JSON.parse(JSON.stringify(judged))).toEqual(judged);
    expect(Object.isFrozen(judged) && Object.isFrozen(judged.readings[0])).toBe(true);
    for (const { expected, low, high, value } of judged.readings)
      for (const number of [expected, low, high, value]) if (number) expect(judged.steps).toHaveProperty([number.step]);
    const ids = judged.checks.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(judged.readings.flatMap(({ checks }) => checks).filter((id) => !ids.includes(id))).toEqual([]);
    for (const id of new Set(judged.checks.map(({ rule }) => rule))) expect(judged.declarations).toHaveProperty([id]);
  });
});

describe("plants of another make-up", () => {
  const strings = (changes: Record<string, unknown>) => sizePlant(bakeryWith(changes) as PlantDescription);

  it("number equal strings of one tracker, and say which strings are too long to tell", () => {
    const long = strings({
      "roofs[0].modules": 40,
      "inverters[0].maximumDcVoltage": "1100 V",
      strings: [
        { inverter: "Inverter", tracker: "A", roof: "East face", modules: 20, count: 2 },
        { inverter: "Inverter", tracker: "C", roof: "West face", modules: 14 },
      ],
    });
    const { places, tells } = commissioningOf(long);
    expect(places.filter(({ reading }) => reading === "openCircuitVoltage").map(({ at }) => at)).toEqual([
      "Inverter/A/1",
      "Inverter/A/2",
      "Inverter/C",
    ]);
    expect(tells.tooLong).toEqual(["Inverter/A/1", "Inverter/A/2"]);
  });

  it("expect thin-film strings by temperature alone", () => {
    const thin = strings({ "moduleTypes.Hearth 430.technology": "thin film" });
    expect(thin.steps![thin.readings[0]!.expected!.step]!.id).toBe("commissioning/expected-open-circuit-voltage");
  });

  it("test a residual current device by its own currents and times", () => {
    const guarded = strings({ "routes[2].rcd": { type: "B", ratedResidualCurrent: "300 mA", delayed: true } });
    const tests = commissioningOf(guarded).places.filter(
      ({ reading }) => reading.startsWith("breakTime") || reading === "residualCurrent",
    );
    expect(tests.map(({ reading, low, high }) => [reading, low?.value, high?.value])).toEqual([
      ["breakTime", "0.13", "0.5"],
      ["breakTimeAtFive", "0.05", "0.15"],
      ["residualCurrent", "0.15", "0.3"],
    ]);
  });
});
