import { z } from "zod";
import { rounding } from "./case.js";
import { seen } from "./citation.js";

const text = z.string().min(1);
const values = z.record(z.string(), z.union([z.string(), z.array(z.string())]));

const copy = z.strictObject({
  id: text,
  table: text.describe("id of the table or series"),
  by: z.literal("copy"),
  seen,
  columns: z
    .array(z.array(z.string()))
    .exactOptional()
    .describe("heading values of each column of cells, in the order of the table's headings"),
  cells: z
    .array(z.string())
    .describe("one line a row: its heading, then its cells, two or more spaces apart; – where nothing is compared"),
  note: z.string().exactOptional(),
});

const step = z.strictObject({
  below: z.string().exactOptional().describe("the step holds for computed values below this"),
  is: z.string().describe("the step to which values are rounded"),
});

const formula = z.strictObject({
  id: text,
  table: text,
  by: z.literal("formula"),
  seen,
  rule: text.describe("id of the formula"),
  row: z.string().describe("key of the formula that the row heading feeds; empty where perRow gives all"),
  fixed: values.exactOptional(),
  perColumn: z
    .record(z.string(), values)
    .exactOptional()
    .describe("by the values of a column joined by ' | '; columns left out are not compared"),
  perRow: z.record(z.string(), values).exactOptional().describe("by row heading; rows left out are not compared"),
  rounding,
  digits: z
    .number()
    .int()
    .nullable()
    .exactOptional()
    .describe("decimals to which the law is rounded; null for the digits as printed"),
  steps: z
    .array(step)
    .exactOptional()
    .describe("where the law is rounded to a step other than a decimal, such as 0.5 below 20"),
  except: z.array(z.strictObject({ cell: text, why: text })).exactOptional(),
  note: z.string().exactOptional(),
});

/** What guards the cells of a table apart from the file that they were typed from. */
export const guardSchema = z
  .discriminatedUnion("by", [copy, formula])
  .describe("A second publication of a table, or the law that its cells follow.");

/** What guards the cells of a table apart from its transcription. */
export type Guard = z.infer<typeof guardSchema>;
/** A guard that is another publication of the table. */
export type CopyGuard = z.infer<typeof copy>;
/** A guard that is the law which the cells follow. */
export type FormulaGuard = z.infer<typeof formula>;
