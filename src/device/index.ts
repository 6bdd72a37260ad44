/**
 * Overcurrent and residual current devices: standard ratings, tripping bands, conventional and operating currents.
 *
 * @packageDocumentation
 */
export * from "./lists.js";
export * from "./ratings/breaking-capacity.js";
export * from "./ratings/device-ratings.js";
export * from "./ratings/fuses.js";
export * from "./ratings/industrial-series.js";
export * from "./ratings/miniature-breakers.js";
export * from "./ratings/nfpa70-240-6.js";
export * from "./ratings/residual-current.js";
export * from "./tripping/bands.js";
export * from "./tripping/conventional-currents.js";
export * from "./tripping/conventional-tripping.js";
export * from "./tripping/disconnecting-current.js";
export * from "./tripping/fuse-operating-currents.js";
export * from "./tripping/instantaneous-time.js";
export * from "./tripping/magnetic-trip.js";
export * from "./tripping/residual-break-times.js";
