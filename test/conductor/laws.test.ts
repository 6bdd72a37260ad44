import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  ampacityOf,
  bs7671_2018_4d1b,
  bs7671_2018_4e1b,
  bs7671_2018_4e4b,
  bs7671_2018_4f2b,
  exactDropFromReceiving,
  iec60228_2004_class2,
  iec60364_5_52_2009_b_52_10,
  iec60364_5_52_2009_b_52_11,
  iec60364_5_52_2009_b_52_12,
  iec60364_5_52_2009_b_52_13,
  iec60364_5_52_2009_b_52_14,
  iec60364_5_52_2009_b_52_15,
  iec60364_5_52_2009_b_52_17,
  iec60364_5_52_2009_b_52_18,
  iec60364_5_52_2009_b_52_2,
  iec60364_5_52_2009_b_52_3,
  iec60364_5_52_2009_b_52_4,
  iec60364_5_52_2009_b_52_5,
  nfpa70_2017_table_8,
  nfpa70_2023_310_15_b_1_1,
  nfpa70_2023_310_16,
  nfpa70_2023_310_17,
  resistanceAtTemperature,
  resistanceFrom75,
  resistanceAt20,
  tabulatedDropByParts,
  tabulatedImpedance,
  threePhaseDrop,
  unel35023_1970_single_core,
} from "../../src/conductor/index.js";
import type { Quantity } from "../../src/quantity/index.js";

interface Cells {
  readonly id: string;
  cells(): readonly { readonly row: string; readonly column: readonly string[]; readonly text: string }[];
}

function columnsOf(table: Cells): Map<string, number[]> {
  const columns = new Map<string, number[]>();
  for (const { column, text } of table.cells()) {
    const key = column.join(" | ");
    columns.set(key, [...(columns.get(key) ?? []), Number(text)]);
  }
  return columns;
}

/** Tables by name, for the titles of tests. */
const named = (...tables: readonly Cells[]): readonly (readonly [string, Cells])[] =>
  tables.map((table) => [table.id, table]);

const rises = (values: readonly number[]): boolean => values.every((value, at) => at === 0 || value > values[at - 1]!);
const neverRises = (values: readonly number[]): boolean =>
  values.every((value, at) => at === 0 || value <= values[at - 1]!);

describe("tables", () => {
  it.each(
    named(
      iec60364_5_52_2009_b_52_2,
      iec60364_5_52_2009_b_52_3,
      iec60364_5_52_2009_b_52_4,
      iec60364_5_52_2009_b_52_5,
      iec60364_5_52_2009_b_52_10,
      iec60364_5_52_2009_b_52_11,
      iec60364_5_52_2009_b_52_12,
      iec60364_5_52_2009_b_52_13,
      nfpa70_2023_310_16,
      nfpa70_2023_310_17,
    ),
  )("%s: a larger conductor carries more", (_, table) => {
    for (const [column, values] of columnsOf(table)) expect(rises(values), column).toBe(true);
  });

  it.each(
    named(
      iec60364_5_52_2009_b_52_14,
      iec60364_5_52_2009_b_52_15,
      iec60364_5_52_2009_b_52_17,
      iec60364_5_52_2009_b_52_18,
      nfpa70_2023_310_15_b_1_1,
      iec60228_2004_class2,
    ),
  )("%s: warmer, more crowded or thicker never has the higher value", (_, table) => {
    for (const [column, values] of columnsOf(table)) expect(neverRises(values), column).toBe(true);
  });

  it("three loaded conductors never carry more than two, nor PVC more than XLPE", () => {
    const pairs = [
      [iec60364_5_52_2009_b_52_2, iec60364_5_52_2009_b_52_4],
      [iec60364_5_52_2009_b_52_3, iec60364_5_52_2009_b_52_5],
      [iec60364_5_52_2009_b_52_3, iec60364_5_52_2009_b_52_2],
      [iec60364_5_52_2009_b_52_5, iec60364_5_52_2009_b_52_4],
    ] as readonly (readonly [Cells, Cells])[];
    for (const [more, less] of pairs) {
      const upper = new Map(more.cells().map(({ row, column, text }) => [[row, ...column].join(), Number(text)]));
      for (const { row, column, text } of less.cells())
        expect(Number(text)).toBeLessThanOrEqual(upper.get([row, ...column].join())!);
    }
  });

  // The printed parts are rounded in steps of a few per cent.
  it.each(named(bs7671_2018_4d1b, bs7671_2018_4e1b, bs7671_2018_4e4b, bs7671_2018_4f2b))(
    "%s: z is √(r² + x²)",
    (_, table) => {
      const at = new Map(table.cells().map(({ row, column, text }) => [[row, ...column].join(), text]));
      let compared = 0;
      for (const { row, column, text } of table.cells()) {
        const [r, x] = [at.get([row, column[0], "r"].join()), at.get([row, column[0], "x"].join())];
        if (column[1] !== "z" || r === undefined || x === undefined) continue;
        const z = tabulatedImpedance({ tabulatedResistive: `${r} mV/A/m`, tabulatedReactive: `${x} mV/A/m` }).number;
        expect(Math.abs(z / Number(text) - 1), `${row} ${column[0]}`).toBeLessThan(0.035);
        compared += 1;
      }
      expect(compared).toBeGreaterThan(10);
    },
  );

  it("the Italian table at power factor 0.9 follows from its columns at 1 and 0.8", () => {
    for (const section of unel35023_1970_single_core.rows()) {
      const cell = (powerFactor: "1" | "0.9" | "0.8"): number =>
        unel35023_1970_single_core({ section: `${section} mm²`, circuit: "three-phase", powerFactor }).number;
      const reactive = (cell("0.8") - 0.8 * cell("1")) / 0.6;
      const between = tabulatedDropByParts({
        tabulatedResistive: cell("1"),
        tabulatedReactive: Math.max(0, Number(reactive.toFixed(6))),
        powerFactor: "0.9",
        reactiveFactor: "0.43589",
      });
      expect(Math.abs(between.number / cell("0.9") - 1), section).toBeLessThan(0.005);
    }
  });
});

