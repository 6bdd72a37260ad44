import type { Known } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";

/** A factor that corrects a tabulated capacity, with what it is for. */
export interface AppliedFactor {
  readonly of: "ambient" | "soil" | "grouping" | "count" | "rooftop";
  readonly factor: Known<Quantity<"ratio">>;
}

/** What one stretch can carry, and how that was found. */
export interface StretchAmpacity {
  /** As laid: corrected to the ambient, the soil and the group, for all parallel conductors of a line. */
  readonly ampacity: Known<Quantity<"current">>;
  /** As tabulated for one conductor; the stated capacity where one was stated. */
  readonly tabulated: Quantity<"current">;
  readonly factors: readonly AppliedFactor[];
  /** The temperature that the factors were taken for. */
  readonly ambient: Known<Quantity<"temperature">>;
  /** The conductor's temperature at a current equal to the ampacity. */
  readonly conductorLimit: Quantity<"temperature"> | null;
  /** What was taken where the stretch left something out, and what the reader must know. */
  readonly notes: readonly string[];
}
