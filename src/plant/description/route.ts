import * as z from "zod/mini";
import { choice, conductorSize, fact, finding, name, note, oneOf, perhaps, perhapsCount, perhapsOneOf, statedIn } from "./fields.js";

/** One stretch of a route: where the cable lies, and how warm and how crowded it is there. */
export const stretchSchema = z.strictObject({
  place: oneOf(
    ["behind modules", "roof", "loft", "wall", "conduit", "trunking", "tray", "duct in ground", "in ground", "free air", "indoors", "outdoors"],
    "where it runs",
  ),
  length: fact("m", "length one way", { above: 0, usual: [0.1, 5000] }),
  ambient: finding("°C", "temperature around it", { from: -40, to: 100, usual: [-20, 90] }),
  grouped: perhapsCount("other circuits beside it"),
  referenceMethod: perhapsOneOf(["A1", "A2", "B1", "B2", "C", "D1", "D2", "E", "F", "G"], "reference method of installation"),
  arrangement: perhapsOneOf(["touching", "spaced", "trefoil", "flat", "vertical"], "how single cores or groups lie"),
  trayKind: perhapsOneOf(["unperforated", "perforated", "ladder"], "kind of tray"),
  soilThermalResistivity: finding("K·m/W", "thermal resistivity of the soil", { above: 0, usual: [0.4, 4] }),
  sun: perhaps("whether the sun shines on it"),
  heightAboveRoof: finding("m", "clearance above the roof", { from: 0, usual: [0, 5] }),
});

const cableSchema = z.strictObject({
  kind: oneOf(["PV", "multi-core", "single-core"], "PV cable, or cable with several cores or one"),
  conductor: perhapsOneOf(["copper", "aluminium"], "conductor metal; copper for PV cable"),
  insulation: perhapsOneOf(["PVC", "XLPE"], "insulation: PVC for 70 °C, XLPE or EPR for 90 °C"),
  size: conductorSize("section of a line conductor"),
  parallel: perhapsCount("conductors in parallel, for each line", 1),
  neutral: perhapsOneOf(["none", "full", "reduced"], "neutral conductor"),
  protectiveConductor: conductorSize("section of the protective conductor"),
  type: note("type designation as printed on the sheath"),
});

const breakerSchema = z.strictObject({
  rating: choice("A", "rated current", { above: 0, usual: [1, 6300] }),
  characteristic: perhapsOneOf(["B", "C", "D", "gG", "inverse time"], "trip characteristic"),
  breakingCapacity: finding("A", "rated breaking capacity", { above: 0, usual: [1000, 200_000] }),
  ambientFactor: finding("1", "maker's factor on the rating for the ambient", { above: 0, to: 1.2 }),
  groupingFactor: finding("1", "maker's factor on the rating for devices side by side", { above: 0, to: 1 }),
  bidirectional: perhaps("whether the maker allows feed from the load side"),
});

const rcdSchema = z.strictObject({
  type: perhapsOneOf(["AC", "A", "F", "B"], "type by the residual currents that it detects"),
  ratedResidualCurrent: finding("A", "rated residual operating current", { above: 0, usual: [0.01, 3] }),
  ratedCurrent: finding("A", "rated current", { above: 0, usual: [10, 1000] }),
  delayed: perhaps("whether it is time-delayed"),
});

/** A way of the energy: from a roof to an inverter, from an inverter or board to a board. */
export const routeSchema = z.strictObject({
  from: name("roof, inverter or board at which it begins"),
  to: name("inverter or board at which it ends"),
  tracker: note("the tracker that it serves, where the routes of one roof differ"),
  cable: cableSchema,
  conductorLimit: finding("°C", "temperature that the conductor is held to, for the sake of plugs and terminals", { from: 40, to: 120 }),
  stretches: z.array(stretchSchema).check(z.minLength(1)),
  breaker: z.optional(breakerSchema),
  rcd: z.optional(z.union([z.literal("none"), rcdSchema])),
  stringFuse: z.optional(z.union([z.literal("choose"), z.literal("none"), fact("A", "rated current of the string fuses", { above: 0, usual: [1, 60] })])),
  statedIn,
});