const wiring = "IEC 60364:2009-2017" as const;
const sections = ["1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120", "150", "185", "240", "300"];
const laid = fc.record({
  size: fc.constantFrom(...sections.slice(0, -1)),
  method: fc.constantFrom("A2", "B2", "C", "D1", "D2", "E"),
  insulation: fc.constantFrom("PVC", "XLPE"),
  loaded: fc.constantFrom(2, 3),
  ambient: fc.integer({ min: 0, max: 55 }),
  grouped: fc.integer({ min: 0, max: 7 }),
});
type Laid = typeof laid extends fc.Arbitrary<infer T> ? T : never;

function amperes({ size, method, insulation, loaded, ambient, grouped }: Laid): number {
  const { ampacity } = ampacityOf({
    cable: { kind: "multi-core", conductor: "copper", insulation },
    size: `${size} mm²`,
    stretch: { place: "wall", length: "10 m", ambient: `${ambient} °C`, grouped, referenceMethod: method },
    loaded: loaded,
    wiring,
  });
  return (ampacity as Quantity).number;
}

describe("ampacity", () => {
  test.prop([laid])("of a larger section is never lower", (at) => {
    const next = sections[sections.indexOf(at.size) + 1]!;
    expect(amperes({ ...at, size: next })).toBeGreaterThan(amperes(at));
  });

  test.prop([laid, fc.integer({ min: 1, max: 5 })])("never rises with the ambient", (at, kelvin) => {
    expect(amperes({ ...at, ambient: at.ambient + kelvin })).toBeLessThanOrEqual(amperes(at));
  });

  test.prop([laid, fc.integer({ min: 1, max: 4 })])("never rises with the group", (at, more) => {
    expect(amperes({ ...at, grouped: at.grouped + more })).toBeLessThanOrEqual(amperes(at));
  });
});

const length = fc.integer({ min: 1, max: 500 });
const run = fc.record({
  length,
  current: fc.integer({ min: 1, max: 400 }),
  resistancePerLength: fc.integer({ min: 1, max: 100 }).map((each) => each / 10_000),
  reactancePerLength: fc.integer({ min: 0, max: 20 }).map((each) => each / 100_000),
  powerFactor: fc.integer({ min: 50, max: 100 }).map((each) => each / 100),
});

describe("voltage change", () => {
  test.prop([run])("is linear in length and in current", (at) => {
    const factors = { ...at, reactiveFactor: 0 };
    const one = threePhaseDrop(factors).number;
    expect(threePhaseDrop({ ...factors, length: 2 * at.length }).number / one).toBeCloseTo(2, 12);
    expect(threePhaseDrop({ ...factors, current: 3 * at.current }).number / one).toBeCloseTo(3, 12);
  });

  test.prop([run, fc.constantFrom(-1, 1)])("in its exact and linear forms agrees while it is small", (at, sign) => {
    const reactiveFactor = Number((sign * Math.sqrt(1 - at.powerFactor ** 2)).toFixed(6));
    const scale = 1 / 2000;
    const resistance = at.resistancePerLength * at.length * scale;
    const reactance = at.reactancePerLength * at.length * scale;
    const linear = at.current * (resistance * at.powerFactor + reactance * reactiveFactor);
    const exact = exactDropFromReceiving({
      receivingVoltage: "230 V",
      current: at.current,
      resistance: `${resistance.toFixed(9)} Ω`,
      reactance: `${reactance.toFixed(9)} Ω`,
      powerFactor: at.powerFactor,
      reactiveFactor,
    }).number;
    const across = (at.current * (resistance + reactance)) ** 2 / 230;
    expect(Math.abs(exact - linear)).toBeLessThanOrEqual(across + 1e-5);
  });
});

describe("resistance", () => {
  test.prop([fc.integer({ min: -40, max: 120 })])(
    "at a temperature and back at 20 °C is the same",
    (conductorTemperature) => {
      const common = { temperatureCoefficientAt20: "0.00393 1/K", conductorTemperature };
      const hot = resistanceAtTemperature({ resistancePerLengthAt20: "4.61 Ω/km", ...common });
      expect(resistanceAt20({ resistancePerLength: hot, ...common }).in("Ω/km").number).toBeCloseTo(4.61, 12);
    },
  );

  // 0.00323 1/K at 75 °C is 0.00393 1/K at 20 °C seen from there.
  test.prop([fc.integer({ min: 0, max: 90 })])(
    "is the same in the forms of 20 °C and of 75 °C",
    (conductorTemperature) => {
      for (const size of ["10 AWG", "4/0 AWG"]) {
        const at75 = nfpa70_2017_table_8({ conductorSize: size, make: "stranded", metal: "plain copper" });
        const at20 = resistanceAt20({
          resistancePerLength: at75,
          temperatureCoefficientAt20: "0.00393 1/K",
          conductorTemperature: "75 °C",
        });
        const metric = resistanceAtTemperature({
          resistancePerLengthAt20: at20,
          temperatureCoefficientAt20: "0.00393 1/K",
          conductorTemperature,
        });
        const american = resistanceFrom75({
          resistancePerLengthAt75: at75,
          temperatureCoefficientAt75: "0.00323 1/K",
          conductorTemperature,
        });
        expect(metric.number / american.number).toBeCloseTo(1, 3);
      }
    },
  );
});
