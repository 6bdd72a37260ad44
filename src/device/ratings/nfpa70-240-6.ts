import { series } from "../../formula/index.js";

/**
 * Standard ampere ratings of fuses and inverse-time breakers, NEC 2017. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2017_240_6 } from "pv-to-grid/device";
 * nfpa70_2017_240_6.sizes()[0]?.text; // "15"
 * ```
 */
export const nfpa70_2017_240_6 = /* @__PURE__ */ series({
  id: "device/nfpa-70-2017-240-6",
  about: "standard ampere ratings of fuses and inverse-time breakers, NEC 2017",
  unit: "A",
  symbol: "I_n",
  sizes:
    "15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000",
  source: [{ in: "NFPA 70:2017", clause: "240.6(A), table 240.6(A)", grade: "copied" }],
});

/**
 * Standard ampere ratings of fuses, the additional ones included, NEC 2017. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2017_240_6_fuses } from "pv-to-grid/device";
 * nfpa70_2017_240_6_fuses.sizes()[0]?.text; // "1"
 * ```
 */
export const nfpa70_2017_240_6_fuses = /* @__PURE__ */ series({
  id: "device/nfpa-70-2017-240-6-fuses",
  about: "standard ampere ratings of fuses, the additional ones included, NEC 2017",
  unit: "A",
  symbol: "I_n",
  sizes:
    "1 3 6 10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 601 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000",
  source: [{ in: "NFPA 70:2017", clause: "240.6(A), table 240.6(A)", grade: "copied" }],
});

/**
 * Standard ampere ratings of fuses and inverse-time breakers, NEC 2020. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2020_240_6 } from "pv-to-grid/device";
 * nfpa70_2020_240_6.sizes()[0]?.text; // "15"
 * ```
 */
export const nfpa70_2020_240_6 = /* @__PURE__ */ series({
  id: "device/nfpa-70-2020-240-6",
  about: "standard ampere ratings of fuses and inverse-time breakers, NEC 2020",
  unit: "A",
  symbol: "I_n",
  sizes:
    "15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000",
  source: [{ in: "NFPA 70:2020", clause: "240.6(A), table 240.6(A)", grade: "copied" }],
});

/**
 * Standard ampere ratings of fuses, the additional ones included, NEC 2020. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2020_240_6_fuses } from "pv-to-grid/device";
 * nfpa70_2020_240_6_fuses.sizes()[0]?.text; // "1"
 * ```
 */
export const nfpa70_2020_240_6_fuses = /* @__PURE__ */ series({
  id: "device/nfpa-70-2020-240-6-fuses",
  about: "standard ampere ratings of fuses, the additional ones included, NEC 2020",
  unit: "A",
  symbol: "I_n",
  sizes:
    "1 3 6 10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 601 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000",
  source: [{ in: "NFPA 70:2020", clause: "240.6(A), table 240.6(A)", grade: "copied" }],
});

/**
 * Standard ampere ratings of fuses and inverse-time breakers, NEC 2023. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2023_240_6 } from "pv-to-grid/device";
 * nfpa70_2023_240_6.sizes()[0]?.text; // "10"
 * ```
 */
export const nfpa70_2023_240_6 = /* @__PURE__ */ series({
  id: "device/nfpa-70-2023-240-6",
  about: "standard ampere ratings of fuses and inverse-time breakers, NEC 2023",
  unit: "A",
  symbol: "I_n",
  sizes:
    "10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000",
  source: [{ in: "NFPA 70:2023", clause: "240.6(A), table 240.6(A)", grade: "copied" }],
});

/**
 * Standard ampere ratings of fuses, the additional ones included, NEC 2023. @function
 *
 * @example
 * ```ts
 * import { nfpa70_2023_240_6_fuses } from "pv-to-grid/device";
 * nfpa70_2023_240_6_fuses.sizes()[0]?.text; // "1"
 * ```
 */
export const nfpa70_2023_240_6_fuses = /* @__PURE__ */ series({
  id: "device/nfpa-70-2023-240-6-fuses",
  about: "standard ampere ratings of fuses, the additional ones included, NEC 2023",
  unit: "A",
  symbol: "I_n",
  sizes:
    "1 3 6 10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 601 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000",
  source: [{ in: "NFPA 70:2023", clause: "240.6(A), table 240.6(A)", grade: "copied" }],
});
