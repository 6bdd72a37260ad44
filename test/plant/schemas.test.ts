import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, expectTypeOf, it } from "vitest";
import type * as z from "zod/mini";
import { type PlantRecord, sizePlant } from "../../src/index.js";
import { everyPath } from "../../src/plant/description/path.js";
import { plantSchema } from "../../src/plant/description/plant-description.js";
import { plantJsonSchema, recordJsonSchema } from "../../src/plant/index.js";
import type { recordSchema } from "../../src/plant/record/record-schema.js";
import { bakeryWith, villageBakery } from "./demo.js";

const ajv = new Ajv2020({ strict: false, allErrors: true });
const isPlant = ajv.compile(plantJsonSchema());
const isRecord = ajv.compile(recordJsonSchema());

describe("published schemas", () => {
  it("accept the demo and its record, by a validator of another maker", () => {
    expect(isPlant(villageBakery()), JSON.stringify(isPlant.errors)).toBe(true);
    for (const working of [true, false]) {
      const record: unknown = JSON.parse(JSON.stringify(sizePlant(villageBakery(), { working })));
      expect(isRecord(record), JSON.stringify(isRecord.errors)).toBe(true);
    }
  });

  it.each([{ name: undefined }, { "site.coldst": "1 °C" }, { "inverters[0].phases": 4 }, { "roofs[0].modules": 0.5 }])(
    "refuse %j",
    (changes) => {
      expect(isPlant(bakeryWith(changes))).toBe(false);
    },
  );

  it("say of every key what it is, its role and its unit", () => {
    const schema = JSON.stringify(plantJsonSchema());
    expect(schema).toContain('"description":"open-circuit voltage U_OC [V]; more than 0 V"');
    expect(schema).toContain('"role":"finding"');
  });

  it("have every key of the record's type", () => {
    type Written = z.input<typeof recordSchema>;
    expectTypeOf<Exclude<keyof PlantRecord, keyof Written>>().toEqualTypeOf<never>();
  });

  it("list every path of a description once", () => {
    const paths = everyPath(plantSchema);
    expect(paths).toContain("inverters[].trackers[].shortCircuitRating");
    expect(paths).toContain("moduleTypes{}.openCircuitVoltage");
    expect(new Set(paths).size).toBe(paths.length);
  });
});
