/** Writes `docs/audit/` anew from the rules and the reference data; the gate compares it with what is committed. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { catalogue } from "../../../src/catalogue/index.js";
import { readReferenceFiles } from "../../../src/cli/audit-files.js";
import { evidenceOf, usesOfPlants } from "../../../src/cli/audit.js";
import { audit } from "../../../src/evidence/index.js";
import { auditFiles } from "./pages.js";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
const data = join(root, "reference-data");

const { clauses, wrongReleases } = readReferenceFiles(data);
const files = auditFiles({
  audit: audit(evidenceOf(data), { library: version, uses: usesOfPlants(join(root, "shared/plants")) }),
  catalogue: catalogue(),
  clauses: clauses.flatMap(({ content }) => content),
  wrongReleases,
});
const folder = join(root, "docs/audit");
rmSync(join(folder, "subjects"), { recursive: true, force: true });
for (const [path, text] of Object.entries(files)) {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}
