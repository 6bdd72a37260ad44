import { assumed } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";

/** The reactance that low-voltage practice takes where a cable's own is not known. */
export function usualReactance(): Quantity<"resistancePerLength"> {
  return assumed("0.08 Ω/km", "Ω/m", "reactance per length of a low-voltage cable", [
    { in: "Electrical Installation Guide:undated", clause: "chapter G, figure G29", grade: "original" },
  ]);
}
