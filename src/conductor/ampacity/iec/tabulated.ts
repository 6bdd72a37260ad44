import type { Quantity } from "../../../quantity/index.js";
import type { ConductorMetal, Insulation } from "../../cable.js";
import type { Arrangement, ReferenceMethod } from "../../stretch.js";
import { refuse } from "../refusal.js";
import { iec60364_5_52_2009_b_52_2 } from "./b-52-2.js";
import { iec60364_5_52_2009_b_52_3 } from "./b-52-3.js";
import { iec60364_5_52_2009_b_52_4 } from "./b-52-4.js";
import { iec60364_5_52_2009_b_52_5 } from "./b-52-5.js";
import { iec60364_5_52_2009_b_52_10 } from "./b-52-10.js";
import { iec60364_5_52_2009_b_52_11 } from "./b-52-11.js";
import { iec60364_5_52_2009_b_52_12 } from "./b-52-12.js";
import { iec60364_5_52_2009_b_52_13 } from "./b-52-13.js";

/** What decides the table and the column of a capacity. */
export interface TabulatedBy {
  readonly insulation: Insulation;
  readonly conductor: ConductorMetal;
  readonly method: ReferenceMethod;
  readonly loaded: 2 | 3;
  readonly arrangement: Arrangement | undefined;
}

/** Capacity of a table of methods A1 to D2, by insulation and number of loaded conductors. */
const enclosed = {
  PVC: { 2: iec60364_5_52_2009_b_52_2, 3: iec60364_5_52_2009_b_52_4 },
  XLPE: { 2: iec60364_5_52_2009_b_52_3, 3: iec60364_5_52_2009_b_52_5 },
} as const;

/** Table of methods E, F and G, by insulation and metal. */
const inFreeAir = {
  PVC: { copper: iec60364_5_52_2009_b_52_10, aluminium: iec60364_5_52_2009_b_52_11 },
  XLPE: { copper: iec60364_5_52_2009_b_52_12, aluminium: iec60364_5_52_2009_b_52_13 },
} as const;

type FreeAirColumn = Parameters<(typeof inFreeAir)["PVC"]["copper"]>[0]["arrangement"];

/** The tabulated capacity of IEC 60364-5-52 for one circuit at the base of its table. */
export function tabulatedIec(section: Quantity<"area">, by: TabulatedBy): Quantity<"current"> {
  const { insulation, conductor, method, loaded } = by;
  if (method === "E" || method === "F" || method === "G") {
    return inFreeAir[insulation][conductor]({ section, arrangement: freeAirColumn(by, method) });
  }
  return enclosed[insulation][loaded]({ section, conductor, method });
}

/** The sections that the table has for such a cable, smallest first, as printed. */
export function sectionsTabulatedIec(by: TabulatedBy): readonly string[] {
  const { insulation, conductor, method, loaded } = by;
  if (method === "E" || method === "F" || method === "G") {
    const column = freeAirColumn(by, method);
    return rowsOf(inFreeAir[insulation][conductor], (cell) => cell[0] === column);
  }
  return rowsOf(enclosed[insulation][loaded], (cell) => cell[0] === conductor && cell[1] === method);
}

function rowsOf(
  table: { cells(): readonly { readonly row: string; readonly column: readonly string[] }[] },
  wanted: (column: readonly string[]) => boolean,
): readonly string[] {
  return table
    .cells()
    .filter(({ column }) => wanted(column))
    .map(({ row }) => row);
}

function freeAirColumn({ loaded, arrangement }: TabulatedBy, method: "E" | "F" | "G"): FreeAirColumn {
  if (method === "E") return loaded === 2 ? "E two loaded" : "E three loaded";
  if (method === "F") {
    if (loaded === 2) return "F two loaded touching";
    return arrangement === "flat" || arrangement === "touching" ? "F three loaded flat" : "F three loaded trefoil";
  }
  if (loaded === 2) {
    const message =
      "method G is tabulated for three loaded conductors only; two spaced conductors may take the value of method F";
    return refuse(
      "stretches[].referenceMethod",
      message,
      "F, or three loaded conductors",
      "G with two loaded conductors",
    );
  }
  return arrangement === "spaced" || arrangement === "flat" ? "G three loaded horizontal" : "G three loaded vertical";
}
