import type { Grade, SourceKey } from "../../source/index.js";

/** One way of mounting modules. */
export interface Mounting {
  readonly key: "open rack" | "close roof mount" | "insulated back";
  readonly label: string;
  readonly edition: SourceKey;
  readonly grade: Grade;
}

/** The mountings for which a cell temperature is known. */
export const mountings: readonly Mounting[] = [
  {
    key: "open rack",
    label: "Open rack, pole or field, air on both sides",
    edition: "PVPMC temperature models:undated",
    grade: "original",
  },
  {
    key: "close roof mount",
    label: "Close and parallel to a roof",
    edition: "PVPMC temperature models:undated",
    grade: "original",
  },
  {
    key: "insulated back",
    label: "Insulated back, as in a roof or wall skin",
    edition: "PVPMC temperature models:undated",
    grade: "original",
  },
];
