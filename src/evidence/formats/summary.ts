import { z } from "zod";
import { changeSchema } from "./change.js";
import { grade } from "./citation.js";
import { erratumSchema } from "./erratum.js";

const count = z.number().int().min(0);
const byGrade = z.partialRecord(grade, count);

const tally = z.strictObject({
  formulas: z.strictObject({ all: count, proven: count, partly: count, unproven: count, byGrade }),
  cells: z.strictObject({
    all: count,
    guarded: z.strictObject({ copy: count, formula: count, example: count, none: count }),
    shiftNoticed: count,
    byGrade,
  }),
  constants: z.strictObject({ all: count, byGrade }),
  examples: z.strictObject({ counting: count, publishers: count }),
  cases: z.strictObject({
    all: count,
    agree: count,
    deviate: count,
    disputed: count,
    counting: count,
    notCounting: z.record(z.string(), count),
  }),
  largestShareOfTolerance: z.strictObject({ share: z.string(), case: z.string() }).nullable(),
});

/** The figures of one subject. */
export type Tally = z.infer<typeof tally>;

const weak = z.strictObject({
  id: z.string(),
  kind: z.enum(["formula", "model", "table", "series", "condition", "constant"]),
  why: z.string(),
  usedByChecks: z.array(z.string()),
  safety: z.boolean(),
});

/** Something that nobody has checked, and why. */
export type Weak = z.infer<typeof weak>;

/** The audit in figures, per subject and in total. */
export const summarySchema = z
  .strictObject({
    format: z.literal("pv-to-grid/audit@1"),
    library: z.string(),
    lock: z.string().regex(/^sha256:[0-9a-f]{64}$/),
    total: tally,
    subjects: z.record(z.string(), tally),
    weak: z.array(weak),
    changes: z.array(changeSchema),
    errata: z.array(erratumSchema),
  })
  .describe("What is proven, guarded and weak, in figures.");

/** The figures of an audit, per subject and in total. */
export type AuditSummary = z.infer<typeof summarySchema>;
