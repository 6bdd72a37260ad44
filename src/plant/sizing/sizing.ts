import { type Check, type Known, missing, type Missing } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Plant } from "../description/plant-description.js";
import type { Rules } from "../description/rules.js";
import type { ToDo } from "../record/record.js";

/** What one sizing gathers while it walks from the module to the grid. */
export interface Sizing {
  readonly plant: Plant;
  readonly rules: Rules;
  readonly checks: Check[];
  readonly toDo: ToDo[];
  /** Paths of the description that the library chose. */
  readonly chosen: string[];
  /** Paths of stated choices that the library verified. */
  readonly verified: string[];
  readonly assumptions: Quantity[];
  readonly cautions: string[];
}

/** A fresh gathering for one plant. */
export function beginSizing(plant: Plant, rules: Rules): Sizing {
  return { plant, rules, checks: [], toDo: [], chosen: [], verified: [], assumptions: [], cautions: [] };
}

/** A finding of the description, or which path is missing. */
export function finding<T>(value: T | undefined, path: string): Known<T> {
  return value === undefined ? missing(path) : value;
}

/** Adds what must be done, once. */
export function remind({ toDo }: Sizing, item: ToDo): void {
  if (!toDo.some(({ kind, text }) => kind === item.kind && text === item.text)) toDo.push(item);
}

/** Adds a caution, once. */
export function caution({ cautions }: Sizing, text: string): void {
  if (!cautions.includes(text)) cautions.push(text);
}

/** Notes whether a choice of the description was made here or verified. */
export function noteChoice({ chosen, verified }: Sizing, path: string, stated: unknown): void {
  (stated === undefined || stated === "choose" ? chosen : verified).push(path);
}

export type { Known, Missing };
