import { condition } from "../../formula/index.js";

/**
 * Is the reading of the conductor as low as its length and section let expect? @function
 *
 * @example
 * ```ts
 * import { continuityLowEnough } from "pv-to-grid/commissioning";
 * continuityLowEnough({ value: "0.12 Ω", limit: "0.145 Ω" }).verdict; // "met"
 * ```
 */
export const continuityLowEnough = /* @__PURE__ */ condition({
  id: "commissioning/continuity-low-enough",
  asks: "Is the reading of the conductor as low as its length and section let expect?",
  force: "recommendation",
  value: { unit: "Ω", symbol: "R", about: "reading of the continuity test" },
  relation: "≤",
  limit: { unit: "Ω", symbol: "R_max", about: "expected resistance with an allowance for joints" },
  source: [{ in: "common practice", clause: "expected resistance and an allowance for joints", grade: "common-practice" }, { in: "IEC 60364-6:2016", clause: "continuity of conductors", grade: "memory" }],
  note: "a higher reading asks for a look at the joints; a much lower one shows a parallel path",
});

/**
 * Is the measured impedance of the fault loop low enough? @function
 *
 * @example
 * ```ts
 * import { measuredLoopLowEnough } from "pv-to-grid/commissioning";
 * measuredLoopLowEnough({ value: "0.71 Ω", limit: "0.92 Ω" }).verdict; // "met"
 * ```
 */
export const measuredLoopLowEnough = /* @__PURE__ */ condition({
  id: "commissioning/measured-loop-low-enough",
  asks: "Is the measured impedance of the fault loop low enough?",
  force: "requirement",
  value: { unit: "Ω", symbol: "Z_m", about: "measured impedance" },
  relation: "≤",
  limit: { unit: "Ω", symbol: "Z_m,max", about: "largest measured impedance for the device" },
  source: [{ in: "IEC 60364-6:2016", clause: "annex D", grade: "memory" }, { in: "NICEIC Connections:2015", clause: "p. 61", grade: "original" }],
});

/**
 * Does the residual current device open in time? @function
 *
 * @example
 * ```ts
 * import { residualDeviceQuickEnough } from "pv-to-grid/commissioning";
 * residualDeviceQuickEnough({ value: "0.024 s", limit: "0.04 s" }).verdict; // "met"
 * ```
 */
export const residualDeviceQuickEnough = /* @__PURE__ */ condition({
  id: "commissioning/residual-device-quick-enough",
  asks: "Does the residual current device open in time?",
  force: "requirement",
  value: { unit: "s", symbol: "t", about: "measured break time" },
  relation: "≤",
  limit: { unit: "s", symbol: "t_max", about: "longest break time" },
  source: [{ in: "IEC 61008-1:2010", clause: "table 1", grade: "memory" }],
});

/**
 * Does the time-delayed residual current device wait? @function
 *
 * @example
 * ```ts
 * import { residualDeviceWaits } from "pv-to-grid/commissioning";
 * residualDeviceWaits({ value: "0.11 s", limit: "0.13 s" }).verdict; // "not met"
 * ```
 */
export const residualDeviceWaits = /* @__PURE__ */ condition({
  id: "commissioning/residual-device-waits",
  asks: "Does the time-delayed residual current device wait?",
  force: "requirement",
  value: { unit: "s", symbol: "t", about: "measured break time" },
  relation: "≥",
  limit: { unit: "s", symbol: "t_min", about: "time within which it must not open" },
  source: [{ in: "IEC 61008-1:2010", clause: "table 1", grade: "memory" }],
});

/**
 * Does the residual current device open at no more than its rated residual current? @function
 *
 * @example
 * ```ts
 * import { residualCurrentNotAbove } from "pv-to-grid/commissioning";
 * residualCurrentNotAbove({ value: "22 mA", limit: "30 mA" }).verdict; // "met"
 * ```
 */
export const residualCurrentNotAbove = /* @__PURE__ */ condition({
  id: "commissioning/residual-current-not-above",
  asks: "Does the residual current device open at no more than its rated residual current?",
  force: "requirement",
  value: { unit: "A", symbol: "I_Δ", about: "residual current at which it opened" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_Δn", about: "rated residual operating current" },
  source: [{ in: "IEC 61008-1:2010", clause: "operating characteristic", grade: "memory" }],
});

/**
 * Does the residual current device stay closed at half its rated residual current? @function
 *
 * @example
 * ```ts
 * import { residualCurrentNotBelow } from "pv-to-grid/commissioning";
 * residualCurrentNotBelow({ value: "12 mA", limit: "15 mA" }).verdict; // "not met"
 * ```
 */
export const residualCurrentNotBelow = /* @__PURE__ */ condition({
  id: "commissioning/residual-current-not-below",
  asks: "Does the residual current device stay closed at half its rated residual current?",
  force: "requirement",
  value: { unit: "A", symbol: "I_Δ", about: "residual current at which it opened" },
  relation: ">",
  limit: { unit: "A", symbol: "I_Δn / 2", about: "residual current at which it must stay closed" },
  source: [{ in: "IEC 61008-1:2010", clause: "operating characteristic", grade: "memory" }],
});
