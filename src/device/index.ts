/**
 * Overcurrent and residual current devices: standard ratings, tripping bands, conventional and operating currents.
 *
 * @packageDocumentation
 */
export * from "./lists.js";
export { breakingCapacities } from "./ratings/breaking-capacity.js";
export { deviceRatings } from "./ratings/device-ratings.js";
export { fuseRatings, fuseRatingsWithIntermediate, stringFuseRatings } from "./ratings/fuses.js";
export { industrialRatings, switchRatings } from "./ratings/industrial-series.js";
export { breakerRatings } from "./ratings/miniature-breakers.js";
export * from "./ratings/nfpa70-240-6.js";
export { residualCurrentRatings, residualDeviceRatings } from "./ratings/residual-current.js";
export { iec60898_1_2015_trip_bands } from "./tripping/bands.js";
export {
  breakerConventionalTrippingCurrent,
  fuseConventionalTrippingCurrent,
  mouldedCaseConventionalTrippingCurrent,
  stringFuseConventionalTrippingCurrent,
} from "./tripping/conventional-currents.js";
export { conventionalTripping } from "./tripping/conventional-tripping.js";
export { disconnectingCurrent, type DisconnectingDevice } from "./tripping/disconnecting-current.js";
export { iec60269_1_2006_gg_operating_currents } from "./tripping/fuse-operating-currents.js";
export { instantaneousTripCurrent } from "./tripping/magnetic-trip.js";
export { iec61008_1_2010_break_times } from "./tripping/residual-break-times.js";
