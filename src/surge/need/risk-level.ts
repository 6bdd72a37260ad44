import { condition, formula, table } from "../../formula/index.js";

/**
 * Length of line that counts for the calculated risk level. @function
 *
 * @example
 * ```ts
 * import { riskAssessmentLengthOf } from "pv-to-grid/surge";
 * riskAssessmentLengthOf({ lowVoltageOverhead: "0.4 km", lowVoltageBuried: "0 km", highVoltageOverhead: "0.6 km", highVoltageBuried: "0 km" }).text; // "1.04"
 * ```
 */
export const riskAssessmentLengthOf = /* @__PURE__ */ formula({
  id: "surge/risk-assessment-length-of",
  about: "length of line that counts for the calculated risk level",
  takes: {
    lowVoltageOverhead: { unit: "km", symbol: "L_PAL", about: "length of the low-voltage overhead line", from: 0, to: 1 },
    lowVoltageBuried: { unit: "km", symbol: "L_PCL", about: "length of the low-voltage underground cable", from: 0, to: 1 },
    highVoltageOverhead: { unit: "km", symbol: "L_PAH", about: "length of the high-voltage overhead line", from: 0, to: 1 },
    highVoltageBuried: { unit: "km", symbol: "L_PCH", about: "length of the high-voltage underground cable", from: 0, to: 1 },
  },
  constants: {
    highOverheadWeight: {
      value: "0.4", unit: "1", symbol: "0.4", about: "weight of high-voltage overhead line",
      source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
    },
    highBuriedWeight: {
      value: "0.2", unit: "1", symbol: "0.2", about: "weight of high-voltage cable",
      source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
    },
    consideredLength: {
      value: "1", unit: "km", symbol: "1 km", about: "length of line that is considered at most",
      source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
    },
  },
  requires: [{ that: "lowVoltageOverhead + lowVoltageBuried + highVoltageOverhead + highVoltageBuried <= consideredLength", because: "only the first kilometre, or the line up to the first surge protective device, counts" }],
  gives: { unit: "km", symbol: "L_P" },
  expression: "2 * lowVoltageOverhead + lowVoltageBuried + highOverheadWeight * highVoltageOverhead + highBuriedWeight * highVoltageBuried",
  source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
  unproven: { because: "no publication found", sought: "risk assessment length worked in numbers; the annex of the standard is recalled only" },
});

/**
 * Factor of the surroundings with its national factor. @function
 *
 * @example
 * ```ts
 * import { environmentalFactorOf } from "pv-to-grid/surge";
 * environmentalFactorOf({ surroundingsFactor: "85", nationalFactor: "1" }).text; // "85"
 * ```
 */
export const environmentalFactorOf = /* @__PURE__ */ formula({
  id: "surge/environmental-factor-of",
  about: "factor of the surroundings with its national factor",
  takes: {
    surroundingsFactor: { unit: "1", symbol: "f", about: "factor of the surroundings", above: 0, to: 850 },
    nationalFactor: { unit: "1", symbol: "F", about: "national factor of the surroundings", from: 1, to: 3 },
  },
  gives: { unit: "1", symbol: "f_env" },
  expression: "surroundingsFactor * nationalFactor",
  source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
  unproven: { because: "composition only" },
});

/**
 * Factor of the surroundings for the calculated risk level. @function
 *
 * @example
 * ```ts
 * import { iec60364_4_44_2007_surroundings } from "pv-to-grid/surge";
 * iec60364_4_44_2007_surroundings({ surroundings: "urban" }).text; // "850"
 * ```
 */
export const iec60364_4_44_2007_surroundings = /* @__PURE__ */ table({
  id: "surge/iec-60364-4-44-2007-surroundings",
  about: "factor of the surroundings for the calculated risk level",
  rows: { name: "surroundings", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "f" },
  source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
  cells: `
    rural     85
    suburban  85
    urban     850
  `,
});

