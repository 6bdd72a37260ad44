import type { LightningSituation } from "../lists.js";
import { isMissing, type Known } from "../../formula/index.js";

/**
 * Cautions that belong beside every array: loop areas, lightning protection, and ground-mounted arrays on a supply whose
 * neutral is also the protective conductor.
 *
 * @param plant - how the array stands to lightning protection, whether it stands on the ground, and the earthing of the supply
 * @example
 * ```ts
 * import { surgeCautions } from "pv-to-grid/surge";
 * surgeCautions({ lightning: "no lightning protection", groundMounted: true, earthing: "TN-C-S" }).length; // 2
 * ```
 */
export function surgeCautions(plant: {
  readonly lightning: Known<LightningSituation>;
  readonly groundMounted: Known<boolean>;
  readonly earthing: Known<string>;
}): readonly string[] {
  const { lightning, groundMounted, earthing } = plant;
  const cautions = [
    "Lay the plus and the minus conductor of a string together, so that the loop between them stays small.",
  ];
  if (isMissing(lightning)) {
    cautions.push("Find out whether the building has a lightning protection system before the array is bonded.");
  } else if (lightning !== "no lightning protection") {
    cautions.push(
      "Cross conductors of the lightning protection system only at the separation distance, or bond both with 16 mm² of copper.",
    );
  }
  const combined = earthing === "TN-C-S" || earthing === "TN-C";
  if (groundMounted === true && combined) {
    cautions.push(
      "A ground-mounted array outside the equipotential zone must not be bonded to a supply whose neutral is also the protective conductor; keep it apart, make it a TT system, or state the reason.",
    );
  }
  return Object.freeze(cautions);
}
