import type { Source } from "./source.js";

/** NFPA 70, IEEE and the publications of North American practice. */
export const northAmerica = {
  "NFPA 70:2017": { title: "National Electrical Code", publisher: "NFPA", year: 2017, kind: "standard" },
  "NFPA 70:2020": { title: "National Electrical Code", publisher: "NFPA", year: 2020, kind: "standard" },
  "NFPA 70:2023": { title: "National Electrical Code", publisher: "NFPA", year: 2023, kind: "standard" },
} as const satisfies Record<string, Source>;
