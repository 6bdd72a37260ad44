/** The editions of NFPA 70 whose interconnection rules are held. */
export const interconnectionEditions = [
  { key: "NFPA 70:2017", label: "National Electrical Code, edition 2017", edition: "NFPA 70:2017", grade: "copied" },
  {
    key: "NFPA 70:2020",
    label: "National Electrical Code, edition 2020",
    edition: "NFPA 70:2020",
    grade: "reproduced",
  },
  {
    key: "NFPA 70:2023",
    label: "National Electrical Code, edition 2023",
    edition: "NFPA 70:2023",
    grade: "reproduced",
  },
] as const;

/** An edition of NFPA 70 whose interconnection rules are held. */
export type InterconnectionEdition = (typeof interconnectionEditions)[number]["key"];

/** The ways in which a busbar may take a source, and where each edition states them; `null` where it has no such rule. */
export const busbarWays = [
  {
    key: "sum",
    label: "125 % of the sources and the main device within the busbar",
    "NFPA 70:2017": "705.12(B)(2)(3)(a)",
    "NFPA 70:2020": "705.12(B)(3)(1)",
    "NFPA 70:2023": "705.12(B)(1)",
  },
  {
    key: "opposite ends",
    label: "within 120 % of the busbar, supply and source at opposite ends",
    "NFPA 70:2017": "705.12(B)(2)(3)(b)",
    "NFPA 70:2020": "705.12(B)(3)(2)",
    "NFPA 70:2023": "705.12(B)(2)",
  },
  {
    key: "devices",
    label: "all devices but the main one within the busbar",
    "NFPA 70:2017": "705.12(B)(2)(3)(c)",
    "NFPA 70:2020": "705.12(B)(3)(3)",
    "NFPA 70:2023": "705.12(B)(3)",
  },
  {
    key: "centre-fed",
    label: "within 120 % of a centre-fed busbar of a dwelling, source at one end",
    "NFPA 70:2017": "705.12(B)(2)(3)(d)",
    "NFPA 70:2020": "705.12(B)(3)(4)",
    "NFPA 70:2023": "705.12(B)(4)",
  },
  {
    key: "power control",
    label: "power control system keeps the busbar within its ampacity",
    "NFPA 70:2017": null,
    "NFPA 70:2020": "705.13",
    "NFPA 70:2023": "705.13",
  },
  {
    key: "engineered",
    label: "several supplies worked out under engineering supervision",
    "NFPA 70:2017": "705.12(B)(2)(3)(e)",
    "NFPA 70:2020": "705.12(B)(3)(6)",
    "NFPA 70:2023": "705.12(B)(6)",
  },
] as const;

/** A way in which a busbar may take a source. */
export type BusbarWay = (typeof busbarWays)[number]["key"];

/** Places where a source may be connected to a busbar. */
export const sourcePlaces = [
  "opposite end from the supply",
  "one end of a centre-fed busbar in a dwelling",
  "elsewhere",
] as const;

/** Place where a source is connected to a busbar. */
export type SourcePlace = (typeof sourcePlaces)[number];
