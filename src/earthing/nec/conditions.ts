import { condition } from "../../formula/index.js";

/**
 * Is the equipment grounding conductor as large as its overcurrent device asks for? @function
 *
 * @example
 * ```ts
 * import { equipmentGroundingLargeEnough } from "pv-to-grid/earthing";
 * equipmentGroundingLargeEnough({ value: "10380 cmil", limit: "10380 cmil" }).verdict; // "met"
 * ```
 */
export const equipmentGroundingLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/equipment-grounding-large-enough",
  asks: "Is the equipment grounding conductor as large as its overcurrent device asks for?",
  force: "requirement",
  value: { unit: "cmil", symbol: "A", about: "area of the conductor" },
  relation: "≥",
  limit: { unit: "cmil", symbol: "A_min", about: "area by table 250.122, enlarged where the conductors are" },
  source: [{ in: "NFPA 70:2017", clause: "250.122", grade: "copied" }, { in: "NFPA 70:2023", clause: "250.122", grade: "copied" }],
  worse: { "routes[].cable.protectiveConductor": "down" },
});

/**
 * Is the grounding electrode conductor large enough? @function
 *
 * @example
 * ```ts
 * import { groundingElectrodeLargeEnough } from "pv-to-grid/earthing";
 * groundingElectrodeLargeEnough({ value: "6530 cmil", limit: "26240 cmil" }).verdict; // "not met"
 * ```
 */
export const groundingElectrodeLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/grounding-electrode-large-enough",
  asks: "Is the grounding electrode conductor large enough?",
  force: "requirement",
  value: { unit: "cmil", symbol: "A", about: "area of the conductor" },
  relation: "≥",
  limit: { unit: "cmil", symbol: "A_min", about: "area by table 250.66 or the electrode" },
  source: [{ in: "NFPA 70:2017", clause: "250.66", grade: "copied" }, { in: "NFPA 70:2023", clause: "250.66", grade: "copied" }],
});

/**
 * Is the bonding jumper large enough? @function
 *
 * @example
 * ```ts
 * import { bondingJumperLargeEnough } from "pv-to-grid/earthing";
 * bondingJumperLargeEnough({ value: "66360 cmil", limit: "66360 cmil" }).verdict; // "met"
 * ```
 */
export const bondingJumperLargeEnough = /* @__PURE__ */ condition({
  id: "earthing/bonding-jumper-large-enough",
  asks: "Is the bonding jumper large enough?",
  force: "requirement",
  value: { unit: "cmil", symbol: "A", about: "area of the conductor" },
  relation: "≥",
  limit: { unit: "cmil", symbol: "A_min", about: "area by table 250.102(C)(1)" },
  source: [
    { in: "NFPA 70:2017", clause: "250.102(C)", grade: "copied" },
    { in: "NFPA 70:2023", clause: "250.102(C)", grade: "copied" },
  ],
});

/**
 * Is the area no larger than the bound of the rule? @function
 *
 * @example
 * ```ts
 * import { areaWithinBound } from "pv-to-grid/earthing";
 * areaWithinBound({ value: "66360 cmil", limit: "26240 cmil" }).verdict; // "not met"
 * ```
 */
export const areaWithinBound = /* @__PURE__ */ condition({
  id: "earthing/area-within-bound",
  asks: "Is the area no larger than the bound of the rule?",
  force: "requirement",
  value: { unit: "cmil", symbol: "A", about: "area of the conductor" },
  relation: "≤",
  limit: { unit: "cmil", symbol: "A_max", about: "bound of the rule" },
  source: [{ in: "NFPA 70:2020", clause: "250.66(A), (B), 250.166", grade: "copied" }],
});

/**
 * Is the size by the table no larger than the conductors of the circuit? @function
 *
 * @example
 * ```ts
 * import { withinCircuitConductor } from "pv-to-grid/earthing";
 * withinCircuitConductor({ value: "10380 cmil", limit: "6530 cmil" }).verdict; // "not met"
 * ```
 */
export const withinCircuitConductor = /* @__PURE__ */ condition({
  id: "earthing/within-circuit-conductor",
  asks: "Is the size by the table no larger than the conductors of the circuit?",
  force: "requirement",
  value: { unit: "cmil", symbol: "A_t", about: "area by the table" },
  relation: "≤",
  limit: { unit: "cmil", symbol: "A", about: "area of the circuit conductors" },
  source: [
    { in: "NFPA 70:2017", clause: "250.122(A)", grade: "copied" },
    { in: "NFPA 70:2023", clause: "250.122(A)", grade: "copied" },
  ],
});

/**
 * Is the exposed metalwork of the array connected to an equipment grounding conductor? @function
 *
 * @example
 * ```ts
 * import { arrayMetalworkGrounded } from "pv-to-grid/earthing";
 * arrayMetalworkGrounded({ value: "listed bonding of frames and racking", limit: ["listed bonding of frames and racking", "conductor to each frame"] }).verdict; // "met"
 * ```
 */
export const arrayMetalworkGrounded = /* @__PURE__ */ condition({
  id: "earthing/array-metalwork-grounded",
  asks: "Is the exposed metalwork of the array connected to an equipment grounding conductor?",
  force: "requirement",
  value: { named: true, about: "connection of the array's metalwork" },
  relation: "one of",
  limit: { named: true, about: "connections that the code allows" },
  source: [{ in: "NFPA 70:2020", clause: "690.43", grade: "copied" }],
});

/**
 * Is the array connected to the grounding electrode system? @function
 *
 * @example
 * ```ts
 * import { arrayElectrodeConnection } from "pv-to-grid/earthing";
 * arrayElectrodeConnection({ value: "a.c. equipment grounding conductor", limit: ["a.c. equipment grounding conductor", "grounding electrode conductor"] }).verdict; // "met"
 * ```
 */
export const arrayElectrodeConnection = /* @__PURE__ */ condition({
  id: "earthing/array-electrode-connection",
  asks: "Is the array connected to the grounding electrode system?",
  force: "requirement",
  value: { named: true, about: "connection to the electrodes" },
  relation: "one of",
  limit: { named: true, about: "connections that the code allows" },
  source: [{ in: "NFPA 70:2020", clause: "690.47(A)", grade: "copied" }],
  note: "the equipment grounding conductor of the inverter output is enough for an array that is not solidly grounded; a solidly grounded one needs a conductor by 250.166",
});
