/** One publication in one edition. */
export interface Source {
  readonly title: string;
  /** Who published it; examples of one publisher count as one publisher in the audit. */
  readonly publisher: string;
  /** Year of the edition; `null` where none is stated. */
  readonly year: number | null;
  /** Standard, law, handbook, paper, catalogue, magazine, course, data set, trade practice. */
  readonly kind:
    "standard" | "law" | "handbook" | "paper" | "catalogue" | "magazine" | "course" | "agency" | "dataset" | "practice";
  readonly address?: string;
  /** What a reader must know before leaning on it. */
  readonly note?: string;
}

/** Publications by key; the type holds the keys only. */
export function sources<const K extends string>(entries: Readonly<Record<K, Source>>): Readonly<Record<K, Source>> {
  return entries;
}
