import { readingKinds } from "../evaluation/reading-kinds.js";
import { READINGS_FORMAT } from "./measurement-sheet.js";

/** The JSON Schema of filled-in measurement sheets. */
export function sheetJsonSchema(): Record<string, unknown> {
  const text = (description: string): object => ({ type: "string", description });
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "pv-to-grid measurement sheet",
    description:
      "Readings at first switch-on. A value is text with a unit, or a number in the unit of its reading; null or left out, it was not taken.",
    type: "object",
    required: ["format", "readings"],
    additionalProperties: false,
    properties: {
      $schema: text("address or path of this schema"),
      format: { const: READINGS_FORMAT },
      plant: text("name of the plant"),
      date: text("day of the measurements"),
      by: text("who measured"),
      readings: {
        type: "array",
        items: {
          type: "object",
          required: ["at", "reading"],
          additionalProperties: false,
          properties: {
            at: text("string, roof, route or supply that it was taken on; empty for the whole plant"),
            reading: {
              description: readingKinds.map(({ key, label, unit }) => `${key}: ${label} [${unit}]`).join("; "),
              enum: readingKinds.map(({ key }) => key),
            },
            value: {
              type: ["string", "number", "null"],
              description:
                "text with a unit, or a number in the unit of the reading; an open-circuit voltage read with reversed poles is below zero",
            },
            note: text("remark"),
          },
        },
      },
    },
  };
}
