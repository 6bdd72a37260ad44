import { series } from "../../formula/index.js";

/**
 * Rated currents of moulded-case breakers and switches, the R10 series. @function
 *
 * @example
 * ```ts
 * import { industrialRatings } from "pv-to-grid/device";
 * industrialRatings.sizes().length; // 27
 * ```
 */
export const industrialRatings = /* @__PURE__ */ series({
  id: "device/industrial-ratings",
  about: "rated currents of moulded-case breakers and switches, the R10 series",
  unit: "A",
  symbol: "I_n",
  sizes: "16 20 25 32 40 50 63 80 100 125 160 200 250 315 400 500 630 800 1000 1250 1600 2000 2500 3150 4000 5000 6300",
  source: [{ in: "IEC 60059:1999", clause: "table of standard current ratings (R10)", grade: "memory" }],
});

/**
 * Rated currents of d.c. switch-disconnectors, the R10 series. @function
 *
 * @example
 * ```ts
 * import { switchRatings } from "pv-to-grid/device";
 * switchRatings.sizes()[0]?.text; // "16"
 * ```
 */
export const switchRatings = /* @__PURE__ */ series({
  id: "device/switch-ratings",
  about: "rated currents of d.c. switch-disconnectors, the R10 series",
  unit: "A",
  symbol: "I_e",
  sizes: "16 20 25 32 40 50 63 80 100 125 160 200 250 315 400 500 630 800 1000 1250 1600 2000 2500 3150 4000",
  source: [{ in: "IEC 60059:1999", clause: "table of standard current ratings (R10)", grade: "memory" }],
});
