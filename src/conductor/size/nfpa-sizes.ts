import { series } from "../../formula/index.js";

/**
 * Conductor sizes in American wire gauge and kcmil, by their areas.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_sizes } from "pv-to-grid/conductor";
 * nfpa70_2017_sizes.sizes().length; // 28
 * ```
 */
export const nfpa70_2017_sizes = /* @__PURE__ */ series({
  id: "conductor/nfpa-70-2017-sizes", about: "conductor sizes in American wire gauge and kcmil, by their areas",
  unit: "cmil", symbol: "A",
  sizes: "4110 6530 10380 16510 26240 41740 52620 66360 83690 105600 133100 167800 211600 250000 300000 350000 400000 500000 600000 700000 750000 800000 900000 1000000 1250000 1500000 1750000 2000000",
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8, 14 AWG to 2000 kcmil", grade: "copied" }],
});
