import { formula } from "../../formula/index.js";

/**
 * Size of a voltage that was read with the leads in either order. @function
 *
 * @example
 * ```ts
 * import { voltageWithoutSign } from "pv-to-grid/commissioning";
 * voltageWithoutSign({ signedVoltage: "-520 V" }).text; // "520"
 * ```
 */
export const voltageWithoutSign = /* @__PURE__ */ formula({
  id: "commissioning/voltage-without-sign",
  about: "size of a voltage that was read with the leads in either order",
  takes: {
    signedVoltage: { unit: "V", symbol: "U", about: "voltage as read, below zero where the poles are reversed", above: -3000, to: 3000, usual: [-1500, 1500] },
  },
  gives: { unit: "V", symbol: "|U|" },
  expression: "abs(signedVoltage)",
  source: [{ in: "common practice", clause: "polarity and size of a voltage", grade: "common-practice" }],
  unproven: { because: "definition" },
});
