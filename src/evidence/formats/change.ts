import { z } from "zod";

/** One alteration or removal of evidence that the lock holds, in order of time. */
export const changeSchema = z
  .strictObject({
    id: z.string().min(1).describe("kind and id as in the lock, such as cases/…"),
    field: z
      .string()
      .describe("JSON Pointer to the field within the item; empty where the item was removed or came back"),
    from: z.unknown().describe("the field before; null where it was not there"),
    to: z.unknown().describe("the field after; null where it was removed"),
    reason: z.string().min(1),
    date: z.iso.date(),
  })
  .describe("Undoing the changes of an item, newest first, must give the item that the lock holds.");

/** An alteration of locked evidence, with its reason. */
export type Change = z.infer<typeof changeSchema>;

/** The file of changes. */
export const changesSchema = z.array(changeSchema);

const hashes = z.record(z.string(), z.string().regex(/^[0-9a-f]{64}$/));

/** SHA-256 of each piece of evidence as it first stood; entries are added and never altered. */
export const lockSchema = z
  .strictObject({
    format: z.literal("pv-to-grid/lock@1"),
    cases: hashes,
    tables: hashes,
    guards: hashes,
    errata: hashes,
  })
  .describe("A hash of each case, shipped table, guard and erratum as it first stood.");

/** A hash of each case, shipped table, guard and erratum. */
export type Lock = z.infer<typeof lockSchema>;
