/**
 * Protection: overload, fault level and withstand, disconnection, residual current, boards fed from two sides.
 *
 * @packageDocumentation
 */
export * from "./board/feeds.js";
export * from "./board/two-feeds.js";
export * from "./conventional/length.js";
export * from "./conventional/longest.js";
export * from "./fault-level/breaking.js";
export * from "./fault-level/conditions.js";
export * from "./fault-level/current.js";
export * from "./fault-level/network.js";
export * from "./fault-level/selectivity-ratio.js";
export * from "./fault-level/three-phase.js";
export * from "./fault-level/transformer.js";
export * from "./overload/breaker.js";
export * from "./overload/conditions.js";
export * from "./overload/inverter-output.js";
export * from "./overload/limits.js";
export * from "./overload/nec-largest-rating.js";
export * from "./overload/nec-next-size.js";
export * from "./overload/nec.js";
export * from "./overload/output-current.js";
export * from "./residual/choice.js";
export * from "./residual/conditions.js";
export * from "./residual/operating-current.js";
export * from "./residual/share.js";
export * from "./shock/disconnection-time.js";
export * from "./shock/disconnection.js";
export * from "./shock/distribution-times.js";
export * from "./shock/fault-loop.js";
export * from "./shock/it-condition.js";
export * from "./shock/length.js";
export * from "./shock/loop.js";
export * from "./shock/measured-limit.js";
export * from "./shock/table-edge.js";
export * from "./shock/times-2005.js";
export * from "./shock/times-2017.js";
export * from "./shock/tn-condition.js";
export * from "./shock/touch-voltage.js";
export * from "./shock/tt-condition.js";
export * from "./shock/voltage-factor.js";
export * from "./transformer/conditions.js";
export * from "./transformer/proof.js";
export * from "./withstand/energy.js";
export * from "./withstand/proof.js";
export * from "./withstand/table-43a.js";
