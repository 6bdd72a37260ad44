import { formula } from "../../formula/index.js";

/**
 * Factor of a fault current for its decaying direct component. @function
 *
 * @example
 * ```ts
 * import { decrementFactor } from "pv-to-grid/earthing";
 * decrementFactor({ reactanceToResistance: "20", supplyFrequency: "60 Hz", faultDuration: "0.5 s" }).show({ digits: 5 }); // "1.0517"
 * ```
 */
export const decrementFactor = /* @__PURE__ */ formula({
  id: "earthing/decrement-factor",
  about: "factor of a fault current for its decaying direct component",
  takes: {
    reactanceToResistance: { unit: "1", symbol: "X/R", about: "reactance over resistance of the fault path", above: 0, to: 200 },
    supplyFrequency: { unit: "Hz", symbol: "f", about: "frequency of the supply", above: 0, usual: [10, 400] },
    faultDuration: { unit: "s", symbol: "t_f", about: "duration of the fault", above: 0, to: 10 },
  },
  gives: { unit: "1", symbol: "D_f" },
  expression: "sqrt(1 + reactanceToResistance / (2 * pi * supplyFrequency * faultDuration) * (1 - exp(-2 * faultDuration * 2 * pi * supplyFrequency / reactanceToResistance)))",
  source: [{ in: "IEEE 80:2000", clause: "15.10, equation 79", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEEE 80 table 10 decrement factors with X/R and duration" },
});
