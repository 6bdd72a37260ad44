import * as z from "zod/mini";
import { finding, name, note, perhapsOneOf } from "./fields.js";
import { inverterSchema } from "./inverter.js";
import { moduleTypeSchema, roofSchema } from "./module-type.js";
import { routeSchema } from "./route.js";
import { practiceSchema, rulesSchema } from "./rules.js";
import { siteSchema } from "./site.js";
import { junctionSchema, stringsSchema } from "./strings.js";
import { boardSchema, electrodeSchema, supplySchema, surgeDeviceSchema, transformerSchema } from "./supply.js";

/** Identity of the description's format. */
export const PLANT_FORMAT = "pv-to-grid/plant@1";

/** The description of a plant: one schema for its type, its validation and its published JSON Schema. */
export const plantSchema = z.strictObject({
  $schema: note("address or path of this schema, so that an editor explains each key"),
  format: z.literal(PLANT_FORMAT).check(z.meta({ description: "format of this description", role: "fact" })),
  name: name("name of the plant"),
  rules: z.optional(rulesSchema),
  practice: z.optional(practiceSchema),
  site: siteSchema,
  moduleTypes: z.record(z.string(), moduleTypeSchema),
  roofs: z.array(roofSchema).check(z.minLength(1)),
  inverters: z.array(inverterSchema).check(z.minLength(1)),
  strings: stringsSchema,
  junctions: z.optional(z.array(junctionSchema)),
  routes: z.array(routeSchema).check(z.minLength(1)),
  boards: z.optional(z.array(boardSchema)),
  supply: supplySchema,
  surgeDevices: z.optional(z.array(surgeDeviceSchema)),
  transformer: z.optional(transformerSchema),
  electrode: z.optional(electrodeSchema),
  lightningProtection: perhapsOneOf(
    ["none", "separation distance kept", "separation distance not kept"],
    "lightning protection system of the building",
  ),
  limits: z.optional(
    z.strictObject({
      dcDrop: finding("%", "largest d.c. voltage drop that the owner asks for, at rated current", { above: 0, to: 20 }),
      acRise: finding("%", "largest a.c. voltage rise that the owner asks for, from connection point to inverter", {
        above: 0,
        to: 20,
      }),
    }),
  ),
});

/** A plant as a person or program writes it: text with units, or numbers in the documented units. */
export type PlantDescription = z.input<typeof plantSchema>;

/** A plant as the sizing reads it: every value a quantity. */
export type Plant = z.output<typeof plantSchema>;
