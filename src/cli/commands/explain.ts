import { parseArgs } from "node:util";
import { ruleById, catalogue, type Rule } from "../../catalogue/index.js";
import { equationOf } from "../../formula/index.js";
import { explain } from "../../plant/index.js";
import { nearestName } from "../../quantity/index.js";
import type { Citation } from "../../source/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode, Failure } from "../exit.js";
import { print } from "../files/print.js";
import { onInput } from "../problems.js";
import { readRecord } from "../record-input.js";

const NAME = "explain";

const details = `Explains a rule of the library, or, with --of, a check or step of a plant: every step, inputs before results.

  --of FILE             a description or a record
  --json                as JSON

Examples
  pv-to-grid explain module/open-circuit-voltage-at
  pv-to-grid explain string/cold-voltage-within-inverter/INV1/A --of roof.json`;

function citation({ in: key, clause, grade, seen }: Citation): string {
  return `  ${key}, ${clause} [${grade}]${seen === undefined ? "" : `, as in ${seen}`}`;
}

function ruleLines(rule: Rule): readonly string[] {
  const { declaration, kind, id } = rule;
  const head = [id, `  ${"asks" in declaration ? declaration.asks : declaration.about} (${kind})`];
  const sources = ["", "Sources", ...declaration.source.map(citation)];
  switch (rule.kind) {
    case "formula": {
      const { takes, constants = {} } = rule.declaration;
      return [
        ...head,
        "",
        `  ${equationOf(rule.declaration)}`,
        "",
        "Takes",
        ...Object.entries(takes).map(
          ([key, symbol]) =>
            `  ${symbol.symbol}, ${key}: ${symbol.about} [${"each" in symbol ? symbol.each : symbol.unit}]`,
        ),
        ...Object.entries(constants).flatMap(([key, { symbol, about, value, unit, source }]) => [
          `  ${symbol}, ${key}: ${about} = ${value} ${unit}`,
          ...source.map((each) => `  ${citation(each)}`),
        ]),
        ...sources,
      ];
    }
    case "table":
      return [...head, "", rule.declaration.cells.trim(), ...sources];
    case "series":
      return [...head, "", `  ${rule.declaration.sizes} [${rule.declaration.unit}]`, ...sources];
    case "condition": {
      const { value, relation, limit, force } = rule.declaration;
      return [...head, "", `  ${value.about} ${relation} ${limit.about} (${force})`, ...sources];
    }
    case "model":
      return [...head, "", `  ${rule.declaration.method}, ${rule.declaration.digits} digits kept`, ...sources];
  }
}

async function explainRule(id: string, json: boolean): Promise<void> {
  const rule = ruleById(id);
  if (!rule) {
    const near = nearestName(id, [...catalogue().rules.keys()]);
    throw new Failure(
      `explain: there is no rule ${id}${near === undefined ? "" : `; did you mean ${near}?`}\nTry: pv-to-grid list formulas`,
      EXIT.badInput,
    );
  }
  await print(
    json ? `${JSON.stringify({ kind: rule.kind, ...rule.declaration }, null, 2)}\n` : `${ruleLines(rule).join("\n")}\n`,
  );
}

async function explainNumber(id: string, file: string, json: boolean): Promise<void> {
  const { name, record } = await readRecord(file);
  const steps = onInput(name, () => explain(record, id));
  if (json) {
    await print(`${JSON.stringify(steps, null, 2)}\n`);
    return;
  }
  const lines = steps.flatMap(({ step, symbol, about, equation, substituted, result, detail, source = [] }) => [
    `${step}  ${about}`,
    ...(equation === undefined ? [] : [`    ${equation}`]),
    `    ${symbol === undefined ? "" : `${symbol} `}${substituted === undefined ? "" : `= ${substituted} `}= ${result}`,
    ...(detail === undefined ? [] : [`    ${detail}`]),
    ...source.map((each) => `  ${citation(each)}`),
  ]);
  await print(`${lines.join("\n")}\n`);
}

async function run(args: readonly string[]): Promise<ExitCode> {
  const { values, positionals } = readArguments(NAME, () =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { of: { type: "string" }, json: { type: "boolean" } },
    }),
  );
  const [id] = positionals;
  if (id === undefined || positionals.length > 1)
    throw badUse(NAME, "name one rule, or one check of a plant with --of FILE");
  const json = values.json === true;
  await (values.of === undefined ? explainRule(id, json) : explainNumber(id, values.of, json));
  return EXIT.allMet;
}

export const explainCommand: Command = {
  name: NAME,
  use: "ID [--of FILE]",
  about: "explain a rule, or a check of a plant",
  details,
  run,
};
