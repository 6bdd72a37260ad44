import * as z from "zod/mini";
import { grades } from "../../source/index.js";
import { plantSchema } from "../description/plant-description.js";
import { RECORD_FORMAT } from "./record.js";

// The record's schema is written beside its type; a test compares the two, and every record of the tests is validated.
const text = z.string();
const list = z.array(text);
const grade = z.enum(Object.fromEntries(grades.map((key) => [key, key])));
const perhapsGrade = z.nullable(grade);
const citation = z.looseObject({ in: text, clause: text, grade, seen: z.optional(text) });
const force = z.enum({ requirement: "requirement", recommendation: "recommendation", yield: "yield" });
const verdict = z.enum({ met: "met", "not-met": "not-met", open: "open" });
const number = z.looseObject({ value: text, unit: text, step: text, grade: perhapsGrade });
const perhaps = z.nullable(number);
const whole = z.int().check(z.gte(0));

const check = z.looseObject({
  id: text,
  rule: text,
  at: text,
  asks: text,
  force,
  verdict,
  value: z.nullable(z.union([number, text])),
  relation: z.enum({ "<": "<", "≤": "≤", "≥": "≥", ">": ">", "=": "=", "one of": "one of" }),
  limit: z.nullable(z.union([number, text, list])),
  utilisation: z.nullable(text),
  source: z.nullable(citation),
  grade: perhapsGrade,
  missing: list,
  because: z.nullable(text),
  remedy: z.nullable(text),
});

const step = z.looseObject({
  kind: z.enum({
    given: "given",
    assumed: "assumed",
    conversion: "conversion",
    formula: "formula",
    lookup: "lookup",
    choice: "choice",
    model: "model",
  }),
  id: z.optional(text),
  symbol: z.optional(text),
  about: text,
  equation: z.optional(text),
  substituted: z.optional(text),
  result: text,
  value: text,
  unit: text,
  rounded: z.optional(z.literal(true)),
  uses: z.optional(z.record(text, z.union([text, list]))),
  detail: z.optional(text),
  rows: z.optional(list),
  column: z.optional(z.record(text, text)),
  source: z.optional(z.array(citation)),
  grade: perhapsGrade,
});

const string = z.looseObject({
  path: z.nullable(text),
  inverter: text,
  tracker: text,
  roof: text,
  modules: whole,
  count: whole,
  shortest: perhaps,
  longest: perhaps,
  limitedBy: z.looseObject({ shortest: z.nullable(text), longest: z.nullable(text) }),
  coldVoltage: perhaps,
  hotVoltage: perhaps,
  maximumCurrent: perhaps,
  voltages: z.array(
    z.looseObject({
      at: z.enum({ coldest: "coldest", "standard test conditions": "standard test conditions", hottest: "hottest" }),
      cellTemperature: number,
      openCircuit: number,
      mpp: perhaps,
    }),
  ),
  limits: z.array(
    z.looseObject({
      key: text,
      name: text,
      end: z.enum({ longest: "longest", shortest: "shortest" }),
      force,
      voltage: number,
    }),
  ),
});

const route = z.looseObject({
  path: text,
  from: text,
  to: text,
  kind: z.enum({ "d.c.": "d.c.", "a.c.": "a.c." }),
  cable: text,
  size: perhaps,
  sizeName: z.nullable(text),
  protectiveConductor: perhaps,
  fixedBy: list,
  length: number,
  circuits: whole,
  current: perhaps,
  ampacity: perhaps,
  voltageChange: perhaps,
  voltageChangeShare: perhaps,
  loss: perhaps,
  breaker: perhaps,
  breakerCharacteristic: z.nullable(text),
  stretches: z.array(z.looseObject({ place: text, length: number, ampacity: perhaps, change: perhaps })),
});

const grid = z.looseObject({
  nominalVoltage: perhaps,
  voltageProfile: z.array(
    z.looseObject({
      inverter: text,
      name: text,
      part: z.enum({ network: "network", installation: "installation" }),
      change: perhaps,
      length: perhaps,
      total: perhaps,
      totalShare: perhaps,
      voltage: perhaps,
    }),
  ),
  limits: z.array(z.looseObject({ inverter: text, check: text, name: text, voltage: number })),
  settings: z.array(
    z.looseObject({
      key: text,
      label: text,
      kind: text,
      value: perhaps,
      lineToNeutral: perhaps,
      lineToLine: perhaps,
      lowest: perhaps,
      highest: perhaps,
      delay: perhaps,
      clearing: perhaps,
      averaging: z.nullable(text),
      source: z.nullable(citation),
      grade: perhapsGrade,
      confirm: z.nullable(text),
    }),
  ),
});

/** The schema of sizing records, as it is published. Later versions only add keys, so unknown keys are let pass. */
export const recordSchema = z.looseObject({
  format: z.literal(RECORD_FORMAT),
  library: text,
  plant: plantSchema,
  rules: z.looseObject({ wiring: text, pv: text, grid: text, supply: text }),
  outcome: z.looseObject({
    verdict,
    met: whole,
    notMet: whole,
    open: whole,
    recommendationsNotMet: whole,
    yieldNotMet: whole,
    restsOnMemory: list,
  }),
  toDo: z.array(
    z.looseObject({
      kind: z.enum({ seal: "seal", set: "set", measure: "measure", confirm: "confirm", supply: "supply" }),
      text,
      about: text,
    }),
  ),
  chosen: list,
  verified: list,
  strings: z.array(string),
  trackers: z.array(
    z.looseObject({
      inverter: text,
      tracker: text,
      inputs: whole,
      inputsUsed: whole,
      inputsToSeal: whole,
      mppCurrent: perhaps,
      maximumCurrent: perhaps,
    }),
  ),
  routes: z.array(route),
  findings: z.array(
    z.looseObject({
      subject: z.enum({ earthing: "earthing", surge: "surge", protection: "protection" }),
      what: text,
      at: text,
      value: z.nullable(z.union([number, text])),
      checks: list,
    }),
  ),
  grid,
  readings: z.array(
    z.looseObject({
      inverter: text,
      tracker: text,
      roof: text,
      what: text,
      at: text,
      expected: perhaps,
      low: perhaps,
      high: perhaps,
    }),
  ),
  checks: z.array(check),
  assumptions: z.array(z.looseObject({ about: text, value: number, source: z.array(citation) })),
  cautions: list,
  sources: z.array(
    z.looseObject({
      key: text,
      grades: z.array(grade),
      title: text,
      publisher: text,
      year: z.nullable(z.int()),
      kind: text,
    }),
  ),
  declarations: z.record(text, z.looseObject({ kind: text, id: text, source: z.array(citation) })),
  steps: z.optional(z.record(text, step)),
});

/** The JSON Schema of sizing records. */
export function recordJsonSchema(): Record<string, unknown> {
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "pv-to-grid sizing record",
    ...(z.toJSONSchema(recordSchema, { io: "input" }) as Record<string, unknown>),
  };
}
