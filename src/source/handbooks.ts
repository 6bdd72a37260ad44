import type { Source } from "./source.js";

/** Handbooks, papers, catalogues and data sets. */
export const handbooks = {
  "common practice": { title: "Common practice of the trade, no publication", publisher: "none", year: null, kind: "practice" },
} as const satisfies Record<string, Source>;
