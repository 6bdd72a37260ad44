import type { Grade } from "./grade.js";
import type { SourceKey } from "./bibliography.js";

/** What a rule or value claims to follow, and where it was seen. */
export interface Citation {
  /** Key of the publication in the bibliography, edition included. */
  readonly in: SourceKey;
  /** Clause, table, equation or page. */
  readonly clause: string;
  /** How the value is held. */
  readonly grade: Grade;
  /** Where it was seen, if not in the publication itself: a key of the bibliography, then the place. */
  readonly seen?: SourceKey | `${SourceKey}, ${string}`;
}
