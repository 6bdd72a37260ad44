import * as z from "zod/mini";
import {
  arrangements,
  cableKinds,
  clearances,
  conductorClasses,
  conductorMetals,
  places,
  referenceMethods,
  trayKinds,
} from "../../conductor/index.js";
import { breakerCharacteristics, deviceKinds, rcdTypes } from "../../device/index.js";
import {
  choice,
  conductorSize,
  fact,
  finding,
  keysOf,
  name,
  note,
  oneOf,
  perhaps,
  perhapsCount,
  perhapsOneOf,
  statedIn,
} from "./fields.js";

/** One stretch of a route: where the cable lies, and how warm and how crowded it is there. */
export const stretchSchema = z.strictObject({
  place: oneOf(keysOf(places), "where it runs"),
  length: fact("m", "length one way", { above: 0, usual: [0.1, 5000] }),
  ambient: finding("°C", "temperature around it: of the air, or of the ground where it is buried", {
    from: -40,
    to: 100,
    usual: [-20, 90],
  }),
  grouped: perhapsCount("other circuits beside it"),
  referenceMethod: perhapsOneOf(keysOf(referenceMethods), "reference method of installation"),
  arrangement: perhapsOneOf(keysOf(arrangements), "how single cores, or cables beside each other, lie"),
  trayKind: perhapsOneOf(keysOf(trayKinds), "what carries it in free air"),
  trays: perhapsCount("trays or ladders above each other", 1),
  underCeiling: perhaps("whether it lies under a wooden ceiling"),
  clearance: perhapsOneOf(keysOf(clearances), "clear distance between circuits in the ground"),
  soilThermalResistivity: finding("K·m/W", "thermal resistivity of the soil", { above: 0, usual: [0.4, 4] }),
  sun: perhaps("whether the sun shines on it"),
  heightAboveRoof: finding("m", "clearance above the roof", { from: 0, usual: [0, 5] }),
  statedAmpacity: finding("A", "ampacity of this stretch as it is laid, from a maker or an authority", {
    above: 0,
    usual: [1, 5000],
  }),
});

const cableSchema = z.strictObject({
  kind: oneOf(keysOf(cableKinds), "PV cable, or cable with several cores or one"),
  conductor: perhapsOneOf(keysOf(conductorMetals), "conductor metal; copper for PV cable"),
  conductorClass: perhapsOneOf(keysOf(conductorClasses), "make-up of the conductor; class 5 for PV cable"),
  insulation: note("insulation: PVC or XLPE, or a type such as THWN-2 where the wiring rules are those of NFPA 70"),
  size: conductorSize("section of a line conductor"),
  parallel: perhapsCount("conductors in parallel, for each line", 1),
  neutral: perhapsOneOf(["none", "full", "reduced"], "neutral conductor"),
  protectiveConductor: conductorSize("section of the protective conductor"),
  type: note("type designation as printed on the sheath"),
});

const breakerSchema = z.strictObject({
  rating: choice("A", "rated current", { above: 0, usual: [1, 6300] }),
  kind: perhapsOneOf(
    keysOf(deviceKinds),
    "kind of device; a miniature breaker, or a breaker of NEC practice, where it is left out",
  ),
  characteristic: perhapsOneOf(
    keysOf(breakerCharacteristics),
    "instantaneous trip characteristic of a miniature breaker",
  ),
  breakingCapacity: finding("A", "rated breaking capacity", { above: 0, usual: [1000, 200_000] }),
  operatingCurrent: finding("A", "current that operates it in the disconnection time, from its maker", {
    above: 0,
    usual: [5, 100_000],
  }),
  ambientFactor: finding("1", "maker's factor on the rating for the temperature and for devices side by side", {
    above: 0,
    to: 1.2,
  }),
  neighboursLoaded: perhaps("whether loaded devices stand beside it"),
  marking: perhapsOneOf(
    ["not marked", "bidirectional", "line and load"],
    "how its terminals are marked, for feed from the load side",
  ),
  backUp: finding("A", "fault current up to which its maker declares back-up by the device upstream", {
    above: 0,
    usual: [1000, 200_000],
  }),
  letThrough: finding("A²s", "energy that it lets through of the largest fault current, by its maker", {
    above: 0,
    usual: [100, 1e8],
  }),
});

const rcdSchema = z.strictObject({
  type: perhapsOneOf(keysOf(rcdTypes), "type by the residual currents that it detects"),
  ratedResidualCurrent: finding("A", "rated residual operating current", { above: 0, usual: [0.01, 3] }),
  ratedCurrent: finding("A", "rated current", { above: 0, usual: [10, 1000] }),
  delayed: perhaps("whether it is time-delayed"),
  feed: perhapsOneOf(["bidirectional", "one way"], "whether its maker allows feed from either side"),
});

/** A way of the energy: from a roof to an inverter, from an inverter or board to a board. */
export const routeSchema = z.strictObject({
  from: name("roof, inverter or board at which it begins"),
  to: name("inverter or board at which it ends"),
  tracker: note("the tracker that it serves, where the routes of one roof differ"),
  cable: cableSchema,
  conductorLimit: finding("°C", "temperature that the conductor is held to, for the sake of plugs and terminals", {
    from: 40,
    to: 120,
  }),
  stretches: z.array(stretchSchema).check(z.minLength(1)),
  breaker: z.optional(breakerSchema),
  rcdAsked: perhaps("whether a local rule, the wiring system or the operator asks for a residual-current device"),
  rcd: z.optional(z.union([z.literal("none"), rcdSchema])),
  stringFuse: z.optional(
    z.union([
      z.literal("choose"),
      z.literal("none"),
      fact("A", "rated current of the string fuses", { above: 0, usual: [1, 60] }),
    ]),
  ),
  statedIn,
});
