import { subjects } from "../../.config/package-map.js";
import { root } from "../harness/built.js";
import { declaredRules } from "../harness/declared-rules.js";

// A folder without a public face is still being written and is not in the package.
const faces = subjects();
const rules = declaredRules().filter(({ file }) => faces.includes(file.folder));
const ids = new Set(rules.map(({ id }) => id));

/** For each rule, by its id, an app of one line that uses this rule and no other. */
export const apps: ReadonlyMap<string, string> = new Map(
  rules.map(({ id, name, file }) => [id, `export { ${name} } from "${root}dist/${file.folder}/index.js";`]),
);

/** Marks the entry point of an app for the bundlers' plugins. */
export const APP = "app:";

/** What the package leaves to its host to bundle. */
export const DEPENDENCIES = ["decimal.js", "zod", "zod/mini"];

/** What is wrong with the bundle of a rule's app: its own rule is not in it, or another is. */
export function faultsOf(id: string, bundle: string): string[] {
  const texts = [...bundle.matchAll(/["'`]([a-z]+\/[a-z0-9-]+)["'`]/g)].map(([, text]) => text!);
  const held = new Set(texts.filter((text) => ids.has(text)));
  const missing = held.delete(id) ? [] : [`${id} is not in its own bundle`];
  return [...missing, ...[...held].map((other) => `${id} brings ${other} along`)];
}
