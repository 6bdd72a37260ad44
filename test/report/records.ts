import { sizePlant } from "../../src/index.js";
import type { PlantDescription, PlantRecord } from "../../src/index.js";
import { bakeryWith, villageBakery } from "../plant/demo.js";

/** The record of the village bakery. */
export const bakery: PlantRecord = sizePlant(villageBakery());

/** The bakery with changes, sized. */
export const sizedWith = (changes: Readonly<Record<string, unknown>>): PlantRecord =>
  sizePlant(bakeryWith(changes) as PlantDescription);

/** A cable too thin for its device: requirements are not met. */
export const tooThin: PlantRecord = sizedWith({ "routes[2].cable.size": "1.5 mm2" });

/** Nobody knows how cold it gets: the voltages of the strings are open. */
export const coldUnknown: PlantRecord = sizedWith({ "site.coldest": undefined });

const SCRIPT = `"><script>alert(1)</script><img src=x onerror=alert(2)>`;
const BIDI = "safe\u202Egpj.exe\u2066";
const TERMINAL = "\u001b[2J\u001b]0;owned\u0007\rall met";
const SHEET = `=HYPERLINK("http://example.invalid","press")`;
const MARKDOWN = "[press](javascript:alert(1)) `code` **bold** | cell\n# heading";

/** Names that try to break out of every format. */
export const hostileNames = { SCRIPT, BIDI, TERMINAL, SHEET, MARKDOWN } as const;

/** The bakery whose every free text is hostile. */
export const hostile: PlantRecord = sizedWith({
  name: `${SCRIPT}${TERMINAL}`,
  "roofs[0].name": SCRIPT,
  "roofs[1].name": SHEET,
  "strings[0].roof": SCRIPT,
  "strings[1].roof": SCRIPT,
  "strings[2].roof": SHEET,
  "routes[0].from": SCRIPT,
  "routes[1].from": SHEET,
  "routes[2].cable.type": `+${TERMINAL}${MARKDOWN}`,
  "inverters[0].statedIn": `${BIDI}${MARKDOWN}`,
  "site.statedIn": SCRIPT,
});
