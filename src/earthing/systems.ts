import type { Grade } from "../source/index.js";

/** Kind of earthing of a supply. */
export type EarthingSystem = "TN-S" | "TN-C-S" | "TN-C" | "TT" | "IT";

/** Kinds of earthing that the library knows. */
export const earthingSystems: readonly {
  readonly key: EarthingSystem;
  readonly label: string;
  readonly edition: string;
  readonly grade: Grade;
}[] = [
  {
    key: "TN-S",
    label: "TN-S: protective conductor apart from the neutral",
    edition: "IEC 60364-1:2005",
    grade: "memory",
  },
  { key: "TN-C-S", label: "TN-C-S: combined conductor up to the origin", edition: "IEC 60364-1:2005", grade: "memory" },
  { key: "TN-C", label: "TN-C: combined conductor throughout", edition: "IEC 60364-1:2005", grade: "memory" },
  { key: "TT", label: "TT: own earth electrode", edition: "IEC 60364-1:2005", grade: "memory" },
  { key: "IT", label: "IT: source isolated from earth", edition: "IEC 60364-1:2005", grade: "memory" },
];
