/**
 * The search for the best stringing: which strings on which trackers, exactly, by a stated ranking rule.
 *
 * @packageDocumentation
 */
export type { Blocked, Layout } from "./blocked.js";
export { findStringings, type Stringing, type Stringings, type StringingString } from "./find-stringings.js";
export type { StringingInput, StringingInverter, StringingRoof, StringingTracker } from "./input.js";
export { rankingRule, type Score } from "./ranking.js";
