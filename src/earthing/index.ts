/**
 * Protective and bonding conductors, earthing conductors, earth electrodes and soil.
 *
 * @packageDocumentation
 */
export { adiabaticSection } from "./adiabatic/section.js";
export {
  chooseProtectiveConductor,
  type ProtectiveConductorChoice,
  type ProtectiveConductorQuestion,
  type ProtectivePlacing,
} from "./protective-conductor/choice.js";
export {
  protectiveConductorFollowsLine,
  protectiveConductorWithstands,
  separateConductorLargeEnough,
} from "./protective-conductor/conditions.js";
export {
  protectiveConductorOfOtherMaterial,
  protectiveConductorSection,
} from "./protective-conductor/from-line-conductor.js";
export { iec60364_5_54_2011_separate_minimum } from "./protective-conductor/minimum.js";
