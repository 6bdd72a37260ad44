import { z } from "zod";
import { grades } from "../../source/grade.js";

export const grade = z.enum(grades);

/** What a source claims to follow. */
export const claimed = z.strictObject({
  in: z.string().min(1).describe("key of the publication in the bibliography, edition included"),
  clause: z.string(),
});

/** Where a value was seen, and how it is held. */
export const seen = z.strictObject({
  in: z.string().min(1).describe("key of the publication in the bibliography, edition included"),
  place: z.string().describe("page, example or table"),
  grade,
});
