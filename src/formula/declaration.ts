import type { Domain } from "../quantity/domain.js";
import type { Unit } from "../quantity/units.js";
import type { Citation } from "../source/citation.js";

/** A symbol that a rule takes: one quantity. */
export interface ScalarSymbol extends Domain {
  readonly unit: Unit;
  /** As it is printed, such as `U_OC`; an underscore begins the subscript. */
  readonly symbol: string;
  readonly about: string;
}

/** A symbol that a rule takes: a list of quantities of one kind. */
export interface ListSymbol extends Domain {
  readonly each: Unit;
  readonly symbol: string;
  readonly about: string;
}

/** A fixed number of a rule, with its own source. */
export interface Constant {
  readonly value: string;
  readonly unit: Unit;
  readonly symbol: string;
  readonly about: string;
  readonly source: readonly Citation[];
}

/** A condition between the symbols of a rule, without which it must not be used. */
export interface Requirement {
  readonly that: string;
  readonly because: string;
}

/** What every declared rule carries. */
export interface Declaration {
  /** Folder and name, such as `string/cold-voltage`. */
  readonly id: string;
  readonly about: string;
  readonly source: readonly Citation[];
}

/** A rule of arithmetic, as data. Every number in its expression beyond 0, 1, 2, 3, 100 and 1000 is a named constant. */
export interface FormulaDeclaration extends Declaration {
  readonly takes: Readonly<Record<string, ScalarSymbol | ListSymbol>>;
  readonly constants?: Readonly<Record<string, Constant>>;
  readonly gives: { readonly unit: Unit; readonly symbol: string };
  readonly expression: string;
  readonly requires?: readonly Requirement[];
  /** Why no publication proves it, where none does. */
  readonly unproven?: Unproven;
  readonly note?: string;
}

/** The reasons by which a rule may stay unproven. */
export type Unproven =
  | { readonly because: "definition" | "composition only" }
  | { readonly because: "no publication found"; readonly sought: string };

/** A double-precision method, as data but for the method itself. */
export interface ModelDeclaration extends Declaration {
  readonly takes: Readonly<Record<string, ScalarSymbol>>;
  readonly gives: { readonly unit: Unit; readonly symbol: string };
  /** Significant digits of the result that can be trusted. */
  readonly digits: number;
  readonly method: string;
}

/** What a row of a table is found by: a number with a unit, or a name from a list. */
export type RowHeading =
  | {
      readonly name: string;
      readonly unit: Unit;
      readonly symbol: string;
      readonly about?: string;
      readonly above?: number;
      readonly from?: number;
      readonly below?: number;
      readonly to?: number;
    }
  | { readonly name: string; readonly names: "in the first column"; readonly about?: string };

/** How a row is found for a number that is not tabulated; the rules never extrapolate. */
export type RowRule = "exact" | "next above" | "next below" | "between";

/** A published table: its cells are its transcription. */
export interface TableDeclaration extends Declaration {
  /** The conditions that the table's values hold for; a factor of another base is refused. */
  readonly base?: Readonly<Record<string, string>>;
  readonly rows: RowHeading;
  readonly rowRule: RowRule;
  /** Headings and their values; the last one varies fastest along a line of cells. */
  readonly columns?: Readonly<Record<string, readonly string[]>>;
  readonly gives:
    { readonly unit: Unit; readonly symbol: string } | { readonly names: string; readonly symbol: string };
  /** One line a row: its heading, then its cells, two or more spaces apart; `–` where nothing is tabulated. */
  readonly cells: string;
  /** Cells held otherwise than the whole table: `row` or `row | column | column`, by grade. */
  readonly cellGrades?: Readonly<Partial<Record<Citation["grade"], readonly string[]>>>;
  /** Cells in which copies differ: what ships, what the others print, and why. */
  readonly differences?: readonly TableDifference[];
  readonly note?: string;
}

/** A cell in which copies of a table differ, what ships and why. */
export interface TableDifference {
  readonly cell: string;
  readonly ships: string;
  readonly others: string;
  readonly why: string;
}

/** A standard series of sizes. */
export interface SeriesDeclaration extends Declaration {
  readonly unit: Unit;
  readonly symbol: string;
  readonly sizes: string;
}

/** What a check weighs: a safety or legal requirement, a recommendation, or yield only. */
export type Force = "requirement" | "recommendation" | "yield";

/** How a condition compares its value with its limit. */
export type Relation = "<" | "≤" | "≥" | ">" | "=" | "one of";

/** One side of a condition between quantities. */
export interface Side {
  readonly unit: Unit;
  readonly symbol: string;
  readonly about: string;
}

/** One side of a condition on a closed list. */
export interface NamedSide {
  readonly named: true;
  readonly about: string;
}

/** Which way a plant input makes a check worse; `either` where it has two effects. */
export type Worse = "up" | "down" | "either";

/** A comparison that yields a check. */
export interface ConditionDeclaration extends Omit<Declaration, "about"> {
  /** The question that the check asks. */
  readonly asks: string;
  readonly force: Force;
  readonly value: Side | NamedSide;
  readonly relation: Relation;
  readonly limit: Side | NamedSide;
  readonly worse?: Readonly<Record<string, Worse>>;
  readonly note?: string;
}
