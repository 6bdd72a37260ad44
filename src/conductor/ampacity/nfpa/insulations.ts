import type { Listed } from "../../wiring.js";

/** Types of insulation of NFPA 70, with the column of table 310.16 that they may use in wet places. */
export const nfpaInsulations = [
  { key: "TW", label: "TW, 60 °C", rating: "60 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "THW", label: "THW, 75 °C", rating: "75 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "THWN", label: "THWN, 75 °C", rating: "75 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "XHHW", label: "XHHW, 75 °C where wet", rating: "75 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "USE", label: "USE, 75 °C", rating: "75 °C", edition: "NFPA 70:2023", grade: "copied" },
  {
    key: "THHN",
    label: "THHN, 90 °C, dry and damp places only",
    rating: "90 °C",
    edition: "NFPA 70:2023",
    grade: "copied",
  },
  { key: "THWN-2", label: "THWN-2, 90 °C", rating: "90 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "XHHW-2", label: "XHHW-2, 90 °C", rating: "90 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "USE-2", label: "USE-2, 90 °C", rating: "90 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "RHW-2", label: "RHW-2, 90 °C", rating: "90 °C", edition: "NFPA 70:2023", grade: "copied" },
  { key: "PV wire", label: "photovoltaic wire, 90 °C", rating: "90 °C", edition: "NFPA 70:2023", grade: "copied" },
  {
    key: "PV wire 105 °C",
    label: "photovoltaic wire, 105 °C",
    rating: "105 °C",
    edition: "NFPA 70:2020",
    grade: "copied",
  },
  {
    key: "PV wire 125 °C",
    label: "photovoltaic wire, 125 °C",
    rating: "125 °C",
    edition: "NFPA 70:2020",
    grade: "copied",
  },
] as const satisfies readonly (Listed & { readonly rating: string })[];

/** One type of insulation of NFPA 70. */
export type NfpaInsulation = (typeof nfpaInsulations)[number];
