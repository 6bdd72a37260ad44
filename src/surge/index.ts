/**
 * Surge protection: when it is needed, which device, and how it is placed.
 *
 * @packageDocumentation
 */
export * from "./device/conditions.js";
export * from "./device/impulse-withstand.js";
export * from "./device/levels.js";
export * from "./device/type-by-lightning.js";
export * from "./need/critical-length.js";
export * from "./need/risk-level.js";
export * from "./separation/distance.js";
