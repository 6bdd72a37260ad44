import { assumed } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Arrangement } from "../stretch.js";

const source = [
  { in: "common practice", clause: "thickness of insulation and sheath of power cables", grade: "common-practice" },
] as const;

/** The diameter of conductors over their axial spacing, where a cable's own dimensions are not known. */
export function diameterOverSpacing(arrangement: Arrangement | undefined): Quantity<"ratio"> {
  if (arrangement === "spaced") {
    return assumed(
      "0.45",
      "1",
      "diameter of the conductors over their axial spacing, cables one diameter apart",
      source,
    );
  }
  return assumed("0.85", "1", "diameter of the conductors over their axial spacing, cores touching", source);
}
