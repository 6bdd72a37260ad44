import { z } from "zod";
import { claimed, seen } from "./citation.js";

const printed = z.union([z.string(), z.array(z.string()), z.boolean()]);

const input = z.union([
  z.strictObject({ printed: printed.describe("as the source prints it, unit included") }),
  z.strictObject({
    unprinted: printed.describe("a value that the source does not print; the case then never counts"),
    why: z.string().min(1),
  }),
]);

/** How a source brought a value to its printed digits. */
export const rounding = z.enum(["nearest", "cut", "up", "exact"]);
/** How a source brought a value to its printed digits. */
export type Rounding = z.infer<typeof rounding>;

const expected = z.strictObject({
  printed: z.string().min(1).describe("the digits of the source, as text; a name or a verdict where the result is one"),
  unit: z.string().describe("unit of the printed value; empty for names, verdicts and counts"),
  rounding,
  digitsSure: z.boolean().describe("whether the number of printed digits is certain"),
});

/** One printed number, and the inputs that the same source prints for it. */
export const caseSchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9][a-z0-9./-]*$/)
      .describe("one id a case, never used again"),
    example: z.string().min(1).describe("the published example; its reprints share the key"),
    kind: z.enum(["worked", "measured", "constant", "identity"]),
    checks: z
      .string()
      .regex(/^[a-z-]+\/[a-z0-9-]+$/)
      .describe("id of a formula, table, condition, model or calculation"),
    at: z.string().describe("path into its result; empty for the result itself"),
    claims: claimed.nullable(),
    seen,
    inputs: z.record(z.string(), input),
    expected,
    inputsRounded: z.boolean().describe("only where the source worked with more digits than it prints"),
    erratum: z.string().nullable().describe("id of the erratum that disputes this print"),
  })
  .describe("One printed number of a published source. There is no tolerance: the printed digits decide.");

/** One printed number of a published source. */
export type Case = z.infer<typeof caseSchema>;
/** An input of a case, as printed or with the reason why it is not. */
export type CaseInput = z.infer<typeof input>;

/** A file of cases. */
export const casesSchema = z.array(caseSchema).min(1);
