/**
 * Protection: overload, fault level and withstand, disconnection, residual current, boards fed from two sides.
 *
 * @packageDocumentation
 */
export * from "./overload/breaker.js";
export * from "./overload/conditions.js";
export * from "./overload/inverter-output.js";
export * from "./overload/limits.js";
export * from "./overload/nec-largest-rating.js";
export * from "./overload/nec.js";
export * from "./overload/output-current.js";
export * from "./shock/fault-loop.js";
export * from "./shock/loop.js";
export * from "./shock/tn-condition.js";
