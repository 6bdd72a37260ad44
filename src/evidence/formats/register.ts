import { z } from "zod";

const text = z.string().min(1);

const clause = z.strictObject({
  in: text.describe("key of the publication in the bibliography, edition included"),
  clause: text,
  words: text.describe("the rule in the project's own words"),
  applies: text.describe("when it applies"),
  implemented: z.enum(["in full", "in part", "not"]),
  by: z.array(z.string()).describe("ids of the rules that follow it; none where it is not implemented"),
  supersededBy: z.string().nullable().describe("key of the publication that replaces it"),
});

/** Clauses that somebody compared as a whole with what the rules do. */
export const clausesSchema = z.array(clause);

/** A clause and how far it is implemented. */
export type ClauseEntry = z.infer<typeof clause>;

const release = z.strictObject({
  releases: text.describe("from the first to the last release that gave it"),
  rule: text,
  gave: text,
  due: text,
  effect: text.describe("what it could have led to"),
  foundBy: text,
  fixedIn: text,
});

/** Releases that gave a wrong number. */
export const wrongReleasesSchema = z.array(release);

/** A release of this library that was wrong. */
export type WrongRelease = z.infer<typeof release>;
