import { condition, formula, table } from "../../formula/index.js";

/**
 * Longest d.c. route without surge protection where one flash a square kilometre and year is met. @function
 *
 * @example
 * ```ts
 * import { utec15712_critical_length } from "pv-to-grid/surge";
 * utec15712_critical_length({ building: "ground-mounted plant" }).text; // "200"
 * ```
 */
export const utec15712_critical_length = /* @__PURE__ */ table({
  id: "surge/utec15712-critical-length",
  about: "longest d.c. route without surge protection where one flash a square kilometre and year is met",
  rows: { name: "building", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "m", symbol: "L_1" },
  source: [
    { in: "UTE C15-712-1:undated", clause: "d.c. surge protection", grade: "reproduced", seen: "GuidEnR surge page:undated, table of critical lengths" },
    { in: "IEC 60364-7-712:2017", clause: "712.443.5", grade: "memory" },
  ],
  differences: [
    { cell: "ground-mounted plant", ships: "200", others: "450", why: "a recollection exchanges ground-mounted plants and other buildings; the print of the French guide settles it" },
  ],
  note: "other buildings are service, industrial and agricultural ones; the least value holds where the kind is not known",
  cells: `
    dwelling              115
    ground-mounted plant  200
    other building        450
  `,
});

/**
 * Length of d.c. route from which surge protection is needed. @function
 *
 * @example
 * ```ts
 * import { criticalLength } from "pv-to-grid/surge";
 * criticalLength({ unitCriticalLength: "115 m", lightningDensity: "2" }).text; // "57.5"
 * ```
 */
export const criticalLength = /* @__PURE__ */ formula({
  id: "surge/critical-length",
  about: "length of d.c. route from which surge protection is needed",
  takes: {
    unitCriticalLength: { unit: "m", symbol: "L_1", about: "longest route for a flash density of one", above: 0, usual: [50, 500] },
    lightningDensity: { unit: "1/(km²·a)", symbol: "N_g", about: "flashes to ground a square kilometre and year", above: 0, usual: [0.05, 50] },
  },
  constants: {
    oneFlash: {
      value: "1", unit: "1/(km²·a)", symbol: "1/(km²·a)", about: "unit of the flash density",
      source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
    },
  },
  gives: { unit: "m", symbol: "L_crit" },
  expression: "unitCriticalLength / (lightningDensity / oneFlash)",
  source: [
    { in: "UTE C15-712-1:undated", clause: "d.c. surge protection", grade: "reproduced", seen: "GuidEnR surge page:undated, table of critical lengths" },
  ],
  unproven: { because: "no publication found", sought: "critical length worked with a flash density, UTE C 15-712-1 or IEC 60364-7-712" },
});

/**
 * Length of all different d.c. routes together. @function
 *
 * @example
 * ```ts
 * import { totalRouteLength } from "pv-to-grid/surge";
 * totalRouteLength({ routeLengths: ["20 m", "35 m"] }).text; // "55"
 * ```
 */
export const totalRouteLength = /* @__PURE__ */ formula({
  id: "surge/total-route-length",
  about: "length of all different d.c. routes together",
  takes: {
    routeLengths: { each: "m", symbol: "L_i", about: "length of each different d.c. route", from: 0 },
  },
  gives: { unit: "m", symbol: "L" },
  expression: "sum(routeLengths)",
  source: [
    { in: "UTE C15-712-1:undated", clause: "d.c. surge protection", grade: "reproduced", seen: "GuidEnR surge page:undated, table of critical lengths" },
  ],
  unproven: { because: "composition only" },
  note: "strings on the same route count once",
});

/**
 * Are the d.c. routes shorter than the length that asks for surge protection? @function
 *
 * @example
 * ```ts
 * import { routeShorterThanCritical } from "pv-to-grid/surge";
 * routeShorterThanCritical({ value: "57.5 m", limit: "57.5 m" }).verdict; // "not met"
 * ```
 */
export const routeShorterThanCritical = /* @__PURE__ */ condition({
  id: "surge/route-shorter-than-critical",
  asks: "Are the d.c. routes shorter than the length that asks for surge protection?",
  force: "recommendation",
  value: { unit: "m", symbol: "L", about: "length of the d.c. routes" },
  relation: "<",
  limit: { unit: "m", symbol: "L_crit", about: "critical length" },
  source: [
    { in: "UTE C15-712-1:undated", clause: "d.c. surge protection", grade: "reproduced", seen: "GuidEnR surge page:undated, table of critical lengths" },
  ],
  worse: { "routes[].stretches[].length": "up", "site.lightningDensity": "up" },
  note: "equality asks for a device; it is not a fault of a plant that has one",
});

/**
 * Is the flash density so low that French practice asks for no a.c. surge protection? @function
 *
 * @example
 * ```ts
 * import { flashDensityLow } from "pv-to-grid/surge";
 * flashDensityLow({ value: "1.8", limit: "2.5" }).verdict; // "met"
 * ```
 */
export const flashDensityLow = /* @__PURE__ */ condition({
  id: "surge/flash-density-low",
  asks: "Is the flash density so low that French practice asks for no a.c. surge protection?",
  force: "recommendation",
  value: { unit: "1/(km²·a)", symbol: "N_g", about: "flash density" },
  relation: "≤",
  limit: { unit: "1/(km²·a)", symbol: "N_g,max", about: "limit of French practice" },
  source: [
    { in: "UTE C15-712-1:undated", clause: "13.2.1", grade: "reproduced", seen: "GuidEnR course:2011, surge protection, last paragraph" },
  ],
  worse: { "site.lightningDensity": "up" },
});
