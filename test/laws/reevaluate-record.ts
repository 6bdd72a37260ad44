/** Works a sizing record out again by mathjs: `npm run reevaluate -- record.json`. */
import { readFileSync } from "node:fs";
import { reevaluate, type Working } from "../../src/evidence/index.js";
import { mathjsEvaluator } from "./mathjs-evaluator.js";

const [path] = process.argv.slice(2);
if (path === undefined) throw new Error("use: npm run reevaluate -- RECORD.json");
const { recomputed, differences } = reevaluate(JSON.parse(readFileSync(path, "utf8")) as Working, mathjsEvaluator);
console.log(
  Object.entries(recomputed)
    .map(([kind, count]) => `${count} ${kind} steps`)
    .join(", "),
);
for (const { step, id, recorded, due } of differences) console.log(`${step} ${id ?? ""}: ${recorded}, due ${due}`);
console.log(differences.length === 0 ? "no difference" : `${differences.length} differences`);
process.exitCode = differences.length === 0 ? 0 : 1;
