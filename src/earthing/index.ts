/**
 * Protective and bonding conductors, earthing conductors, earth electrodes, soil and ground grids.
 *
 * @packageDocumentation
 */
export * from "./adiabatic/a-54-2.js";
export * from "./adiabatic/a-54-3.js";
export * from "./adiabatic/a-54-4.js";
export * from "./adiabatic/a-54-5.js";
export * from "./adiabatic/a-54-6.js";
export * from "./adiabatic/bs7671-54-5.js";
export * from "./adiabatic/factor.js";
export * from "./adiabatic/materials.js";
export * from "./adiabatic/protective-factor.js";
export * from "./adiabatic/section.js";
export * from "./bonding/array-bonding.js";
export * from "./bonding/array-choice.js";
export * from "./bonding/main-bonding.js";
export * from "./bonding/main-choice.js";
export type { SectionChoice } from "./chosen-section.js";
export * from "./earthing-conductor/choice.js";
export * from "./earthing-conductor/conditions.js";
export * from "./earthing-conductor/minimum.js";
export * from "./electrode/buried-conductor.js";
export * from "./electrode/combined.js";
export * from "./electrode/first-estimate.js";
export * from "./electrode/plate.js";
export * from "./electrode/rod-groups.js";
export * from "./electrode/rod.js";
export * from "./electrode/two-rods.js";
export * from "./ground-grid/conductor.js";
export * from "./ground-grid/decrement.js";
export * from "./ground-grid/electrode-current.js";
export * from "./ground-grid/materials.js";
export * from "./ground-grid/mesh.js";
export * from "./nec/areas.js";
export * from "./nec/conditions.js";
export * from "./nec/direct-current.js";
export * from "./nec/equipment-grounding.js";
export * from "./nec/grounding-electrode.js";
export * from "./nec/table-250-122.js";
export * from "./nec/table-250-66.js";
export * from "./nec/withstand.js";
export * from "./protective-conductor/asnzs-choice.js";
export * from "./protective-conductor/asnzs3000-5-1.js";
export * from "./protective-conductor/choice.js";
export * from "./protective-conductor/conditions.js";
export * from "./protective-conductor/from-line-conductor.js";
export * from "./protective-conductor/minimum.js";
export * from "./protective-conductor/pen-proof.js";
export * from "./protective-conductor/pen.js";
export * from "./soil/resistivity.js";
export * from "./soil/wenner.js";
export * from "./systems.js";
