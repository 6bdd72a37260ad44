import { formula } from "../../formula/index.js";

/**
 * Voltage change along a route of parts in series.
 *
 * @function
 * @example
 * ```ts
 * import { routeDrop } from "pv-to-grid/conductor";
 * routeDrop({ drops: ["1.2 V", "300 mV"] }).show(); // "1.5 V"
 * ```
 */
export const routeDrop = /* @__PURE__ */ formula({
  id: "conductor/route-drop", about: "voltage change along a route of parts in series",
  takes: { drops: { each: "V", symbol: "ΔU_i", about: "voltage change of each part" } },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "sum(drops)",
  source: [{ in: "Electrical Installation Guide:undated", clause: "chapter G, voltage drop, examples", grade: "memory" }],
  unproven: { because: "no publication found", sought: "sums of drops, seen in print" },
});

/**
 * Voltage change as a share of the nominal voltage.
 *
 * @function
 * @example
 * ```ts
 * import { voltageChangeShare } from "pv-to-grid/conductor";
 * voltageChangeShare({ voltageChange: "13.29 V", nominalVoltage: "400 V" }).in("%").show({ digits: 2 }); // "3.3 %"
 * ```
 */
export const voltageChangeShare = /* @__PURE__ */ formula({
  id: "conductor/voltage-change-share", about: "voltage change as a share of the nominal voltage",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU", about: "voltage change" },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between the same conductors", above: 0, usual: [12, 1500] },
  },
  gives: { unit: "1", symbol: "Δu" },
  expression: "voltageChange / nominalVoltage",
  source: [{ in: "Prysmian low-voltage catalogue:undated", clause: "chapter K, p. 97", grade: "original" }],
});
