import * as z from "zod/mini";
import { oneOf } from "./fields.js";

/** Wiring rules, each in its edition. */
export const wiringRules = [
  "IEC 60364:2009-2017",
  "BS 7671:2018",
  "AS/NZS 3000:2018",
  "NFPA 70:2017",
  "NFPA 70:2020",
  "NFPA 70:2023",
] as const;

/** Rules for photovoltaic arrays, each in its edition. */
export const pvRules = [
  "IEC 62548-1:2023",
  "IEC 60364-7-712:2017",
  "AS/NZS 5033:2021",
  "NFPA 70:2017",
  "NFPA 70:2020",
  "NFPA 70:2023",
] as const;

/** Nominal supplies. */
export const supplyRules = [
  "230/400 V 50 Hz",
  "120/240 V 60 Hz split-phase",
  "208Y/120 V 60 Hz",
  "480Y/277 V 60 Hz",
] as const;

/** Identity of the wiring rules that a plant follows. */
export type WiringRules = (typeof wiringRules)[number];
/** Identity of the array rules that a plant follows. */
export type PvRules = (typeof pvRules)[number];
/** Identity of the nominal supply. */
export type SupplyRules = (typeof supplyRules)[number];

/** The rules that one plant follows. */
export interface Rules {
  readonly wiring: WiringRules;
  readonly pv: PvRules;
  readonly grid: string;
  readonly supply: SupplyRules;
}

/** Named presets of the four rule sets. */
export const practices = {
  IEC: { wiring: "IEC 60364:2009-2017", pv: "IEC 62548-1:2023", grid: "EN 50549-1:2019", supply: "230/400 V 50 Hz" },
  Germany: {
    wiring: "IEC 60364:2009-2017",
    pv: "IEC 60364-7-712:2017",
    grid: "VDE-AR-N 4105:2018",
    supply: "230/400 V 50 Hz",
  },
  "NEC 2023 dwelling": {
    wiring: "NFPA 70:2023",
    pv: "NFPA 70:2023",
    grid: "IEEE 1547:2018 category B II",
    supply: "120/240 V 60 Hz split-phase",
  },
  "NEC 2023 commercial": {
    wiring: "NFPA 70:2023",
    pv: "NFPA 70:2023",
    grid: "IEEE 1547:2018 category B II",
    supply: "208Y/120 V 60 Hz",
  },
} as const satisfies Record<string, Rules>;

export const rulesSchema = z.strictObject({
  wiring: oneOf(wiringRules, "wiring rules with their edition"),
  pv: oneOf(pvRules, "array rules with their edition"),
  grid: z.string().check(z.minLength(1), z.meta({ description: "connection rules with their edition", role: "fact" })),
  supply: oneOf(supplyRules, "nominal supply"),
});

const practiceNames = Object.keys(practices) as [keyof typeof practices, ...(keyof typeof practices)[]];

export const practiceSchema = oneOf(practiceNames, "a preset of the four rule sets, in their place");
