import type { Condition } from "../formula/condition.js";
import type { ConditionDeclaration } from "../formula/declaration.js";
import type { Formula } from "../formula/formula.js";
import type { Model } from "../formula/model.js";
import type { Series } from "../formula/series.js";
import type { Table } from "../formula/table.js";
import type { Unit } from "../quantity/units.js";
import * as subjects from "./subjects.js";

type AnyFormula = Formula<unknown, Unit>;
type AnyTable = Table<Readonly<Record<string, unknown>>, unknown>;
type AnyModel = Model<unknown, Unit>;
type AnyCondition = Condition<ConditionDeclaration>;

/** A declared rule of any kind. */
export type Rule = AnyFormula | AnyTable | Series | AnyCondition | AnyModel;

/** A function of a subject that is not a declared rule; its id is its folder and its name. */
export interface Calculation {
  readonly kind: "calculation";
  readonly id: string;
  /** The function itself. */
  readonly call: (...inputs: readonly unknown[]) => unknown;
}

/** What a subject exports, by id. */
export interface Catalogue {
  readonly rules: ReadonlyMap<string, Rule>;
  readonly calculations: ReadonlyMap<string, Calculation>;
}

const KINDS: readonly string[] = ["formula", "table", "series", "condition", "model"];

function isRule(value: unknown): value is Rule {
  return (
    (typeof value === "function" || (typeof value === "object" && value !== null)) &&
    "kind" in value &&
    KINDS.includes(value.kind as string) &&
    "declaration" in value
  );
}

/** Folder and name as an id has them: `openCircuitVoltageAt` of `module` is `module/open-circuit-voltage-at`. */
export function idOf(subject: string, name: string): string {
  const words = name.replace(/_/g, "-").replace(/([a-z0-9])([A-Z])/g, "$1-$2");
  return `${subject}/${words.toLowerCase()}`;
}

/** Collects the rules and calculations of subjects, by folder; folders and ids in the order of the alphabet. */
export function collect(folders: Readonly<Record<string, Readonly<Record<string, unknown>>>>): Catalogue {
  const rules = new Map<string, Rule>();
  const calculations = new Map<string, Calculation>();
  for (const [subject, face] of Object.entries(folders).sort(([a], [b]) => (a < b ? -1 : 1))) {
    for (const [name, value] of Object.entries(face)) {
      if (isRule(value)) rules.set(value.id, value);
      else if (typeof value === "function") {
        const id = idOf(subject, name);
        calculations.set(id, { kind: "calculation", id, call: value as Calculation["call"] });
      }
    }
  }
  return { rules: sorted(rules), calculations: sorted(calculations) };
}

function sorted<T>(map: ReadonlyMap<string, T>): ReadonlyMap<string, T> {
  return new Map([...map].sort(([a], [b]) => (a < b ? -1 : 1)));
}

let whole: Catalogue | undefined;

/** Everything that the library declares and exports. */
export function catalogue(): Catalogue {
  return (whole ??= collect(subjects));
}
