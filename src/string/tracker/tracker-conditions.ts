import { condition } from "../../formula/index.js";

/** Does the tracker use all the current that its strings give at their maximum power point? @function */
export const mppCurrentWithinTracker = /* @__PURE__ */ condition({
  id: "string/mpp-current-within-tracker",
  asks: "Does the tracker use all the current that its strings give at their maximum power point?",
  force: "yield",
  value: { unit: "A", symbol: "ΣI_MPP", about: "current of the strings at their maximum power point" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_DC,max", about: "largest current that the tracker uses" },
  source: [{ in: "common practice", clause: "current above the limit is cut off", grade: "common-practice" }],
  worse: { "strings[].count": "up", "moduleTypes[].mppCurrent": "up", "inverters[].trackers[].maximumInputCurrent": "down" },
  note: "a yield limit: the inverter clips the current, nothing is harmed",
});

/** Is the largest short-circuit current of the strings within the tracker's short-circuit rating? @function */
export const shortCircuitCurrentWithinTracker = /* @__PURE__ */ condition({
  id: "string/short-circuit-current-within-tracker",
  asks: "Is the largest short-circuit current of the strings within the tracker's short-circuit rating?",
  force: "requirement",
  value: { unit: "A", symbol: "K_I · ΣI_SC", about: "largest short-circuit current of the strings" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_SC,PV", about: "short-circuit rating of the tracker" },
  source: [
    { in: "AS/NZS 5033:2021", clause: "4.5.1 with 4.2.2", grade: "reproduced", seen: "RFI article on AS/NZS 5033:undated, body" },
    { in: "IEC 62548-1:2023", clause: "inverter input ratings", grade: "memory" },
  ],
  worse: { "strings[].count": "up", "moduleTypes[].shortCircuitCurrent": "up", "inverters[].trackers[].shortCircuitRating": "down" },
});

/** Is the largest current through one plug or terminal within its rating? @function */
export const currentWithinInput = /* @__PURE__ */ condition({
  id: "string/current-within-input",
  asks: "Is the largest current through one plug or terminal within its rating?",
  force: "requirement",
  value: { unit: "A", symbol: "I_max", about: "largest current through the plug or terminal" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_plug", about: "rated current of the plug or terminal" },
  source: [{ in: "IEC 62548-1:2023", clause: "component requirements, plugs and terminals", grade: "memory" }],
  worse: { "moduleTypes[].shortCircuitCurrent": "up", "inverters[].trackers[].inputRating": "down" },
});

/** Does every string have an input of its own? @function */
export const stringsWithinInputs = /* @__PURE__ */ condition({
  id: "string/strings-within-inputs",
  asks: "Does every string have an input of its own?",
  force: "requirement",
  value: { unit: "1", symbol: "N", about: "strings, those behind a junction counted as one" },
  relation: "≤",
  limit: { unit: "1", symbol: "N_in", about: "inputs of the tracker" },
  source: [{ in: "common practice", clause: "one pair of plugs a string, unless a branch or combiner is described", grade: "common-practice" }],
  worse: { "strings[].count": "up", "inverters[].trackers[].inputs": "down" },
});

/** May trackers of this inverter be joined in parallel? @function */
export const joiningAllowed = /* @__PURE__ */ condition({
  id: "string/joining-allowed",
  asks: "May trackers of this inverter be joined in parallel?",
  force: "requirement",
  value: { named: true, about: "what the maker says about joining trackers" },
  relation: "one of",
  limit: { named: true, about: "answers that allow it" },
  source: [{ in: "common practice", clause: "trackers are joined only where the maker declares it", grade: "common-practice" }],
});

/** Is the largest current through what joins the trackers within its rating? @function */
export const currentWithinJoint = /* @__PURE__ */ condition({
  id: "string/current-within-joint",
  asks: "Is the largest current through what joins the trackers within its rating?",
  force: "requirement",
  value: { unit: "A", symbol: "I_max", about: "largest current of the strings that feed through it" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_r", about: "rated current of the plug, branch, switch pole or terminal" },
  source: [{ in: "IEC 62548-1:2023", clause: "component requirements", grade: "memory" }],
});

/** Is the input current declared for joined trackers no more than the trackers take alone, added up? @function */
export const declaredCurrentPlausible = /* @__PURE__ */ condition({
  id: "string/declared-current-plausible",
  asks: "Is the input current declared for joined trackers no more than the trackers take alone, added up?",
  force: "recommendation",
  value: { unit: "A", symbol: "I_joined", about: "largest input current declared for the joined trackers" },
  relation: "≤",
  limit: { unit: "A", symbol: "ΣI_DC,max", about: "largest input currents of the trackers alone, added up" },
  source: [{ in: "common practice", clause: "two equal trackers joined, where the maker allows it, take twice the current", grade: "common-practice" }],
  note: "a declaration above the sum is likely to be a slip",
});
