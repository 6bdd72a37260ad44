import type { Grade } from "../source/index.js";

interface Listed<K extends string> {
  readonly key: K;
  readonly label: string;
  readonly edition: string;
  readonly grade: Grade;
}

/** What an overvoltage could harm, which asks for protection whatever the risk level. */
export type Consequence = "human life" | "public services" | "commerce or industry" | "many people" | "none of these";

/** Consequences of an overvoltage that the library knows. */
export const consequences: readonly Listed<Consequence>[] = [
  {
    key: "human life",
    label: "Human life, such as safety services and medical equipment",
    edition: "IEC 60364-4-44:2007",
    grade: "memory",
  },
  {
    key: "public services",
    label: "Public services and cultural heritage",
    edition: "IEC 60364-4-44:2007",
    grade: "memory",
  },
  {
    key: "commerce or industry",
    label: "Commercial or industrial activity",
    edition: "IEC 60364-4-44:2007",
    grade: "memory",
  },
  { key: "many people", label: "Many people at one place", edition: "IEC 60364-4-44:2007", grade: "memory" },
  {
    key: "none of these",
    label: "None of these, such as single dwellings",
    edition: "IEC 60364-4-44:2007",
    grade: "memory",
  },
];

/** Surroundings of the supply for the calculated risk level. */
export type Surroundings = "rural" | "suburban" | "urban";

/** Kind of building for the critical length of d.c. routes. */
export type BuildingKind = "dwelling" | "ground-mounted plant" | "other building";

/** How the plant stands to an external lightning protection system. */
export type LightningSituation =
  "no lightning protection" | "separation distance kept" | "separation distance not kept";

/** Types of surge protective device by their test class. */
export type SurgeType = "type 1" | "type 2" | "type 1 and 2" | "type 3" | "none";

/** Types of surge protective device that the library knows. */
export const surgeTypes: readonly Listed<SurgeType>[] = [
  {
    key: "type 1",
    label: "Type 1, tested with partial lightning currents",
    edition: "IEC 60364-5-53:2019",
    grade: "memory",
  },
  { key: "type 2", label: "Type 2, tested with induced surges", edition: "IEC 60364-5-53:2019", grade: "memory" },
  { key: "type 1 and 2", label: "Type 1 and 2 in one device", edition: "IEC 60364-5-53:2019", grade: "memory" },
  { key: "type 3", label: "Type 3, near the equipment, never alone", edition: "IEC 60364-5-53:2019", grade: "memory" },
  { key: "none", label: "No device", edition: "IEC 60364-5-53:2019", grade: "memory" },
];
