/** Writes down the limits as the rules have them now. Look at the difference: each line is a limit that has moved. */
import { writeFileSync } from "node:fs";
import { declaredLimits } from "./limits.js";

const { bounds, requires, verdicts } = declaredLimits();
const lines = (entries: Readonly<Record<string, unknown>>): string =>
  Object.entries(entries)
    .map(([id, entry]) => `    ${JSON.stringify(id)}: ${JSON.stringify(entry)}`)
    .join(",\n");
const text = `{\n  "bounds": {\n${lines(bounds)}\n  },\n  "requires": {\n${lines(requires)}\n  },\n  "verdicts": {\n${lines(verdicts)}\n  }\n}\n`;
writeFileSync(new URL("limits.json", import.meta.url), text);
