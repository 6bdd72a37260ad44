import { expect, it } from "vitest";
import * as device from "../../src/device/index.js";

// Every cell a second time, typed apart from the tables; a slip in one of the two is noticed by the other. No evidence: guards are in reference-data/.
const again: Readonly<Record<string, string>> = {
  iec60269_1_2006_gg_operating_currents: `
    6 | 5 s | 28
    6 | 0.4 s | 47
    10 | 5 s | 46
    10 | 0.4 s | 82
    16 | 5 s | 65
    16 | 0.4 s | 110
    20 | 5 s | 85
    20 | 0.4 s | 147
    25 | 5 s | 110
    25 | 0.4 s | 183
    32 | 5 s | 150
    32 | 0.4 s | 275
    40 | 5 s | 190
    40 | 0.4 s | 320
    50 | 5 s | 250
    50 | 0.4 s | 470
    63 | 5 s | 320
    63 | 0.4 s | 550
    80 | 5 s | 425
    80 | 0.4 s | 840
    100 | 5 s | 580
    100 | 0.4 s | 1020
  `,
  iec61008_1_2010_break_times: `
    general, longest break | I_Δn | 0.3
    general, longest break | 2 I_Δn | 0.15
    general, longest break | 5 I_Δn | 0.04
    time-delayed S, longest break | I_Δn | 0.5
    time-delayed S, longest break | 2 I_Δn | 0.2
    time-delayed S, longest break | 5 I_Δn | 0.15
    time-delayed S, no break before | I_Δn | 0.13
    time-delayed S, no break before | 2 I_Δn | 0.06
    time-delayed S, no break before | 5 I_Δn | 0.05
  `,
  iec60898_1_2015_trip_bands: `
    B | does not trip up to | 3
    B | trips at the latest | 5
    C | does not trip up to | 5
    C | trips at the latest | 10
    D | does not trip up to | 10
    D | trips at the latest | 20
  `,
  iec60898_1_2015_instantaneous_time: `
    B | 0.1
    C | 0.1
    D | 0.1
  `,
};

const faces = device as unknown as Readonly<
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
