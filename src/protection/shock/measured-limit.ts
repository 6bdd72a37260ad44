import { formula } from "../../formula/index.js";

/**
 * Limit for a loop that is measured cold, British practice. @function
 *
 * @example
 * ```ts
 * import { measuredLoopLimit } from "pv-to-grid/protection";
 * measuredLoopLimit({ largestLoop: "1.37 Ω" }).text; // "1.096"
 * ```
 */
export const measuredLoopLimit = /* @__PURE__ */ formula({
  id: "protection/measured-loop-limit",
  about: "limit for a loop that is measured cold, British practice",
  takes: {
    largestLoop: { unit: "Ω", symbol: "Z_s,max", about: "largest impedance of the fault loop for the device", above: 0, usual: [0.0001, 2000] },
  },
  constants: {
    coldShare: {
      value: "0.8", unit: "1", symbol: "0.8", about: "measured over permitted impedance",
      source: [{ in: "NICEIC Connections:2015", clause: "p. 61", grade: "original" }],
    },
  },
  gives: { unit: "Ω", symbol: "Z_m,max" },
  expression: "coldShare * largestLoop",
  source: [{ in: "NICEIC Connections:2015", clause: "p. 61", grade: "original" }],
  unproven: { because: "definition" },
});

/**
 * Limit for a loop that is measured cold, by the standard of verification. @function
 *
 * @example
 * ```ts
 * import { measuredLoopLimitOfVerification } from "pv-to-grid/protection";
 * measuredLoopLimitOfVerification({ largestLoop: "1.5 Ω" }).text; // "1"
 * ```
 */
export const measuredLoopLimitOfVerification = /* @__PURE__ */ formula({
  id: "protection/measured-loop-limit-of-verification",
  about: "limit for a loop that is measured cold, by the standard of verification",
  takes: {
    largestLoop: { unit: "Ω", symbol: "Z_s,max", about: "largest impedance of the fault loop for the device", above: 0, usual: [0.0001, 2000] },
  },
  gives: { unit: "Ω", symbol: "Z_m,max" },
  expression: "2 * largestLoop / 3",
  source: [{ in: "IEC 60364-6:2016", clause: "annex D", grade: "memory" }],
  unproven: { because: "definition" },
});
