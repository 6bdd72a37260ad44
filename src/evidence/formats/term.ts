import { z } from "zod";

/** The one key of a quantity, with its symbol and its names in the two practices. */
export const termsSchema = z
  .record(
    z.string().regex(/^[a-z][A-Za-z0-9]*$/),
    z.strictObject({
      symbol: z.string().nullable(),
      iec: z.string().min(1),
      nec: z.string().min(1).nullable(),
    }),
  )
  .describe("One key per quantity everywhere: formula, plant, record and case.");

/** The keys of quantities with their symbols and words. */
export type Terms = z.infer<typeof termsSchema>;

/** The bibliography as data. */
export const sourcesSchema = z.record(
  z.string(),
  z.strictObject({
    title: z.string().min(1),
    publisher: z.string().min(1),
    year: z.number().int().nullable(),
    kind: z.enum([
      "standard",
      "law",
      "handbook",
      "paper",
      "catalogue",
      "magazine",
      "course",
      "agency",
      "dataset",
      "practice",
    ]),
    address: z.string().exactOptional(),
    note: z.string().exactOptional(),
  }),
);
