import { condition } from "../../formula/index.js";

/**
 * Is the largest series fuse large enough against the short-circuit current?
 *
 * @function
 */
export const seriesFuseNotTooSmall = /* @__PURE__ */ condition({
  id: "module/series-fuse-not-too-small",
  asks: "Is the largest series fuse large enough against the short-circuit current?",
  force: "recommendation",
  value: { unit: "1", symbol: "r_fuse", about: "fuse rating over short-circuit current" },
  relation: "≥",
  limit: { unit: "1", symbol: "r_low", about: "lowest ratio of modules" },
  source: [{ in: "common practice", clause: "ratings of modules", grade: "common-practice" }],
});

/**
 * Is the largest series fuse small enough against the short-circuit current?
 *
 * @function
 */
export const seriesFuseNotTooLarge = /* @__PURE__ */ condition({
  id: "module/series-fuse-not-too-large",
  asks: "Is the largest series fuse small enough against the short-circuit current?",
  force: "recommendation",
  value: { unit: "1", symbol: "r_fuse", about: "fuse rating over short-circuit current" },
  relation: "≤",
  limit: { unit: "1", symbol: "r_high", about: "highest ratio of modules" },
  source: [{ in: "common practice", clause: "ratings of modules", grade: "common-practice" }],
});

/**
 * Is the lower end of the power tolerance below its upper end?
 *
 * @function
 */
export const toleranceInOrder = /* @__PURE__ */ condition({
  id: "module/tolerance-in-order",
  asks: "Is the lower end of the power tolerance below its upper end?",
  force: "requirement",
  value: { unit: "1", symbol: "t_low", about: "lower end of the tolerance" },
  relation: "≤",
  limit: { unit: "1", symbol: "t_high", about: "upper end of the tolerance" },
  source: [{ in: "common practice", clause: "order of a tolerance", grade: "common-practice" }],
});

/**
 * Is the lower end of the power tolerance within that of modules on the market?
 *
 * @function
 */
export const toleranceNotTooWide = /* @__PURE__ */ condition({
  id: "module/tolerance-not-too-wide",
  asks: "Is the lower end of the power tolerance within that of modules on the market?",
  force: "recommendation",
  value: { unit: "1", symbol: "t_low", about: "lower end of the tolerance" },
  relation: "≥",
  limit: { unit: "1", symbol: "t_min", about: "widest lower tolerance" },
  source: [{ in: "common practice", clause: "tolerances of modules", grade: "common-practice" }],
});

/**
 * Is the open-circuit voltage of one cell high enough for the number of cells?
 *
 * @function
 */
export const cellVoltageHighEnough = /* @__PURE__ */ condition({
  id: "module/cell-voltage-high-enough",
  asks: "Is the open-circuit voltage of one cell high enough for the number of cells?",
  force: "recommendation",
  value: { unit: "V", symbol: "U_OC,cell", about: "open-circuit voltage of one cell" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_low", about: "lowest of cells" },
  source: [{ in: "common practice", clause: "open-circuit voltages of cells", grade: "common-practice" }],
  note: "half cells in parallel count once",
});

/**
 * Is the open-circuit voltage of one cell low enough for the number of cells?
 *
 * @function
 */
export const cellVoltageLowEnough = /* @__PURE__ */ condition({
  id: "module/cell-voltage-low-enough",
  asks: "Is the open-circuit voltage of one cell low enough for the number of cells?",
  force: "recommendation",
  value: { unit: "V", symbol: "U_OC,cell", about: "open-circuit voltage of one cell" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_high", about: "highest of cells" },
  source: [{ in: "common practice", clause: "open-circuit voltages of cells", grade: "common-practice" }],
});

/**
 * Is the nominal operating cell temperature no lower than that of the best module surveyed?
 *
 * @function
 */
export const operatingTemperatureHighEnough = /* @__PURE__ */ condition({
  id: "module/operating-temperature-high-enough",
  asks: "Is the nominal operating cell temperature no lower than that of the best module surveyed?",
  force: "recommendation",
  value: { unit: "°C", symbol: "NOCT", about: "nominal operating cell temperature" },
  relation: "≥",
  limit: { unit: "°C", symbol: "NOCT_best", about: "that of the best module" },
  source: [{ in: "common practice", clause: "survey of operating temperatures", grade: "common-practice" }],
});

/**
 * Is the nominal operating cell temperature no higher than that of the worst module surveyed?
 *
 * @function
 */
export const operatingTemperatureLowEnough = /* @__PURE__ */ condition({
  id: "module/operating-temperature-low-enough",
  asks: "Is the nominal operating cell temperature no higher than that of the worst module surveyed?",
  force: "recommendation",
  value: { unit: "°C", symbol: "NOCT", about: "nominal operating cell temperature" },
  relation: "≤",
  limit: { unit: "°C", symbol: "NOCT_worst", about: "that of the worst module" },
  source: [{ in: "common practice", clause: "survey of operating temperatures", grade: "common-practice" }],
});
