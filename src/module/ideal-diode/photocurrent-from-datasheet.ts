import { formula } from "../../formula/index.js";

/**
 * Photocurrent from the short-circuit current and the two resistances.
 *
 * @function
 * @example
 * ```ts
 * import { photocurrentFromDatasheet } from "pv-to-grid/module";
 * photocurrentFromDatasheet({ shortCircuitCurrent: "8.21 A", seriesResistance: "0.221 ohm", shuntResistance: "415.405 ohm" }).show(); // "8.214 A"
 * ```
 */
export const photocurrentFromDatasheet = /* @__PURE__ */ formula({
  id: "module/photocurrent-from-datasheet",
  about: "photocurrent from the short-circuit current and the two resistances",
  takes: {
    shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current", above: 0, usual: [0.05, 40] },
    seriesResistance: { unit: "Ω", symbol: "R_s", about: "series resistance", from: 0 },
    shuntResistance: { unit: "Ω", symbol: "R_sh", about: "shunt resistance", above: 0 },
  },
  gives: { unit: "A", symbol: "I_L" },
  expression: "shortCircuitCurrent * (shuntResistance + seriesResistance) / shuntResistance",
  source: [{ in: "Villalva:2009", clause: "photocurrent", grade: "memory" }],
  unproven: { because: "no publication found", sought: "the paper itself; its results are recalled" },
});
