import { expect, it } from "vitest";
import * as surge from "../../src/surge/index.js";

// Every cell a second time, typed apart from the tables; a slip in one of the two is noticed by the other. No evidence: guards are in reference-data/.
const again: Readonly<Record<string, string>> = {
  iec60664_1_2007_impulse_withstand: `
    50 | I | 330
    50 | II | 500
    50 | III | 800
    50 | IV | 1500
    100 | I | 500
    100 | II | 800
    100 | III | 1500
    100 | IV | 2500
    150 | I | 800
    150 | II | 1500
    150 | III | 2500
    150 | IV | 4000
    300 | I | 1500
    300 | II | 2500
    300 | III | 4000
    300 | IV | 6000
    600 | I | 2500
    600 | II | 4000
    600 | III | 6000
    600 | IV | 8000
    1000 | I | 4000
    1000 | II | 6000
    1000 | III | 8000
    1000 | IV | 12000
    1500 | I | 6000
    1500 | II | 8000
    1500 | III | 10000
    1500 | IV | 15000
  `,
  dehn2014_types: `
    no lightning protection | service entrance | type 2
    no lightning protection | inverter, a.c. side | type 2
    no lightning protection | inverter, d.c. side | type 2
    separation distance kept | service entrance | type 1
    separation distance kept | inverter, a.c. side | type 2
    separation distance kept | inverter, d.c. side | type 2
    separation distance not kept | service entrance | type 1
    separation distance not kept | inverter, a.c. side | type 1
    separation distance not kept | inverter, d.c. side | type 1
  `,
  surgeEarthMinimum: `
    type 2 | 6
    type 1 | 16
  `,
  frenchFlashLimit: `
    none asked for up to | 2.5
  `,
  iec60364_4_44_2007_surroundings: `
    rural | 85
    suburban | 85
    urban | 850
  `,
  iec62305_3_2010_class_factor: `
    I | 0.08
    II | 0.06
    III | 0.04
    IV | 0.04
  `,
  iec62305_3_2010_insulation_factor: `
    air | 1
    concrete, brick, wood | 0.5
  `,
  riskLevelLimit: `
    none asked for from | 1000
  `,
  utec15712_critical_length: `
    dwelling | 115
    ground-mounted plant | 200
    other building | 450
  `,
  leadLengthLimits: `
    at most | 1
    preferred | 0.5
  `,
  deviceReach: `
    one device | 10
  `,
  dischargeMinimum: `
    II | 5000
  `,
};

const faces = surge as unknown as Readonly<
  Record<
    string,
    { cells(): readonly { readonly row: string; readonly column: readonly string[]; readonly text: string }[] }
  >
>;
// 1.20 and 1.2 are one number; names are compared as they are.
const plain = (text: string): string => (/^-?[\d.]+$/.test(text) ? String(Number(text)) : text);

it.each(Object.entries(again))("%s has the cells that were typed again", (name, lines) => {
  const shipped = faces[name]!.cells().map(({ row, column, text }) => [row, ...column, plain(text)].join(" | "));
  const typed = lines
    .trim()
    .split("\n")
    .map((line) => {
      const parts = line.trim().split(" | ");
      return [...parts.slice(0, -1), plain(parts.at(-1)!)].join(" | ");
    });
  expect([...shipped].sort()).toEqual([...typed].sort());
});
