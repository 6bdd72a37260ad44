import type { Known } from "../formula/index.js";
import type { Input } from "../quantity/index.js";
import type { Listed } from "./wiring.js";

/** Where a stretch of cable runs. */
export const places = [
  { key: "behind modules", label: "behind the modules", edition: "none", grade: "common-practice" },
  { key: "roof", label: "on a roof", edition: "none", grade: "common-practice" },
  { key: "loft", label: "in a loft", edition: "none", grade: "common-practice" },
  { key: "wall", label: "on a wall", edition: "none", grade: "common-practice" },
  { key: "conduit", label: "in a conduit", edition: "none", grade: "common-practice" },
  { key: "trunking", label: "in trunking", edition: "none", grade: "common-practice" },
  { key: "tray", label: "on a tray or ladder", edition: "none", grade: "common-practice" },
  { key: "duct in ground", label: "in a duct in the ground", edition: "none", grade: "common-practice" },
  { key: "in ground", label: "directly in the ground", edition: "none", grade: "common-practice" },
  { key: "free air", label: "in free air", edition: "none", grade: "common-practice" },
  { key: "indoors", label: "indoors", edition: "none", grade: "common-practice" },
  { key: "outdoors", label: "outdoors", edition: "none", grade: "common-practice" },
] as const satisfies readonly Listed[];
/** A place through which a cable runs. */
export type Place = (typeof places)[number]["key"];

/** Reference methods of installation of IEC 60364-5-52. */
export const referenceMethods = [
  {
    key: "A1",
    label: "single cores in conduit in a thermally insulating wall",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  {
    key: "A2",
    label: "multi-core cable in conduit in a thermally insulating wall",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  {
    key: "B1",
    label: "single cores in conduit or trunking on a wall",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  {
    key: "B2",
    label: "multi-core cable in conduit or trunking on a wall",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  {
    key: "C",
    label: "cable fixed to a wall or on an unperforated tray",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  { key: "D1", label: "cable in a duct in the ground", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "D2", label: "sheathed cable directly in the ground", edition: "IEC 60364-5-52:2009", grade: "memory" },
  {
    key: "E",
    label: "multi-core cable in free air, on a perforated tray or a ladder",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  { key: "F", label: "single-core cables touching in free air", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "G", label: "single-core cables spaced in free air", edition: "IEC 60364-5-52:2009", grade: "copied" },
] as const satisfies readonly Listed[];
/** A reference method of installation. */
export type ReferenceMethod = (typeof referenceMethods)[number]["key"];

/** How single cores, or cables beside each other, lie. */
export const arrangements = [
  { key: "touching", label: "in one layer, touching", edition: "IEC 60364-5-52:2009", grade: "copied" },
  {
    key: "spaced",
    label: "in one layer, at least one diameter apart",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  { key: "trefoil", label: "three single cores in trefoil", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "flat", label: "three single cores side by side", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "vertical", label: "single cores above each other", edition: "IEC 60364-5-52:2009", grade: "copied" },
] as const satisfies readonly Listed[];
/** How circuits lie beside each other. */
export type Arrangement = (typeof arrangements)[number]["key"];

/** What carries cables in free air. */
export const trayKinds = [
  { key: "unperforated", label: "unperforated tray", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "perforated", label: "perforated tray", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "ladder", label: "ladder, cleats or brackets", edition: "IEC 60364-5-52:2009", grade: "copied" },
] as const satisfies readonly Listed[];
/** A kind of tray or ladder. */
export type TrayKind = (typeof trayKinds)[number]["key"];

/** Clear distance between circuits in the ground. */
export const clearances = [
  { key: "touching", label: "touching", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "one diameter", label: "one cable diameter", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "0.125 m", label: "0.125 m", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "0.25 m", label: "0.25 m", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "0.5 m", label: "0.5 m", edition: "IEC 60364-5-52:2009", grade: "copied" },
  { key: "1.0 m", label: "1.0 m", edition: "IEC 60364-5-52:2009", grade: "copied" },
] as const satisfies readonly Listed[];
/** How far cables in the ground lie from each other. */
export type Clearance = (typeof clearances)[number]["key"];

/** Loaded conductors of a circuit: two for direct current and a single phase, three for three phases. */
export type Loaded = 2 | 3 | "2" | "3";

/** One stretch of a route, as the plant describes it. */
export interface Stretch {
  readonly place: Place;
  /** One way along the route. */
  readonly length: Input<"length">;
  /** Of the air around it, or of the ground where the method is D1 or D2. */
  readonly ambient: Known<Input<"temperature">>;
  /** Other circuits beside it. */
  readonly grouped: Known<Input<"ratio">>;
  /** NFPA 70: current-carrying conductors together with its own, where they are known better than by circuits. */
  readonly currentCarryingConductors?: Known<Input<"ratio">>;
  /** In the sun; the ambient must then hold what the sun adds. */
  readonly sun?: boolean;
  readonly referenceMethod?: ReferenceMethod;
  readonly arrangement?: Arrangement;
  readonly trayKind?: TrayKind;
  /** Trays or ladders above each other; one where it is left out. */
  readonly trays?: number;
  /** The group is of cables that span more than three adjacent sections. */
  readonly unequalSizes?: boolean;
  /** Under a wooden ceiling. */
  readonly underCeiling?: boolean;
  readonly clearance?: Clearance;
  readonly soilThermalResistivity?: Known<Input<"thermalResistivity">>;
  /** Clearance of a raceway or cable above the roof. */
  readonly heightAboveRoof?: Known<Input<"length">>;
  /** What the conductor is held to, for the sake of plugs and terminals. */
  readonly conductorLimit?: Known<Input<"temperature">>;
  /** Third harmonic in the line current of a cable whose neutral is loaded. */
  readonly thirdHarmonicShare?: Input<"ratio">;
  /** Capacity of this stretch as it is laid, from a maker or an authority; then nothing is looked up. */
  readonly statedAmpacity?: Input<"current">;
}