/**
 * Calculated risk level of surges at the origin of an installation. @function
 *
 * @example
 * ```ts
 * import { calculatedRiskLevel } from "pv-to-grid/surge";
 * calculatedRiskLevel({ environmentalFactor: "85", riskAssessmentLength: "1.04 km", lightningDensity: "1" }).show(); // "81.73"
 * ```
 */
export const calculatedRiskLevel = /* @__PURE__ */ formula({
  id: "surge/calculated-risk-level",
  about: "calculated risk level of surges at the origin of an installation",
  takes: {
    environmentalFactor: { unit: "1", symbol: "f_env", about: "factor of the surroundings, the national factor included", above: 0, to: 2550 },
    riskAssessmentLength: { unit: "km", symbol: "L_P", about: "length of line that counts for the risk", above: 0, to: 2 },
    lightningDensity: { unit: "1/(km²·a)", symbol: "N_g", about: "flashes to ground a square kilometre and year", above: 0, usual: [0.05, 50] },
  },
  constants: {
    oneKilometre: {
      value: "1", unit: "km", symbol: "1 km", about: "unit of the length",
      source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
    },
    oneFlash: {
      value: "1", unit: "1/(km²·a)", symbol: "1/(km²·a)", about: "unit of the flash density",
      source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
    },
  },
  gives: { unit: "1", symbol: "CRL" },
  expression: "environmentalFactor / (riskAssessmentLength / oneKilometre * (lightningDensity / oneFlash))",
  source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
  unproven: { because: "no publication found", sought: "calculated risk level worked in numbers; the annex of the standard is recalled only" },
});

/**
 * Is the calculated risk level so high that no surge protection is asked for? @function
 *
 * @example
 * ```ts
 * import { riskLevelHighEnough } from "pv-to-grid/surge";
 * riskLevelHighEnough({ value: "1634", limit: "1000" }).verdict; // "met"
 * ```
 */
export const riskLevelHighEnough = /* @__PURE__ */ condition({
  id: "surge/risk-level-high-enough",
  asks: "Is the calculated risk level so high that no surge protection is asked for?",
  force: "recommendation",
  value: { unit: "1", symbol: "CRL", about: "calculated risk level" },
  relation: "≥",
  limit: { unit: "1", symbol: "1000", about: "risk level from which none is asked for" },
  source: [{ in: "IEC 60364-4-44:2007", clause: "443.5", grade: "reproduced", seen: "NIE surge page:undated, sub-section 443.5" }],
  worse: { "site.lightningDensity": "up" },
  note: "answers whether a device is needed; it is not a fault of a plant that has one",
});

/**
 * Flash density estimated from the number of days with thunder. @function
 *
 * @example
 * ```ts
 * import { flashDensityFromThunderDays } from "pv-to-grid/surge";
 * flashDensityFromThunderDays({ thunderDays: "25" }).text; // "2.5"
 * ```
 */
export const flashDensityFromThunderDays = /* @__PURE__ */ formula({
  id: "surge/flash-density-from-thunder-days",
  about: "flash density estimated from the number of days with thunder",
  takes: {
    thunderDays: { unit: "1", symbol: "N_k", about: "days with thunder a year", above: 0, to: 366 },
  },
  constants: {
    flashesPerThunderDay: {
      value: "0.1", unit: "1/(km²·a)", symbol: "0.1", about: "flash density for each day with thunder",
      source: [
        { in: "UTE C15-712-1:undated", clause: "keraunic level", grade: "reproduced", seen: "GuidEnR surge page:undated, table of critical lengths" },
      ],
    },
  },
  gives: { unit: "1/(km²·a)", symbol: "N_g" },
  expression: "flashesPerThunderDay * thunderDays",
  source: [
    { in: "UTE C15-712-1:undated", clause: "keraunic level", grade: "reproduced", seen: "GuidEnR surge page:undated, table of critical lengths" },
  ],
  unproven: { because: "no publication found", sought: "flash density computed from a number of thunder days" },
});
