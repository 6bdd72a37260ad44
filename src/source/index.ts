/**
 * The bibliography: one entry a published source, with its edition, and the grades by which values are held.
 *
 * @packageDocumentation
 */
export { bibliography, sourceOf, type SourceKey } from "./bibliography.js";
export type { Citation } from "./citation.js";
export { bestGrade, type Grade, grades, weaker } from "./grade.js";
export type { Source } from "./source.js";
