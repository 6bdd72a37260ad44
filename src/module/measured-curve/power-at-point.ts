import { formula } from "../../formula/index.js";

/**
 * Power at a point of an I-V curve.
 *
 * @function
 * @example
 * ```ts
 * import { powerAtPoint } from "pv-to-grid/module";
 * powerAtPoint({ voltage: "0.8004 V", current: "0.2092246 A" }).show(); // "0.1675 W"
 * ```
 */
export const powerAtPoint = /* @__PURE__ */ formula({
  id: "module/power-at-point",
  about: "power at a point of an I-V curve",
  takes: {
    voltage: { unit: "V", symbol: "U", about: "voltage at the terminals", above: -1000, to: 3000, usual: [-1000, 1500] },
    current: { unit: "A", symbol: "I", about: "current out of the terminals", above: -1000, to: 1000, usual: [-1000, 1000] },
  },
  gives: { unit: "W", symbol: "P" },
  expression: "voltage * current",
  source: [{ in: "common practice", clause: "power is voltage times current", grade: "common-practice" }],
  unproven: { because: "definition" },
});
