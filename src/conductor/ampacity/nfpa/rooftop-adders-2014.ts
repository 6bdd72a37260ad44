import { table } from "../../../formula/index.js";

/**
 * Rise of temperature to add for raceways above a roof, by height, in editions 2008 to 2014.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2014_rooftop_adders } from "pv-to-grid/conductor";
 * nfpa70_2014_rooftop_adders({ heightAboveRoof: "150 mm" }).show(); // "17 K"
 * ```
 */
export const nfpa70_2014_rooftop_adders = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2014-rooftop-adders", about: "rise of temperature to add for raceways above a roof, by height, in editions 2008 to 2014",
  rows: { name: "heightAboveRoof", unit: "mm", symbol: "h" }, rowRule: "next above",
  gives: { unit: "K", symbol: "Δθ" },
  source: [{ in: "NFPA 70:2014", clause: "table 310.15(B)(3)(c)", grade: "reproduced", seen: "pveducation rooftop page:undated, table of adders" }],
  note: "superseded in 2017; kept for plants that were built under these editions",
  cells: `
    13   33
    90   22
    300  17
    900  14
  `,
});
