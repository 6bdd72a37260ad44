import { series } from "../../formula/index.js";

/**
 * Rated residual operating currents of residual current devices. @function
 *
 * @example
 * ```ts
 * import { residualCurrentRatings } from "pv-to-grid/device";
 * residualCurrentRatings.sizes().map((rating) => rating.in("mA").text).join(" "); // "6 10 30 100 300 500 1000"
 * ```
 */
export const residualCurrentRatings = /* @__PURE__ */ series({
  id: "device/residual-current-ratings",
  about: "rated residual operating currents of residual current devices",
  unit: "A",
  symbol: "I_Δn",
  sizes: "0.006 0.01 0.03 0.1 0.3 0.5 1",
  source: [{ in: "IEC 61008-1:2010", clause: "5.3.2 (1 A: residual current devices of IEC 60947-2)", grade: "memory" }],
});

/**
 * Rated currents of residual current circuit-breakers. @function
 *
 * @example
 * ```ts
 * import { residualDeviceRatings } from "pv-to-grid/device";
 * residualDeviceRatings.sizes()[0]?.text; // "10"
 * ```
 */
export const residualDeviceRatings = /* @__PURE__ */ series({
  id: "device/residual-device-ratings",
  about: "rated currents of residual current circuit-breakers",
  unit: "A",
  symbol: "I_n",
  sizes: "10 13 16 20 25 32 40 63 80 100 125",
  source: [{ in: "IEC 61008-1:2010", clause: "5.3.1", grade: "memory" }],
});
