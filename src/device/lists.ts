import type { Grade } from "../source/index.js";

/** One entry of a closed list: the key that a description uses, words for a reader, where it is from and how that is held. */
export interface Listed<K extends string> {
  readonly key: K;
  readonly label: string;
  readonly edition: string;
  readonly grade: Grade;
}

/** Kinds of overcurrent protective device. */
export type DeviceKind =
  "miniature breaker" | "moulded-case breaker" | "gG fuse" | "gPV fuse" | "NEC breaker" | "NEC fuse";

/** Kinds of overcurrent protective device that the library knows. */
export const deviceKinds: readonly Listed<DeviceKind>[] = [
  { key: "miniature breaker", label: "Miniature circuit-breaker", edition: "IEC 60898-1:2015", grade: "memory" },
  { key: "moulded-case breaker", label: "Moulded-case circuit-breaker", edition: "IEC 60947-2:2016", grade: "memory" },
  { key: "gG fuse", label: "Fuse-link of class gG", edition: "IEC 60269-1:2006", grade: "memory" },
  { key: "gPV fuse", label: "Fuse-link of class gPV", edition: "IEC 60269-6:2010", grade: "memory" },
  { key: "NEC breaker", label: "Inverse-time circuit breaker", edition: "NFPA 70", grade: "copied" },
  { key: "NEC fuse", label: "Fuse of NEC practice", edition: "NFPA 70", grade: "copied" },
];

/** Instantaneous characteristics of miniature circuit-breakers. */
export type BreakerCharacteristic = "B" | "C" | "D";

/** Instantaneous characteristics of miniature circuit-breakers that the library knows. */
export const breakerCharacteristics: readonly Listed<BreakerCharacteristic>[] = [
  {
    key: "B",
    label: "Type B, trips at 3 to 5 times the rated current",
    edition: "IEC 60898-1:2015",
    grade: "reproduced",
  },
  {
    key: "C",
    label: "Type C, trips at 5 to 10 times the rated current",
    edition: "IEC 60898-1:2015",
    grade: "reproduced",
  },
  {
    key: "D",
    label: "Type D, trips at 10 to 20 times the rated current",
    edition: "IEC 60898-1:2015",
    grade: "reproduced",
  },
];

/** Types of residual current device by the shape of the residual current that they detect. */
export type RcdType = "AC" | "A" | "F" | "B" | "B+";

/** Types of residual current device, from the narrowest to the widest detection. */
export const rcdTypes: readonly Listed<RcdType>[] = [
  { key: "AC", label: "Type AC: sinusoidal alternating current", edition: "IEC 61008-1:2010", grade: "memory" },
  { key: "A", label: "Type A: also pulsating direct current", edition: "IEC 61008-1:2010", grade: "memory" },
  { key: "F", label: "Type F: also composite currents", edition: "IEC 62423:2009", grade: "memory" },
  { key: "B", label: "Type B: also smooth direct current", edition: "IEC 62423:2009", grade: "memory" },
  {
    key: "B+",
    label: "Type B+: type B with a wider band of frequencies",
    edition: "common practice",
    grade: "common-practice",
  },
];

/** Utilisation categories of d.c. switches. */
export type SwitchCategory = "DC-PV0" | "DC-PV1" | "DC-PV2" | "DC-21A" | "DC-21B" | "DC-22A" | "DC-22B";

/** Utilisation categories of d.c. switches that the library knows. */
export const switchCategories: readonly Listed<SwitchCategory>[] = [
  { key: "DC-PV0", label: "DC-PV0: opened and closed without current", edition: "IEC 60947-3:2020", grade: "memory" },
  {
    key: "DC-PV1",
    label: "DC-PV1: one array, no reverse current of others",
    edition: "IEC 60947-3:2020",
    grade: "memory",
  },
  {
    key: "DC-PV2",
    label: "DC-PV2: also reverse current of parallel arrays",
    edition: "IEC 60947-3:2020",
    grade: "memory",
  },
  { key: "DC-21A", label: "DC-21A: resistive loads, frequent operation", edition: "IEC 60947-3:2020", grade: "memory" },
  {
    key: "DC-21B",
    label: "DC-21B: resistive loads, infrequent operation",
    edition: "IEC 60947-3:2020",
    grade: "memory",
  },
  { key: "DC-22A", label: "DC-22A: mixed loads, frequent operation", edition: "IEC 60947-3:2020", grade: "memory" },
  { key: "DC-22B", label: "DC-22B: mixed loads, infrequent operation", edition: "IEC 60947-3:2020", grade: "memory" },
];
