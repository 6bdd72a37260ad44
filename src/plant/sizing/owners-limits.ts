import { condition } from "../../formula/index.js";

/** Does the d.c. voltage drop stay within what the owner asks for? @function */
export const dcDropWithinOwnersLimit = /* @__PURE__ */ condition({
  id: "plant/dc-drop-within-owners-limit",
  asks: "Does the d.c. voltage drop stay within what the owner asks for?",
  force: "recommendation",
  value: { unit: "%", symbol: "ΔU/U_MPP", about: "voltage drop at rated current, as a share of the string's voltage" },
  relation: "≤",
  limit: { unit: "%", symbol: "limit", about: "largest drop that the owner asks for" },
  source: [{ in: "common practice", clause: "a limit of the plant's owner", grade: "common-practice" }],
  worse: { "limits.dcDrop": "down" },
});

/** Does the a.c. voltage rise stay within what the owner asks for? @function */
export const acRiseWithinOwnersLimit = /* @__PURE__ */ condition({
  id: "plant/ac-rise-within-owners-limit",
  asks: "Does the a.c. voltage rise stay within what the owner asks for?",
  force: "recommendation",
  value: { unit: "%", symbol: "ΔU/U_n", about: "voltage rise at rated current, as a share of the nominal voltage" },
  relation: "≤",
  limit: { unit: "%", symbol: "limit", about: "largest rise that the owner asks for" },
  source: [{ in: "common practice", clause: "a limit of the plant's owner", grade: "common-practice" }],
  worse: { "limits.acRise": "down" },
});
