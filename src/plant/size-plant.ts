import type { Check } from "../formula/index.js";
import { standingCautions } from "./cautions.js";
import type { Plant, PlantDescription } from "./description/plant-description.js";
import { plantOf } from "./description/read-plant.js";
import { practices, type Rules } from "./description/rules.js";
import type { Outcome, PlantRecord } from "./record/record.js";
import { RECORD_FORMAT, recordedVerdict } from "./record/record.js";
import { makeRecorder } from "./record/recorder.js";
import { sizeAcSide } from "./sizing/ac-side.js";
import { designArrays } from "./sizing/arrays.js";
import { sizeDcSide } from "./sizing/dc-side.js";
import { beginSizing } from "./sizing/sizing.js";
import { VERSION } from "./version.js";

/** What a sizing leaves out. */
export interface SizingOptions {
  /** `false` leaves the steps out of the record, and nothing else; `explain` gives them back. */
  readonly working?: boolean;
}

function rulesOf({ rules, practice }: Plant): Rules {
  return rules ?? practices[practice!];
}

/**
 * Sizes a plant from its module to the grid connection: chooses what the description leaves to choice, verifies what it
 * states, and leaves open what it does not say.
 *
 * @param description - a plant description, as `readPlant` accepts it
 * @returns the sizing record: frozen plain JSON with every check, its working and its sources
 * @throws InputError with every problem of the description at once
 * @example
 * ```ts
 * import { sizePlant } from "pv-to-grid";
 * const record = sizePlant(plant);
 * record.outcome.verdict; // "open"
 * ```
 */
export function sizePlant(description: PlantDescription, { working = true }: SizingOptions = {}): PlantRecord {
  const plant = plantOf(description);
  const sizing = beginSizing(plant, rulesOf(plant));
  const recorder = makeRecorder();
  const arrays = designArrays(sizing);
  const dc = sizeDcSide(sizing, arrays, recorder);
  const ac = sizeAcSide(sizing, dc.groups, recorder);
  const checks = sizing.checks.map(recorder.check);
  const { rules, toDo, chosen, verified, assumptions, cautions } = sizing;
  const record: PlantRecord = {
    format: RECORD_FORMAT,
    library: VERSION,
    plant: structuredClone(description),
    rules,
    outcome: outcomeOf(sizing.checks),
    toDo,
    chosen,
    verified,
    strings: dc.strings,
    trackers: dc.trackers,
    routes: [...dc.routes, ...ac.routes],
    findings: [...dc.findings, ...ac.findings],
    grid: ac.grid,
    readings: dc.readings,
    checks,
    assumptions: assumptions.map(recorder.assumption),
    cautions: [...standingCautions, ...cautions],
    sources: recorder.sources(),
    declarations: recorder.declarations(),
    ...(working ? { steps: recorder.steps() } : {}),
  };
  return frozen(record);
}

function outcomeOf(checks: readonly Check[]): Outcome {
  const count = (verdict: Check["verdict"], force: Check["rule"]["force"]): number =>
    checks.filter((check) => check.verdict === verdict && check.rule.force === force).length;
  const notMet = count("not met", "requirement");
  const open = count("open", "requirement");
  return {
    verdict: recordedVerdict(notMet > 0 ? "not met" : open > 0 ? "open" : "met"),
    met: count("met", "requirement"),
    notMet,
    open,
    recommendationsNotMet: count("not met", "recommendation"),
    yieldNotMet: count("not met", "yield"),
    restsOnMemory: checks.filter(({ grade }) => grade === "memory").map(({ id }) => id),
  };
}

function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  for (const item of Object.values(value)) frozen(item);
  return Object.freeze(value);
}
