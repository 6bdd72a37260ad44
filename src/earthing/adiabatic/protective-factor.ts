import type { Quantity } from "../../quantity/index.js";
import { iec60364_5_54_2011_a_54_2 } from "./a-54-2.js";
import { iec60364_5_54_2011_a_54_3 } from "./a-54-3.js";
import { iec60364_5_54_2011_a_54_4 } from "./a-54-4.js";
import { iec60364_5_54_2011_a_54_5 } from "./a-54-5.js";
import { iec60364_5_54_2011_a_54_6 } from "./a-54-6.js";

/** How a protective conductor lies, which decides its temperature before the fault. */
export type FactorSituation = "separate" | "bare beside cables" | "core in cable" | "metallic layer" | "bare";

/** A protective conductor whose adiabatic factor is asked for. */
export interface FactorQuestion {
  readonly situation: FactorSituation;
  /** Row of the table of the situation, such as "PVC 70 °C, up to 300 mm²" or "thermosetting 90 °C". */
  readonly insulation: string;
  readonly material: "copper" | "aluminium" | "steel" | "lead";
}

/**
 * Adiabatic factor of a protective conductor, from the table of its situation.
 *
 * @param question - situation, insulation or covering, and material
 * @throws InputError where the table has no such row or material
 * @example
 * ```ts
 * import { protectiveFactor } from "pv-to-grid/earthing";
 * protectiveFactor({ situation: "core in cable", insulation: "thermosetting 90 °C", material: "copper" }).text; // "143"
 * ```
 */
export function protectiveFactor({ situation, insulation, material }: FactorQuestion): Quantity<"adiabaticFactor"> {
  return tables[situation]({ insulation, material });
}

type FactorTable = (headings: {
  readonly insulation: string;
  readonly material: string;
}) => Quantity<"adiabaticFactor">;

const tables: Readonly<Record<FactorSituation, FactorTable>> = {
  separate: iec60364_5_54_2011_a_54_2 as FactorTable,
  "bare beside cables": iec60364_5_54_2011_a_54_3 as FactorTable,
  "core in cable": iec60364_5_54_2011_a_54_4 as FactorTable,
  "metallic layer": iec60364_5_54_2011_a_54_5 as FactorTable,
  bare: iec60364_5_54_2011_a_54_6 as FactorTable,
};
