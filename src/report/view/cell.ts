import type { RecordedNumber } from "../../plant/index.js";

/** A value in a table of results, in terms that every format can print. */
export type Cell =
  | { readonly kind: "number"; readonly number: RecordedNumber; readonly percent?: boolean }
  | {
      readonly kind: "fact";
      /** Path of the description that states it. */
      readonly path: string;
      readonly text: string;
      readonly statedIn: string | null;
    }
  | {
      /** Reckoned by the report from numbers of the record. */
      readonly kind: "made";
      readonly value: string;
      readonly unit: string;
      readonly about: string;
      readonly equation: string;
      readonly substituted: string;
      readonly from: readonly RecordedNumber[];
    }
  | { readonly kind: "words"; readonly text: string };

/** One line of a table of results. */
export interface Row {
  readonly label: string;
  /** Symbol of the quantity, such as `U_OC`. */
  readonly symbol?: string;
  readonly cells: readonly Cell[];
  /** Whether the library chose it. */
  readonly chosen?: boolean;
  /** Ids of the checks that fixed it. */
  readonly fixedBy?: readonly string[];
}

export const words = (text: string): Cell => ({ kind: "words", text });

/** A recorded number, or nothing where it is not known. */
export function numbers(...found: readonly (RecordedNumber | null | undefined)[]): readonly Cell[] {
  return found.flatMap((number) => (number ? [{ kind: "number" as const, number }] : []));
}

export const percent = (number: RecordedNumber | null): readonly Cell[] =>
  number ? [{ kind: "number", number, percent: true }] : [];

/** The rows that have something to show. */
export function filled(rows: readonly Row[]): readonly Row[] {
  return rows.filter(({ cells }) => cells.length > 0);
}
