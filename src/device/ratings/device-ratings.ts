import type { Series } from "../../formula/index.js";
import { InputError } from "../../quantity/index.js";
import type { DeviceKind } from "../lists.js";
import { fuseRatings, stringFuseRatings } from "./fuses.js";
import { industrialRatings } from "./industrial-series.js";
import { breakerRatings } from "./miniature-breakers.js";
import {
  nfpa70_2017_240_6,
  nfpa70_2017_240_6_fuses,
  nfpa70_2020_240_6,
  nfpa70_2020_240_6_fuses,
  nfpa70_2023_240_6,
  nfpa70_2023_240_6_fuses,
} from "./nfpa70-240-6.js";

/**
 * The standard ratings from which a device of a kind is chosen, under a set of wiring rules.
 *
 * @param kind - kind of overcurrent device
 * @param wiring - the wiring rules with their edition; it matters for the kinds of NEC practice only
 * @throws InputError where a kind of NEC practice is asked for under other rules
 * @example
 * ```ts
 * import { deviceRatings } from "pv-to-grid/device";
 * deviceRatings("NEC breaker", "NFPA 70:2023").sizes()[0]?.text; // "10"
 * ```
 */
export function deviceRatings(kind: DeviceKind, wiring: string): Series<"A"> {
  switch (kind) {
    case "miniature breaker":
      return breakerRatings;
    case "moulded-case breaker":
      return industrialRatings;
    case "gG fuse":
      return fuseRatings;
    case "gPV fuse":
      return stringFuseRatings;
    case "NEC breaker":
    case "NEC fuse":
      return necRatings(kind, wiring);
  }
}

function necRatings(kind: "NEC breaker" | "NEC fuse", wiring: string): Series<"A"> {
  const fuse = kind === "NEC fuse";
  switch (wiring) {
    case "NFPA 70:2017":
      return fuse ? nfpa70_2017_240_6_fuses : nfpa70_2017_240_6;
    case "NFPA 70:2020":
      return fuse ? nfpa70_2020_240_6_fuses : nfpa70_2020_240_6;
    case "NFPA 70:2023":
      return fuse ? nfpa70_2023_240_6_fuses : nfpa70_2023_240_6;
    default: {
      const expected = "NFPA 70:2017, NFPA 70:2020, NFPA 70:2023";
      const message = `a device of NEC practice needs wiring rules of NFPA 70, not ${wiring}`;
      throw new InputError("device/device-ratings", [
        { path: "wiring", code: "not-in-list", message, expected, received: wiring },
      ]);
    }
  }
}
