import type { Input, Quantity } from "../../../quantity/index.js";
import { sectionMayBeDisregarded, shortSectionAllowance, totalLength } from "./short-section.js";

/** A section of a circuit with its own ampacity. */
export interface Section {
  readonly length: Input<"length">;
  readonly ampacity: Quantity<"current">;
}

/** Which sections of a circuit may be disregarded, being shorter together than 3 m and a tenth of the circuit. */
export function disregardedSections(sections: readonly Section[]): ReadonlySet<number> {
  const circuitLength = totalLength({ lengths: sections.map(({ length }) => length) });
  const limit = shortSectionAllowance({ circuitLength });
  const weakestFirst = [...sections.entries()].sort(([, a], [, b]) => a.ampacity.number - b.ampacity.number);
  const disregarded = new Set<number>();
  for (const [index] of weakestFirst.slice(0, -1)) {
    const lengths = [...disregarded, index].map((at) => sections[at]!.length);
    if (sectionMayBeDisregarded({ value: totalLength({ lengths }), limit }).verdict !== "met") break;
    disregarded.add(index);
  }
  return disregarded;
}
