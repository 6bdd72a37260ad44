import { formula } from "../../formula/index.js";

/**
 * Apparent resistivity of the soil from a four-probe test. @function
 *
 * @example
 * ```ts
 * import { wennerResistivity } from "pv-to-grid/earthing";
 * wennerResistivity({ probeSpacing: "6 m", wennerResistance: "3.37 Ω" }).show({ digits: 5 }); // "127.05 Ω·m"
 * ```
 */
export const wennerResistivity = /* @__PURE__ */ formula({
  id: "earthing/wenner-resistivity",
  about: "apparent resistivity of the soil from a four-probe test",
  takes: {
    probeSpacing: { unit: "m", symbol: "a", about: "distance between neighbouring probes", above: 0, usual: [0.1, 200] },
    wennerResistance: { unit: "Ω", symbol: "R", about: "reading of the four-probe test", above: 0, usual: [0.001, 5000] },
  },
  gives: { unit: "Ω·m", symbol: "ρ" },
  expression: "2 * pi * probeSpacing * wennerResistance",
  source: [{ in: "TNB manual:undated", clause: "table B-3, p. 411", grade: "original" }],
  unproven: { because: "no publication found", sought: "Wenner readings with exact pi; handbooks take 3.142 or 6.28 and stand as disputed" },
  note: "holds where the probes stand much less deep than apart",
});
