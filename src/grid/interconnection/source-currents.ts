import { formula } from "../../formula/index.js";

/**
 * Current of the power sources with the allowance for continuous duty.
 *
 * @function
 * @example
 * ```ts
 * import { sourceCurrentForSizing } from "pv-to-grid/grid";
 * sourceCurrentForSizing({ sourceCurrents: ["16 A", "8 A"] }).text; // "30"
 * ```
 */
export const sourceCurrentForSizing = /* @__PURE__ */ formula({
  id: "grid/source-current-for-sizing",
  about: "current of the power sources with the allowance for continuous duty",
  takes: { sourceCurrents: { each: "A", symbol: "I_src", about: "continuous output current of each source", from: 0, usual: [0, 10000] } },
  constants: {
    powerSourceFactor: {
      value: "1.25", unit: "1", symbol: "125 %", about: "allowance for continuous duty of power sources",
      source: [
        { in: "NFPA 70:2020", clause: "705.12(B)(3)(1)", grade: "reproduced", seen: "Electrical License Renewal 2020:2020, section 972" },
        { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(a)", grade: "copied", seen: "NEC 2017 transcription:undated" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_125" },
  expression: "powerSourceFactor * sum(sourceCurrents)",
  source: [
    { in: "NFPA 70:2020", clause: "705.12(B)(3)(1)", grade: "reproduced", seen: "Electrical License Renewal 2020:2020, section 972" },
    { in: "NFPA 70:2017", clause: "705.60(B)", grade: "copied", seen: "NEC 2017 transcription:undated" },
  ],
  note: "also the least ampacity of an inverter output circuit and the least rating of its device",
});

/**
 * Continuous output current of all power sources.
 *
 * @function
 * @example
 * ```ts
 * import { sourceCurrentSum } from "pv-to-grid/grid";
 * sourceCurrentSum({ sourceCurrents: ["16 A", "24 A"] }).text; // "40"
 * ```
 */
export const sourceCurrentSum = /* @__PURE__ */ formula({
  id: "grid/source-current-sum",
  about: "continuous output current of all power sources",
  takes: { sourceCurrents: { each: "A", symbol: "I_src", about: "continuous output current of each source", from: 0, usual: [0, 10000] } },
  gives: { unit: "A", symbol: "I_Σ" },
  expression: "sum(sourceCurrents)",
  source: [{ in: "NFPA 70:2020", clause: "705.11(A)", grade: "memory" }],
  unproven: { because: "composition only" },
});

/**
 * Sum of the ratings of overcurrent devices.
 *
 * @function
 * @example
 * ```ts
 * import { deviceSum } from "pv-to-grid/grid";
 * deviceSum({ deviceRatings: ["20 A", "30 A", "50 A"] }).text; // "100"
 * ```
 */
export const deviceSum = /* @__PURE__ */ formula({
  id: "grid/device-sum",
  about: "sum of the ratings of overcurrent devices",
  takes: { deviceRatings: { each: "A", symbol: "I_n,i", about: "rating of each device", from: 0, usual: [0, 10000] } },
  gives: { unit: "A", symbol: "I_dev" },
  expression: "sum(deviceRatings)",
  source: [{ in: "NFPA 70:2017", clause: "705.12(A) and 705.12(B)(2)(3)(c)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
  unproven: { because: "no publication found", sought: "busbar with the devices of loads and sources in an edited publication; a mailing list agrees" },
});

/**
 * Current that a power control system lets through, with the monitored current of other supplies.
 *
 * @function
 * @example
 * ```ts
 * import { controlledCurrentSum } from "pv-to-grid/grid";
 * controlledCurrentSum({ controlledCurrent: "40 A", mainDevice: "175 A" }).text; // "215"
 * ```
 */
export const controlledCurrentSum = /* @__PURE__ */ formula({
  id: "grid/controlled-current-sum",
  about: "current that a power control system lets through, with the monitored current of other supplies",
  takes: {
    controlledCurrent: { unit: "A", symbol: "I_pcs", about: "setting of the power control system", from: 0, usual: [0, 10000] },
    mainDevice: { unit: "A", symbol: "I_main", about: "rating of the device of the primary supply", from: 0, usual: [0, 10000] },
  },
  gives: { unit: "A", symbol: "I_bus" },
  expression: "controlledCurrent + mainDevice",
  source: [{ in: "NFPA 70:2020", clause: "705.13(B)", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked setting of a power control system on a busbar" },
});
