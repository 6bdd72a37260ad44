import type { Input } from "../quantity/index.js";
import type { Listed } from "./wiring.js";

/** How a cable is built. */
export const cableKinds = [
  { key: "PV", label: "photovoltaic cable, tinned flexible copper", edition: "EN 50618:2014", grade: "reproduced" },
  {
    key: "single-core",
    label: "single-core cable or insulated conductor",
    edition: "IEC 60364-5-52:2009",
    grade: "copied",
  },
  { key: "multi-core", label: "multi-core cable", edition: "IEC 60364-5-52:2009", grade: "copied" },
] as const satisfies readonly Listed[];
/** A kind of cable. */
export type CableKind = (typeof cableKinds)[number]["key"];

/** What the conductor is made of. */
export const conductorMetals = [
  { key: "copper", label: "copper", edition: "IEC 60228:2004", grade: "reproduced" },
  { key: "aluminium", label: "aluminium", edition: "IEC 60228:2004", grade: "reproduced" },
] as const satisfies readonly Listed[];
/** A metal of conductors. */
export type ConductorMetal = (typeof conductorMetals)[number]["key"];

/** What the conductor is insulated with, in the words of IEC 60364-5-52. */
export const insulations = [
  { key: "PVC", label: "thermoplastic (PVC), conductor at 70 °C", edition: "IEC 60364-5-52:2009", grade: "reproduced" },
  {
    key: "XLPE",
    label: "thermosetting (XLPE or EPR), conductor at 90 °C",
    edition: "IEC 60364-5-52:2009",
    grade: "reproduced",
  },
] as const satisfies readonly Listed[];
/** An insulation of cables. */
export type Insulation = (typeof insulations)[number]["key"];

/** How the conductor is made up, after IEC 60228. */
export const conductorClasses = [
  { key: "class 1", label: "solid", edition: "IEC 60228:2004", grade: "reproduced" },
  { key: "class 2", label: "stranded", edition: "IEC 60228:2004", grade: "reproduced" },
  { key: "class 5", label: "flexible", edition: "IEC 60228:2004", grade: "reproduced" },
] as const satisfies readonly Listed[];
/** A class of conductor: solid, stranded or flexible. */
export type ConductorClass = (typeof conductorClasses)[number]["key"];

/** A cable without its size. */
export interface Cable {
  readonly kind: CableKind;
  /** Left out for photovoltaic cable, which is copper. */
  readonly conductor?: ConductorMetal;
  /** Left out for photovoltaic cable; a type of insulation where the rules are those of NFPA 70. */
  readonly insulation?: string;
  /** Class 2 where it is left out; photovoltaic cable is class 5. */
  readonly conductorClass?: ConductorClass;
  readonly armoured?: boolean;
  /** Equal conductors in parallel for each line; one where it is left out. */
  readonly parallel?: Input<"ratio">;
}
