import type { Source } from "./source.js";

/** Courses, magazines, agencies and trade pages that print worked examples. */
export const courses = {
  "GSES handout:2011": { title: "Calculating the PV module voltage for a particular temperature (training handout)", publisher: "Global Sustainable Energy Solutions", year: 2011, kind: "course" },
} as const satisfies Record<string, Source>;
