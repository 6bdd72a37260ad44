import { condition } from "../../formula/index.js";

/**
 * Is the insulation of the isolated supply monitored? @function
 *
 * @example
 * ```ts
 * import { insulationMonitored } from "pv-to-grid/protection";
 * insulationMonitored({ value: "none", limit: ["present"] }).verdict; // "not met"
 * ```
 */
export const insulationMonitored = /* @__PURE__ */ condition({
  id: "protection/insulation-monitored",
  asks: "Is the insulation of the isolated supply monitored?",
  force: "requirement",
  value: { named: true, about: "insulation monitoring" },
  relation: "one of",
  limit: { named: true, about: "what an IT supply asks for" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.6.3", grade: "memory" }],
});

/**
 * Is a second fault of the isolated supply disconnected in time? @function
 *
 * @example
 * ```ts
 * import { secondFaultDisconnects } from "pv-to-grid/protection";
 * secondFaultDisconnects({ value: "0.6 Ω", limit: "1.2 Ω" }).verdict; // "met"
 * ```
 */
export const secondFaultDisconnects = /* @__PURE__ */ condition({
  id: "protection/second-fault-disconnects",
  asks: "Is a second fault of the isolated supply disconnected in time?",
  force: "requirement",
  value: { unit: "Ω", symbol: "Z_s", about: "impedance of the fault loop" },
  relation: "≤",
  limit: { unit: "Ω", symbol: "U / (2 I_a)", about: "largest loop impedance for a second fault" },
  source: [{ in: "IEC 60364-4-41:2017", clause: "411.6.4", grade: "memory" }],
});

/**
 * Is the direct current side protected by double insulation? @function
 *
 * @example
 * ```ts
 * import { directCurrentSideProtected } from "pv-to-grid/protection";
 * directCurrentSideProtected({ value: "class II", limit: ["class II"] }).verdict; // "met"
 * ```
 */
export const directCurrentSideProtected = /* @__PURE__ */ condition({
  id: "protection/direct-current-side-protected",
  asks: "Is the direct current side protected by double insulation?",
  force: "requirement",
  value: { named: true, about: "protection class of modules, cables and inverter input" },
  relation: "one of",
  limit: { named: true, about: "what protects the direct current side" },
  source: [{ in: "IEC 60364-7-712:2017", clause: "712.410.102", grade: "memory" }],
});
