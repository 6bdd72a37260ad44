/** Writes the figures of the guides anew, from the plants that they speak of; the gate compares them with what is committed. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type PlantDescription, sizePlant } from "../../../src/index.js";
import { windowFigure } from "../../../src/report/index.js";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const bakery = JSON.parse(readFileSync(join(root, "shared/plants/village-bakery.json"), "utf8")) as PlantDescription;
const window = windowFigure(sizePlant(bakery).strings[0]!);
if (!window) throw new Error("the first string of the village bakery has no figure");

mkdirSync(join(root, "docs/guides/figures"), { recursive: true });
writeFileSync(join(root, "docs/guides/figures/string-window.svg"), `${window.svg}\n`);
