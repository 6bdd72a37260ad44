import { condition } from "../../formula/index.js";

/**
 * Would a string that lacks a module read below the band? @function
 *
 * @example
 * ```ts
 * import { missingModuleOutsideBand } from "pv-to-grid/commissioning";
 * missingModuleOutsideBand({ value: "94.7 %", limit: "95 %" }).verdict; // "met"
 * ```
 */
export const missingModuleOutsideBand = /* @__PURE__ */ condition({
  id: "commissioning/missing-module-outside-band",
  asks: "Would a string that lacks a module read below the band?",
  force: "yield",
  value: { unit: "1", symbol: "q", about: "share that such a string reads" },
  relation: "<",
  limit: { unit: "1", symbol: "q_min", about: "lowest share within the band" },
  source: [{ in: "common practice", clause: "a string that lacks a module", grade: "common-practice" }],
});

/**
 * Would a string that lacks a module stand out among identical strings? @function
 *
 * @example
 * ```ts
 * import { missingModuleTellsAmongStrings } from "pv-to-grid/commissioning";
 * missingModuleTellsAmongStrings({ value: "5.3 %", limit: "5 %" }).verdict; // "met"
 * ```
 */
export const missingModuleTellsAmongStrings = /* @__PURE__ */ condition({
  id: "commissioning/missing-module-tells-among-strings",
  asks: "Would a string that lacks a module stand out among identical strings?",
  force: "yield",
  value: { unit: "1", symbol: "s", about: "share by which sound strings lie above it" },
  relation: ">",
  limit: { unit: "1", symbol: "τ_S", about: "tolerance between identical strings" },
  source: [{ in: "common practice", clause: "a string that lacks a module", grade: "common-practice" }],
});
