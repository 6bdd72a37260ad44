import { parseArgs } from "node:util";
import { conditions, constants, formulas, models, series, sources, subjectOf, tables } from "../../catalogue/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode } from "../exit.js";
import { print } from "../files/print.js";
import { bestGrade, type Citation } from "../../source/index.js";

const NAME = "list";

interface Entry {
  readonly id: string;
  readonly about: string;
  readonly grade: string;
}

interface Cited {
  readonly source: readonly Citation[];
}

const graded = ({ source }: Cited): string => bestGrade(source) ?? "";

const KINDS: Readonly<Record<string, () => readonly Entry[]>> = {
  formulas: () =>
    formulas().map(({ id, declaration }) => ({ id, about: declaration.about, grade: graded(declaration) })),
  tables: () => tables().map(({ id, declaration }) => ({ id, about: declaration.about, grade: graded(declaration) })),
  series: () => series().map(({ id, declaration }) => ({ id, about: declaration.about, grade: graded(declaration) })),
  conditions: () =>
    conditions().map(({ id, declaration }) => ({ id, about: declaration.asks, grade: graded(declaration) })),
  models: () => models().map(({ id, declaration }) => ({ id, about: declaration.about, grade: graded(declaration) })),
  constants: () =>
    constants().map((constant) => ({
      id: constant.key,
      about: `${constant.about}: ${constant.value} ${constant.unit}`,
      grade: graded(constant),
    })),
  sources: () =>
    sources().map(({ key, title, publisher, citedBy }) => ({
      id: key,
      about: `${title} (${publisher}), cited by ${citedBy.length}`,
      grade: "",
    })),
};

const details = `Lists what the library declares: ${Object.keys(KINDS).join(", ")}.

  --subject NAME        of one subject only, such as conductor
  --json                as JSON

Examples
  pv-to-grid list formulas --subject string
  pv-to-grid list sources --json`;

async function run(args: readonly string[]): Promise<ExitCode> {
  const { values, positionals } = readArguments(NAME, () =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { json: { type: "boolean" }, subject: { type: "string" } },
    }),
  );
  const [kind = ""] = positionals;
  const entries = Object.hasOwn(KINDS, kind) ? KINDS[kind] : undefined;
  if (!entries || positionals.length > 1) throw badUse(NAME, `say what to list: ${Object.keys(KINDS).join(", ")}`);
  const { subject } = values;
  const found = entries().filter(({ id }) => subject === undefined || subjectOf(id) === subject);
  if (values.json === true) await print(`${JSON.stringify(found, null, 2)}\n`);
  else
    await print(
      found.map(({ id, about, grade }) => `${id}${grade === "" ? "" : ` [${grade}]`}\n    ${about}\n`).join(""),
    );
  return EXIT.allMet;
}

export const listCommand: Command = {
  name: NAME,
  use: Object.keys(KINDS).join("|"),
  about: "list formulas, tables, conditions, sources …",
  details,
  run,
};
