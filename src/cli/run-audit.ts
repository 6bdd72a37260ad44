import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { auditCommand } from "./audit.js";

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const { version } = JSON.parse(readFileSync(at("package.json"), "utf8")) as { version: string };

process.exitCode = auditCommand(process.argv.slice(2), {
  referenceData: at("reference-data"),
  plants: at("shared/plants"),
  library: version,
  print: (text) => console.log(text),
  writeLock: (text) => writeFileSync(at("reference-data/lock.json"), text),
});
