import { z } from "zod";
import { casesSchema } from "./case.js";
import { changesSchema, lockSchema } from "./change.js";
import { errataSchema } from "./erratum.js";
import { guardSchema } from "./guard.js";
import { clausesSchema, wrongReleasesSchema } from "./register.js";
import { summarySchema } from "./summary.js";
import { sourcesSchema, termsSchema } from "./term.js";

/** The formats of the reference data by file name, as JSON Schema. */
export function jsonSchemas(): Readonly<Record<string, object>> {
  const formats = {
    "cases.schema.json": casesSchema,
    "guard.schema.json": guardSchema,
    "errata.schema.json": errataSchema,
    "terms.schema.json": termsSchema,
    "sources.schema.json": sourcesSchema,
    "clauses.schema.json": clausesSchema,
    "wrong-releases.schema.json": wrongReleasesSchema,
    "changes.schema.json": changesSchema,
    "lock.schema.json": lockSchema,
    "audit-summary.schema.json": summarySchema,
  };
  return Object.fromEntries(Object.entries(formats).map(([name, schema]) => [name, z.toJSONSchema(schema)]));
}
