import { condition } from "../../formula/index.js";

/**
 * Is the protective conductor as large as the line conductor asks for? @function
 *
 * @example
 * ```ts
 * import { protectiveConductorFollowsLine } from "pv-to-grid/earthing";
 * protectiveConductorFollowsLine({ value: "16 mm²", limit: "16 mm²" }).verdict; // "met"
 * ```
 */
export const protectiveConductorFollowsLine = /* @__PURE__ */ condition({
  id: "earthing/protective-conductor-follows-line",
  asks: "Is the protective conductor as large as the line conductor asks for?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_PE", about: "protective conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "section from the line conductor" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.1.2, table 54.2", grade: "reproduced", seen: "Mitolo:2009, table 11.4, p. 186" }],
  worse: { "routes[].cable.size": "either", "routes[].cable.protectiveConductor": "down" },
});

/**
 * Does the protective conductor withstand the fault until the device has disconnected it? @function
 *
 * @example
 * ```ts
 * import { protectiveConductorWithstands } from "pv-to-grid/earthing";
 * protectiveConductorWithstands({ value: "1.5 mm²", limit: "1.1 mm²" }).verdict; // "met"
 * ```
 */
export const protectiveConductorWithstands = /* @__PURE__ */ condition({
  id: "earthing/protective-conductor-withstands",
  asks: "Does the protective conductor withstand the fault until the device has disconnected it?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_PE", about: "protective conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "section by the adiabatic equation" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.1.2", grade: "reproduced", seen: "NICEIC Pocket Guide 15:2018, p. 26" }],
  worse: { "routes[].cable.protectiveConductor": "down", "supply.largestFaultCurrent": "up" },
});

/**
 * Is a protective conductor that is not part of a cable large enough to last? @function
 *
 * @example
 * ```ts
 * import { separateConductorLargeEnough } from "pv-to-grid/earthing";
 * separateConductorLargeEnough({ value: "2.5 mm²", limit: "4 mm²" }).verdict; // "not met"
 * ```
 */
export const separateConductorLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/separate-conductor-large-enough",
  asks: "Is a protective conductor that is not part of a cable large enough to last?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S_PE", about: "protective conductor" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest section outside a cable" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.1.3", grade: "reproduced", seen: "Mitolo:2009, table 11.4, p. 186" }],
  worse: { "routes[].cable.protectiveConductor": "down" },
});
