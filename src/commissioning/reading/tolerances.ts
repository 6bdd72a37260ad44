import { formula } from "../../formula/index.js";

/**
 * Share by which an open-circuit voltage may differ from what the datasheet expects, by the practice of contracts. @function
 *
 * @example
 * ```ts
 * import { voltageTolerance } from "pv-to-grid/commissioning";
 * voltageTolerance({}).in("%").text; // "5"
 * ```
 */
export const voltageTolerance = /* @__PURE__ */ formula({
  id: "commissioning/voltage-tolerance",
  about: "share by which an open-circuit voltage may differ from what the datasheet expects, by the practice of contracts",
  takes: {},
  constants: {
    contractShare: { value: "0.05", unit: "1", symbol: "τ_U", about: "tolerance of the open-circuit voltage", source: [{ in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }] },
  },
  gives: { unit: "1", symbol: "τ" },
  expression: "contractShare",
  source: [{ in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }],
  unproven: { because: "definition" },
  note: "contract practice, not the standard: IEC 62446 compares identical strings with each other",
});

/**
 * Share by which measured currents, operating voltages and powers may differ from what the datasheet expects. @function
 *
 * @example
 * ```ts
 * import { operatingTolerance } from "pv-to-grid/commissioning";
 * operatingTolerance({}).in("%").text; // "5"
 * ```
 */
export const operatingTolerance = /* @__PURE__ */ formula({
  id: "commissioning/operating-tolerance",
  about: "share by which measured currents, operating voltages and powers may differ from what the datasheet expects",
  takes: {},
  constants: {
    operatingShare: { value: "0.05", unit: "1", symbol: "τ_I", about: "tolerance of currents and operating values", source: [{ in: "common practice", clause: "band for currents and operating values at the measured irradiance", grade: "common-practice" }] },
  },
  gives: { unit: "1", symbol: "τ" },
  expression: "operatingShare",
  source: [{ in: "common practice", clause: "band for currents and operating values at the measured irradiance", grade: "common-practice" }],
  unproven: { because: "definition" },
  note: "an irradiance meter may itself be wrong by as much",
});

/**
 * Share by which identical strings may differ from each other. @function
 *
 * @example
 * ```ts
 * import { stringsTolerance } from "pv-to-grid/commissioning";
 * stringsTolerance({}).in("%").text; // "5"
 * ```
 */
export const stringsTolerance = /* @__PURE__ */ formula({
  id: "commissioning/strings-tolerance",
  about: "share by which identical strings may differ from each other",
  takes: {},
  constants: {
    stringsShare: { value: "0.05", unit: "1", symbol: "τ_S", about: "tolerance between identical strings", source: [{ in: "IEC 62446:2009", clause: "5.4.4", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.4" }] },
  },
  gives: { unit: "1", symbol: "τ" },
  expression: "stringsShare",
  source: [{ in: "IEC 62446:2009", clause: "5.4.4", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.4" }, { in: "IEC 62446-1:2016", clause: "open-circuit voltage and string current tests", grade: "memory" }],
  unproven: { because: "definition" },
  note: "under steady light",
});

/**
 * Share by which the operating current of a string may differ from the average of all, by the practice of contracts. @function
 *
 * @example
 * ```ts
 * import { averageTolerance } from "pv-to-grid/commissioning";
 * averageTolerance({}).in("%").text; // "5"
 * ```
 */
export const averageTolerance = /* @__PURE__ */ formula({
  id: "commissioning/average-tolerance",
  about: "share by which the operating current of a string may differ from the average of all, by the practice of contracts",
  takes: {},
  constants: {
    averageShare: { value: "0.05", unit: "1", symbol: "τ_A", about: "tolerance about the average current", source: [{ in: "D.c. amperage clause:undated", clause: "acceptance", grade: "copied" }] },
  },
  gives: { unit: "1", symbol: "τ" },
  expression: "averageShare",
  source: [{ in: "D.c. amperage clause:undated", clause: "acceptance", grade: "copied" }],
  unproven: { because: "definition" },
  note: "currents are first corrected to one irradiance and temperature",
});
