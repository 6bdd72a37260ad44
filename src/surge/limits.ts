import { table } from "../formula/index.js";

/**
 * Calculated risk level from which no surge protection is asked for. @function
 *
 * @example
 * ```ts
 * import { riskLevelLimit } from "pv-to-grid/surge";
 * riskLevelLimit({ rule: "none asked for from" }).text; // "1000"
 * ```
 */
export const riskLevelLimit = /* @__PURE__ */ table({
  id: "surge/risk-level-limit",
  about: "calculated risk level from which no surge protection is asked for",
  rows: { name: "rule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "CRL" },
  source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
  cells: `
    none asked for from  1000
  `,
});

/**
 * Length of the leads of a surge protective device, both together. @function
 *
 * @example
 * ```ts
 * import { leadLengthLimits } from "pv-to-grid/surge";
 * leadLengthLimits({ rule: "preferred" }).text; // "0.5"
 * ```
 */
export const leadLengthLimits = /* @__PURE__ */ table({
  id: "surge/lead-length-limits",
  about: "length of the leads of a surge protective device, both together",
  rows: { name: "rule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "m", symbol: "l" },
  source: [{ in: "Europa surge guide:undated", clause: "connection leads", grade: "original" }],
  cells: `
    at most    1
    preferred  0.5
  `,
});

/**
 * Length of cable between array and inverter that one device protects. @function
 *
 * @example
 * ```ts
 * import { deviceReach } from "pv-to-grid/surge";
 * deviceReach({ rule: "one device" }).text; // "10"
 * ```
 */
export const deviceReach = /* @__PURE__ */ table({
  id: "surge/device-reach",
  about: "length of cable between array and inverter that one device protects",
  rows: { name: "rule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "m", symbol: "L" },
  source: [{ in: "CHS Controls page:undated", clause: "second device", grade: "original" }],
  cells: `
    one device  10
  `,
});

/**
 * Least nominal discharge current of a surge protective device. @function
 *
 * @example
 * ```ts
 * import { dischargeMinimum } from "pv-to-grid/surge";
 * dischargeMinimum({ class: "II" }).text; // "5000"
 * ```
 */
export const dischargeMinimum = /* @__PURE__ */ table({
  id: "surge/discharge-minimum",
  about: "least nominal discharge current of a surge protective device",
  rows: { name: "class", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "A", symbol: "I_n" },
  source: [
    { in: "Finder surge guide:2012", clause: "p. 59", grade: "original" },
    { in: "IEC 60364-5-53:2019", clause: "534.4.4.4", grade: "memory" },
  ],
  cells: `
    II  5000
  `,
});

/**
 * Flash density up to which French practice asks for no a.c. surge protection. @function
 *
 * @example
 * ```ts
 * import { frenchFlashLimit } from "pv-to-grid/surge";
 * frenchFlashLimit({ rule: "none asked for up to" }).text; // "2.5"
 * ```
 */
export const frenchFlashLimit = /* @__PURE__ */ table({
  id: "surge/french-flash-limit",
  about: "flash density up to which French practice asks for no a.c. surge protection",
  rows: { name: "rule", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "1/(km²·a)", symbol: "N_g" },
  source: [
    { in: "UTE C15-712-1:undated", clause: "13.2.1", grade: "reproduced", seen: "GuidEnR course:2011, surge protection, last paragraph" },
  ],
  cells: `
    none asked for up to  2.5
  `,
});
