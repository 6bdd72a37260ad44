import { condition } from "../../formula/index.js";

/** Is the fuse's rating above the lower bound of the rules? @function */
export const fuseAboveLowerBound = /* @__PURE__ */ condition({
  id: "string/fuse-above-lower-bound",
  asks: "Is the fuse's rating above the lower bound of the rules?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the fuse" },
  relation: ">",
  limit: { unit: "A", symbol: "I_low", about: "lower bound" },
  source: [
    { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
    { in: "AS/NZS 5033:2014", clause: "3.3", grade: "reproduced", seen: "EcoInnovation pump manual:2019, p. 47" },
  ],
  worse: { "moduleTypes[].shortCircuitCurrent": "up", "routes[].stringFuse": "down" },
  note: "strict, as it was seen twice; a recollection of AS/NZS 5033 has it inclusive",
});

/** Does the device's rating reach the lower bound of the rules? @function */
export const deviceReachesLowerBound = /* @__PURE__ */ condition({
  id: "string/device-reaches-lower-bound",
  asks: "Does the device's rating reach the lower bound of the rules?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  relation: "≥",
  limit: { unit: "A", symbol: "I_low", about: "lower bound" },
  source: [
    { in: "NFPA 70:2020", clause: "690.9(B)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.9(B)" },
    { in: "IEC 60364-7-712:2017", clause: "712.433", grade: "memory" },
  ],
  worse: { "moduleTypes[].shortCircuitCurrent": "up", "routes[].stringFuse": "down" },
});

/** Is the fuse's rating below the upper bound of the rules? @function */
export const fuseBelowUpperBound = /* @__PURE__ */ condition({
  id: "string/fuse-below-upper-bound",
  asks: "Is the fuse's rating below the upper bound of the rules?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the fuse" },
  relation: "<",
  limit: { unit: "A", symbol: "I_high", about: "upper bound" },
  source: [
    { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
    { in: "IEC 62548-1:2023", clause: "string overcurrent device rating", grade: "memory" },
  ],
  worse: { "moduleTypes[].shortCircuitCurrent": "down", "routes[].stringFuse": "up" },
});

/** Is the fuse's rating within what the module allows? @function */
export const fuseWithinModuleRating = /* @__PURE__ */ condition({
  id: "string/fuse-within-module-rating",
  asks: "Is the fuse's rating within what the module allows?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the fuse" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_MOD,max", about: "largest overcurrent protection rating of the module, less what other strings on the same fuse add" },
  source: [
    { in: "IS/IEC 62548:undated", clause: "string overcurrent device rating", grade: "reproduced", seen: "Solar Saarthi fuse article:undated, page 4, example 2, step 2" },
    { in: "NFPA 70:2020", clause: "690.9(A)", grade: "copied", seen: "California Electrical Code:2022, 690.9(A)(1)" },
  ],
  worse: { "moduleTypes[].maximumSeriesFuse": "down", "routes[].stringFuse": "up" },
});

/** Does the fuse carry its strings in strong sun at up to 45 °C? @function */
export const fuseCarriesSummer = /* @__PURE__ */ condition({
  id: "string/fuse-carries-summer",
  asks: "Does the fuse carry its strings in strong sun at up to 45 °C?",
  force: "recommendation",
  value: { unit: "A", symbol: "I_n", about: "rated current of the fuse" },
  relation: "≥",
  limit: { unit: "A", symbol: "1.4 I_SC", about: "rating for 1 200 W/m² and 45 °C" },
  source: [{ in: "IEC 60269-6:2010", clause: "annex BB", grade: "reproduced", seen: "SIBA fuse.on:2012, p. 3, section 2" }],
  worse: { "moduleTypes[].shortCircuitCurrent": "up", "routes[].stringFuse": "down" },
});

/** Does the fuse, in the heat of its box, still carry the maximum current of its strings? @function */
export const fuseCarriesWhenHot = /* @__PURE__ */ condition({
  id: "string/fuse-carries-when-hot",
  asks: "Does the fuse, in the heat of its box, still carry the maximum current of its strings?",
  force: "requirement",
  value: { unit: "A", symbol: "k · I_n", about: "rated current of the fuse times the maker's factor for its ambient" },
  relation: "≥",
  limit: { unit: "A", symbol: "I_max", about: "maximum current of the strings behind it" },
  source: [{ in: "common practice", clause: "fuses in a warm box carry less", grade: "common-practice" }],
  worse: { "junctions[].derating": "down", "junctions[].ambient": "up" },
});

/** Is the rating of the sub-array or array device above its lower bound? @function */
export const groupDeviceAboveLowerBound = /* @__PURE__ */ condition({
  id: "string/group-device-above-lower-bound",
  asks: "Is the rating of the sub-array or array device above its lower bound?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the sub-array or array device" },
  relation: ">",
  limit: { unit: "A", symbol: "1.25 I_SC", about: "lower bound" },
  source: [{ in: "IEC 62548:2016", clause: "sub-array and array overcurrent protection", grade: "memory" }],
  note: "strict and inclusive could not be told apart; the strict reading is the safer one",
});

/** Is the ambient of the fuses within the one that their rating holds for? @function */
export const fuseAmbientWithinReference = /* @__PURE__ */ condition({
  id: "string/fuse-ambient-within-reference",
  asks: "Is the ambient of the fuses within the one that their rating holds for?",
  force: "requirement",
  value: { unit: "°C", symbol: "θ_box", about: "temperature around the fuses" },
  relation: "≤",
  limit: { unit: "°C", symbol: "θ_ref", about: "ambient up to which the usual allowance holds" },
  source: [{ in: "Altech gPV chart:undated", clause: "selection chart", grade: "original" }],
  worse: { "junctions[].ambient": "up" },
  note: "above it the maker's factor is due",
});
