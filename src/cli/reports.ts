import { join } from "node:path";
import { measurementSheetCsv, type PlantRecord } from "../plant/index.js";
import {
  checksCsv,
  commissioningSheetHtml,
  type Figure,
  ladderFigure,
  lineDiagrams,
  materialsCsv,
  pathFigure,
  profileFigure,
  reportHtml,
  reportJson,
  reportMarkdown,
  type ReportOptions,
  reportText,
  windowFigure,
} from "../report/index.js";
import { Failure, EXIT } from "./exit.js";
import { print } from "./files/print.js";
import { makeFolder, writeWhole } from "./files/write.js";

/** The formats of a report, by the option that asks for each. */
export const FORMATS = {
  html: { file: ".html", of: reportHtml },
  json: { file: ".json", of: reportJson },
  text: { file: ".txt", of: reportText },
  markdown: { file: ".md", of: reportMarkdown },
  checks: { file: ".checks.csv", of: checksCsv },
  material: { file: ".material.csv", of: materialsCsv },
  sheet: { file: ".sheet.html", of: commissioningSheetHtml },
  readings: { file: ".readings.csv", of: measurementSheetCsv },
} as const satisfies Record<string, { file: string; of: (record: PlantRecord, options: ReportOptions) => string }>;

export type Format = keyof typeof FORMATS;

/** Options that every command with reports takes. */
export const REPORT_OPTIONS = {
  html: { type: "string" },
  json: { type: "string" },
  text: { type: "string" },
  markdown: { type: "string" },
  checks: { type: "string" },
  material: { type: "string" },
  sheet: { type: "string" },
  readings: { type: "string" },
  figures: { type: "string" },
  into: { type: "string" },
  date: { type: "string" },
  by: { type: "string" },
  allowance: { type: "string" },
  "open-working": { type: "boolean" },
  brief: { type: "boolean" },
  quiet: { type: "boolean" },
  "verdict-code": { type: "string" },
} as const;

export type ReportArguments = { readonly [K in keyof typeof REPORT_OPTIONS]?: string | boolean | undefined } & {
  readonly [K in Format | "figures" | "into" | "date" | "by" | "allowance" | "verdict-code"]?: string | undefined;
};

function optionsOf({ date, by, allowance, "open-working": open }: ReportArguments): ReportOptions {
  return {
    ...(date === undefined ? {} : { date }),
    ...(by === undefined ? {} : { by }),
    ...(allowance === undefined ? {} : { cableAllowance: allowance }),
    ...(open === true ? { working: "open" as const } : {}),
  };
}

/** The formats that were asked for, with the place of each; `-` is standard output. */
function wanted(asked: ReportArguments, stem: string): readonly { readonly format: Format; readonly place: string }[] {
  const { into } = asked;
  return (Object.keys(FORMATS) as Format[]).flatMap((format) => {
    const place = asked[format] ?? (into === undefined ? undefined : join(into, `${stem}${FORMATS[format].file}`));
    return place === undefined ? [] : [{ format, place }];
  });
}

/** Writes the reports of one record, and prints the text where nothing else was asked for standard output. */
export async function writeReports(record: PlantRecord, asked: ReportArguments, stem: string): Promise<void> {
  const options = optionsOf(asked);
  const places = wanted(asked, stem);
  const toOutput = places.filter(({ place }) => place === "-");
  if (toOutput.length > 1) throw new Failure("only one format can go to standard output", EXIT.badUse);
  // All texts are made before the first file is touched: a failure leaves nothing half done.
  const texts = places.map(({ format, place }) => ({ place, text: FORMATS[format].of(record, options) }));
  const figures = asked.figures === undefined ? [] : figureFiles(record, stem, asked.figures);
  if (asked.into !== undefined) makeFolder(asked.into);
  if (asked.figures !== undefined) makeFolder(asked.figures);
  const files = [...texts.filter(({ place }) => place !== "-"), ...figures];
  for (const { place, text } of files) writeWhole(place, text);
  const [piped] = texts.filter(({ place }) => place === "-");
  if (piped) await print(piped.text);
  else if (asked.quiet !== true) {
    await print(
      reportText(record, { ...options, brief: asked.brief === true, files: files.map(({ place }) => place) }),
    );
  }
}

function figureFiles(
  record: PlantRecord,
  stem: string,
  folder: string,
): readonly { readonly place: string; readonly text: string }[] {
  const named: readonly (readonly [string, Figure | null])[] = [
    ...lineDiagrams(record).map((figure, index) => [`line-${index + 1}`, figure] as const),
    ...record.strings.flatMap(
      (string, index) =>
        [
          [`ladder-${index + 1}`, ladderFigure(string)],
          [`window-${index + 1}`, windowFigure(string)],
        ] as const,
    ),
    ...record.routes.map((route, index) => [`path-${index + 1}`, pathFigure(route)] as const),
    ...record.plant.inverters.map(({ name }, index) => [`profile-${index + 1}`, profileFigure(record, name)] as const),
  ];
  return named.flatMap(([name, figure]) =>
    figure ? [{ place: join(folder, `${stem}.${name}.svg`), text: `${figure.svg}\n` }] : [],
  );
}
