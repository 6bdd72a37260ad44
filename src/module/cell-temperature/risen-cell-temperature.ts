import { formula } from "../../formula/index.js";

/**
 * Cell temperature as the ambient and a rise over it.
 *
 * @function
 * @example
 * ```ts
 * import { risenCellTemperature } from "pv-to-grid/module";
 * risenCellTemperature({ ambient: "36 °C", temperatureRise: "35 K" }).text; // "71"
 * ```
 */
export const risenCellTemperature = /* @__PURE__ */ formula({
  id: "module/risen-cell-temperature",
  about: "cell temperature as the ambient and a rise over it",
  takes: {
    ambient: { unit: "°C", symbol: "T_a", about: "ambient air temperature", above: -100, to: 70, usual: [-50, 60] },
    temperatureRise: { unit: "K", symbol: "ΔT", about: "rise of the cells over the ambient in full sun", from: 0, to: 80, usual: [0, 60] },
  },
  gives: { unit: "°C", symbol: "T_c" },
  expression: "ambient + temperatureRise",
  source: [
    { in: "RE-wrenches list:2011", clause: "rise of cells over the ambient by mounting", grade: "copied" },
  ],
  unproven: { because: "definition" },
});
