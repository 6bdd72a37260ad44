import type { Input, Quantity } from "../../quantity/index.js";
import type { DeviceKind } from "../lists.js";
import {
  breakerConventionalTrippingCurrent,
  fuseConventionalTrippingCurrent,
  mouldedCaseConventionalTrippingCurrent,
  stringFuseConventionalTrippingCurrent,
} from "./conventional-currents.js";

/**
 * Conventional tripping current of an overcurrent device, or `null` for a kind whose rules know none.
 *
 * @param kind - kind of overcurrent device
 * @param ratedCurrent - rated current of the device
 * @throws InputError where the rating lies outside the range of the kind
 * @example
 * ```ts
 * import { conventionalTripping } from "pv-to-grid/device";
 * conventionalTripping("gG fuse", "35 A")?.text; // "56"
 * ```
 */
export function conventionalTripping(kind: DeviceKind, ratedCurrent: Input<"current">): Quantity<"current"> | null {
  switch (kind) {
    case "miniature breaker":
      return breakerConventionalTrippingCurrent({ ratedCurrent });
    case "moulded-case breaker":
      return mouldedCaseConventionalTrippingCurrent({ ratedCurrent });
    case "gG fuse":
      return fuseConventionalTrippingCurrent({ ratedCurrent });
    case "gPV fuse":
      return stringFuseConventionalTrippingCurrent({ ratedCurrent });
    case "NEC breaker":
    case "NEC fuse":
      return null;
  }
}
