import { expect, it } from "vitest";
import * as protection from "../../src/protection/index.js";

// Every cell a second time, typed apart from the tables; a slip in one of the two is noticed by the other. No evidence: guards are in reference-data/.
const again: Readonly<Record<string, string>> = {
  iec60364_4_41_2005_41_1: `
    120 | TN | a.c. | 0.8
    120 | TT | a.c. | 0.3
    230 | TN | a.c. | 0.4
    230 | TN | d.c. | 5
    230 | TT | a.c. | 0.2
    230 | TT | d.c. | 0.4
    400 | TN | a.c. | 0.2
    400 | TN | d.c. | 0.4
    400 | TT | a.c. | 0.07
    400 | TT | d.c. | 0.2
  `,
  iec60364_4_41_2005_41_1_above: `
    above 400 V | TN | a.c. | 0.1
    above 400 V | TN | d.c. | 0.1
    above 400 V | TT | a.c. | 0.04
    above 400 V | TT | d.c. | 0.1
  `,
  iec60364_4_41_2017_41_1: `
    120 | TN | a.c. | 0.8
    120 | TT | a.c. | 0.3
    230 | TN | a.c. | 0.4
    230 | TN | d.c. | 1
    230 | TT | a.c. | 0.2
    230 | TT | d.c. | 0.4
    400 | TN | a.c. | 0.2
    400 | TN | d.c. | 0.4
    400 | TT | a.c. | 0.07
    400 | TT | d.c. | 0.2
  `,
  iec60364_4_41_2017_41_1_above: `
    above 400 V | TN | a.c. | 0.1
    above 400 V | TN | d.c. | 0.1
    above 400 V | TT | a.c. | 0.04
    above 400 V | TT | d.c. | 0.1
  `,
  iec60364_4_41_2017_distribution: `
    TN | 5
    TT | 1
  `,
  iec60364_4_41_final_circuit_limits: `
    fixed equipment | 2005 | 32
    fixed equipment | 2017 | 32
    socket-outlets | 2005 | 32
    socket-outlets | 2017 | 63
  `,
  eig2010_short_circuit_voltage: `
    750 | oil-immersed | 4
    750 | cast-resin | 6
    3200 | oil-immersed | 6
    3200 | cast-resin | 6
  `,
  iec60909_2016_voltage_factors: `
    6 % | largest | 1.05
    6 % | smallest | 0.95
    10 % | largest | 1.10
    10 % | smallest | 0.95
  `,
  nfpa70_2020_next_size_limit: `
    next standard size | 800
  `,
  touchVoltageLimits: `
    ordinary | 50
    special location | 25
  `,
  stableElectrodeLimit: `
    stable up to | 200
  `,
  lowestVoltageFactors: `
    BS 7671:2018 | 0.95
    rules that are silent | 0.95
    stricter option | 0.90
  `,
  eig2009_resistivity: `
    copper | 0.023
    aluminium | 0.037
  `,
  eig2009_section: `
    50 | 47.5
  `,
  eig2009_reactance_allowance: `
    120 | 1
    150 | 1.15
    185 | 1.20
    240 | 1.25
  `,
  iec60364_4_43_2008_43a: `
    PVC 70 °C, up to 300 mm² | copper | 115
    PVC 70 °C, up to 300 mm² | aluminium | 76
    PVC 70 °C, above 300 mm² | copper | 103
    PVC 70 °C, above 300 mm² | aluminium | 68
    PVC 90 °C, up to 300 mm² | copper | 100
    PVC 90 °C, up to 300 mm² | aluminium | 66
    PVC 90 °C, above 300 mm² | copper | 86
    PVC 90 °C, above 300 mm² | aluminium | 57
    thermosetting 90 °C | copper | 143
    thermosetting 90 °C | aluminium | 94
    rubber 60 °C | copper | 141
    rubber 60 °C | aluminium | 93
    mineral, covered or exposed to touch | copper | 115
    mineral, bare | copper | 135
    soldered joints | copper | 115
  `,
};

const faces = protection as unknown as Readonly<
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
