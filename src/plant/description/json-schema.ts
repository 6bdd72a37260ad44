import * as z from "zod/mini";
import { plantSchema } from "./plant-description.js";

/** The JSON Schema of plant descriptions, with the unit, the role and the meaning of each key. */
export function plantJsonSchema(): Record<string, unknown> {
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "pv-to-grid plant description",
    description:
      'A fact must be there. A finding may be left out: the checks that need it are then open. A choice may be left out or be "choose": the library chooses. Values are text with a unit, or numbers in the documented unit.',
    ...(z.toJSONSchema(plantSchema, { io: "input" }) as Record<string, unknown>),
  };
}
