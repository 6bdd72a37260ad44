import { formula } from "../../formula/index.js";

/**
 * Relative temperature coefficient of the maximum power from the absolute one.
 *
 * @function
 * @example
 * ```ts
 * import { relativePowerCoefficient } from "pv-to-grid/module";
 * relativePowerCoefficient({ absolutePowerCoefficient: "-2 W/K", maximumPower: "500 W" }).text; // "-0.004"
 * ```
 */
export const relativePowerCoefficient = /* @__PURE__ */ formula({
  id: "module/relative-power-coefficient",
  about: "relative temperature coefficient of the maximum power from the absolute one",
  takes: {
    absolutePowerCoefficient: { unit: "W/K", symbol: "γ_abs", about: "absolute temperature coefficient of the maximum power", above: -20, below: 0, usual: [-5, -0.01] },
    maximumPower: { unit: "W", symbol: "P_max,STC", about: "maximum power at standard test conditions", above: 0, usual: [1, 1000] },
  },
  gives: { unit: "1/K", symbol: "γ_rel" },
  expression: "absolutePowerCoefficient / maximumPower",
  source: [{ in: "common practice", clause: "a relative coefficient is the share of the value at standard test conditions", grade: "common-practice" }],
  unproven: { because: "definition" },
});
