import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The checkout; the tests of the built package look into its `dist/`. */
export const root = fileURLToPath(new URL("../..", import.meta.url));

if (!existsSync(`${root}dist`)) throw new Error("there is no build to test: run `npm run build` first");
