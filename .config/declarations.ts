/** Gives each declaration file of the build a twin for CommonJS, in which a relative import names a `.cjs` file. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";

const dist = new URL("../dist/", import.meta.url);
const RELATIVE = /(from |import\()"(\.{1,2}\/[^"]+)\.js"/g;

for (const path of readdirSync(dist, { recursive: true, encoding: "utf8" })) {
  if (!path.endsWith(".d.ts")) continue;
  const text = readFileSync(new URL(path, dist), "utf8").replace(RELATIVE, '$1"$2.cjs"');
  writeFileSync(new URL(path.replace(/\.d\.ts$/, ".d.cts"), dist), text);
}
