import { condition } from "../../formula/index.js";

/**
 * Is the coldest temperature of the design no warmer than the mean annual minimum of the station?
 *
 * @function
 */
export const coldestNoWarmerThanMean = /* @__PURE__ */ condition({
  id: "climate/coldest-no-warmer-than-mean",
  asks: "Is the coldest temperature of the design no warmer than the mean annual minimum of the station?",
  force: "recommendation",
  value: { unit: "°C", symbol: "T_min", about: "coldest temperature of the design" },
  relation: "≤",
  limit: { unit: "°C", symbol: "M", about: "mean of the lowest temperatures of the years" },
  source: [{ in: "NFPA 70:2020", clause: "690.7, informational note on the extreme annual mean minimum", grade: "memory" }],
  worse: { "site.coldest": "up" },
});
