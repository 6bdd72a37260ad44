/**
 * Surge protection: when it is needed, which device, and how it is placed.
 *
 * @packageDocumentation
 */
export * from "./device/ac-device.js";
export * from "./device/conditions.js";
export { dcSurgeProtection, type DcSurgeDevice, type DcSurgeQuestion, type SurgeVerdict } from "./device/dc-device.js";
export * from "./device/impulse-withstand.js";
export * from "./device/levels.js";
export { type SurgeMounting } from "./device/mounting.js";
export * from "./device/type-by-lightning.js";
export { typesFor, type SurgePlace } from "./device/type-choice.js";
export * from "./limits.js";
export * from "./lists.js";
export * from "./need/ac-need.js";
export * from "./need/critical-length.js";
export * from "./need/dc-need.js";
export * from "./need/risk-level.js";
export * from "./separation/cautions.js";
export * from "./separation/distance.js";
