/**
 * Protection: overload, fault level and withstand, disconnection, residual current, boards fed from two sides.
 *
 * @packageDocumentation
 */
export { type BreakerChoice, type BreakerQuestion, chooseBreaker } from "./overload/breaker.js";
export {
  designCurrentWithinCorrectedRating,
  designCurrentWithinRating,
  ratingWithinAmpacity,
  ratingWithinLargestDevice,
  trippingWithinOverload,
} from "./overload/conditions.js";
export { inverterOutputCurrent, type InverterOutput } from "./overload/inverter-output.js";
export { correctedDeviceRating, toleratedOverload, uncorrectedDeviceLoad } from "./overload/limits.js";
export {
  continuousCurrentWithinRating,
  necDeviceCurrent,
  ratingProtectsConductor,
  ratingWithinSmallConductorLimit,
  withinNextSizeRule,
} from "./overload/nec.js";
export { ampacityWithinRating, largestProtectingRating } from "./overload/nec-largest-rating.js";
export {
  largestSinglePhaseOutputCurrent,
  largestThreePhaseOutputCurrent,
  singlePhaseOutputCurrent,
  threePhaseOutputCurrent,
} from "./overload/output-current.js";
export { type FaultLoop, faultLoop, type LoopSource, type LoopStretch } from "./shock/fault-loop.js";
export { loopImpedance, loopImpedanceByAddition, loopReactance, loopResistance } from "./shock/loop.js";
export { earthFaultCurrent, largestLoopImpedance, loopDisconnects } from "./shock/tn-condition.js";
