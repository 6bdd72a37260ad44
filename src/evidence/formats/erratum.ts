import { z } from "zod";

const text = z.string().min(1);

/** Where the library departs from print, and why. */
export const erratumSchema = z
  .strictObject({
    id: text,
    source: text.describe("key of the publication in the bibliography"),
    place: z.string(),
    printed: z.string(),
    computed: z.string(),
    problem: text,
    kind: z.enum(["misprint", "misrounded", "method-differs", "not-reproducible", "sources-conflict"]),
    evidence: text,
    libraryDoes: text,
    direction: z.enum(["unsafe", "safe", "none"]).describe("what following the print would be"),
    cases: z.array(z.string()),
  })
  .describe("A printed value that the library does not reproduce; it stays visible and is never excluded.");

/** A printed value that the library does not reproduce. */
export type Erratum = z.infer<typeof erratumSchema>;

/** A file of errata. */
export const errataSchema = z.array(erratumSchema);
