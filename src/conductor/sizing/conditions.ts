import { condition } from "../../formula/index.js";

/**
 * Does the cable carry the current all along its route?
 *
 * @function
 */
export const withinAmpacity = /* @__PURE__ */ condition({
  id: "conductor/within-ampacity", asks: "Does the cable carry the current all along its route?", force: "requirement",
  value: { unit: "A", symbol: "I", about: "current that the cable must carry" }, relation: "≤",
  limit: { unit: "A", symbol: "I_z", about: "ampacity of the worst stretch" },
  source: [{ in: "IEC 60364-4-43:2008", clause: "433.1", grade: "reproduced", seen: "Electrical Installation Guide:undated, chapter G" }],
  worse: { "routes[].stretches[].ambient": "up", "routes[].stretches[].grouped": "up", "routes[].breaker.rating": "up" },
});

/**
 * Is the size tabulated for the way the cable is laid?
 *
 * @function
 */
export const sizeTabulated = /* @__PURE__ */ condition({
  id: "conductor/size-tabulated", asks: "Is the size tabulated for the way the cable is laid?", force: "requirement",
  value: { named: true, about: "size" }, relation: "one of", limit: { named: true, about: "sizes that the tables hold" },
  source: [{ in: "common practice", clause: "a table is never extrapolated", grade: "common-practice" }],
});

/**
 * Is the cross-section at least the smallest of the wiring rules?
 *
 * @function
 */
export const sectionAtLeastMinimum = /* @__PURE__ */ condition({
  id: "conductor/section-at-least-minimum", asks: "Is the cross-section at least the smallest of the wiring rules?", force: "requirement",
  value: { unit: "mm²", symbol: "S", about: "cross-section of the line conductor" }, relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest cross-section" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "524.1", grade: "copied" }],
});

/**
 * Is the conductor thick enough for the terminal?
 *
 * @function
 */
export const terminalHoldsSmall = /* @__PURE__ */ condition({
  id: "conductor/terminal-holds-small", asks: "Is the conductor thick enough for the terminal?", force: "requirement",
  value: { unit: "mm²", symbol: "S", about: "cross-section of the conductor" }, relation: "≥",
  limit: { unit: "mm²", symbol: "S_low", about: "smallest cross-section that the terminal takes" },
  source: [{ in: "common practice", clause: "the maker's clamp range", grade: "common-practice" }],
});

/**
 * Does the conductor fit into the terminal?
 *
 * @function
 */
export const terminalHoldsLarge = /* @__PURE__ */ condition({
  id: "conductor/terminal-holds-large", asks: "Does the conductor fit into the terminal?", force: "requirement",
  value: { unit: "mm²", symbol: "S", about: "cross-section of the conductor" }, relation: "≤",
  limit: { unit: "mm²", symbol: "S_high", about: "largest cross-section that the terminal takes" },
  source: [{ in: "common practice", clause: "the maker's clamp range", grade: "common-practice" }],
});

/**
 * Does the terminal take the conductor's metal?
 *
 * @function
 */
export const terminalTakesMetal = /* @__PURE__ */ condition({
  id: "conductor/terminal-takes-metal", asks: "Does the terminal take the conductor's metal?", force: "requirement",
  value: { named: true, about: "metal of the conductor" }, relation: "one of", limit: { named: true, about: "metals that the maker allows" },
  source: [{ in: "common practice", clause: "the maker's instructions; terminals take copper unless they are declared for aluminium", grade: "common-practice" }],
});

/**
 * Does the conductor stay as cool as its terminal needs?
 *
 * @function
 */
export const conductorCoolAtTerminal = /* @__PURE__ */ condition({
  id: "conductor/conductor-cool-at-terminal", asks: "Does the conductor stay as cool as its terminal needs?", force: "requirement",
  value: { unit: "°C", symbol: "θ", about: "temperature of the conductor at the current" }, relation: "≤",
  limit: { unit: "°C", symbol: "θ_t", about: "temperature that the terminal is made for" },
  source: [
    { in: "IEC 60364-5-52:2009", clause: "512.1.5 and note to table 52.1", grade: "memory" },
    { in: "common practice", clause: "the temperature that the maker states for a terminal", grade: "common-practice" },
  ],
  worse: { "routes[].stretches[].ambient": "up", "routes[].stretches[].grouped": "up" },
});
