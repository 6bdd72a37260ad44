import { formula } from "../../formula/index.js";

/**
 * Reactive power, as a share of the apparent power, that belongs to a power factor.
 *
 * @function
 * @example
 * ```ts
 * import { reactiveShareOfPowerFactor } from "pv-to-grid/grid";
 * reactiveShareOfPowerFactor({ powerFactor: "0.95", direction: -1 }).show(); // "-0.3122"
 * ```
 */
export const reactiveShareOfPowerFactor = /* @__PURE__ */ formula({
  id: "grid/reactive-share-of-power-factor",
  about: "reactive power, as a share of the apparent power, that belongs to a power factor",
  takes: {
    powerFactor: { unit: "1", symbol: "cos φ", about: "displacement power factor", above: 0, to: 1, usual: [0.1, 1] },
    direction: { unit: "1", symbol: "s", about: "1 where reactive power is injected, -1 where it is absorbed", from: -1, to: 1, usual: [-1, 1] },
  },
  requires: [{ that: "direction == 1 or direction == -1", because: "reactive power is either injected or absorbed" }],
  gives: { unit: "1", symbol: "q" },
  expression: "direction * sqrt(1 - powerFactor ^ 2)",
  source: [{ in: "common practice", clause: "definition", grade: "common-practice" }],
  unproven: { because: "definition" },
});
