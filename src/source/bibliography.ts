import { courses } from "./courses.js";
import { handbooks } from "./handbooks.js";
import { iec } from "./iec.js";
import { national } from "./national.js";
import { northAmerica } from "./north-america.js";
import type { Source } from "./source.js";

/** Every publication that the library cites, by key. */
export const bibliography: Readonly<Record<SourceKey, Source>> = {
  ...iec,
  ...national,
  ...northAmerica,
  ...handbooks,
  ...courses,
};

/** Key of a publication: its designation and edition, or a short name for those without one. */
export type SourceKey =
  keyof typeof iec | keyof typeof national | keyof typeof northAmerica | keyof typeof handbooks | keyof typeof courses;

/** The publication behind a key. */
export function sourceOf(key: SourceKey): Source {
  return bibliography[key];
}
