import type { PlantRecord, RecordedCheck } from "../../plant/index.js";
import { isNumber } from "../view/check-text.js";
import { placesOf } from "../view/places.js";
import { gradeWord, reasonOf, remedyOf, VERDICTS } from "../view/words.js";
import { csv } from "./csv.js";

const HEADS = [
  "place",
  "check",
  "question",
  "force",
  "verdict",
  "value",
  "value unit",
  "relation",
  "limit",
  "limit unit",
  "utilisation",
  "source",
  "clause",
  "grade",
  "reason",
  "remedy",
];

/**
 * Every check as one line of CSV, in the order of the places, values with every digit.
 *
 * @example
 * ```ts
 * import { checksCsv } from "pv-to-grid/report";
 * import { sizePlant } from "pv-to-grid";
 * checksCsv(sizePlant(plant)).split("\r\n")[0]; // "place,check,question,…"
 * ```
 */
export function checksCsv(record: PlantRecord): string {
  return csv(
    HEADS,
    placesOf(record).flatMap(({ kind, name, checks }) => checks.map((check) => line(`${kind} ${name}`, check))),
  );
}

function side(of: RecordedCheck["limit"]): readonly [value: string, unit: string] {
  if (of === null) return ["", ""];
  if (typeof of === "string") return [of, ""];
  return isNumber(of) ? [of.value, of.unit] : [of.join(" | "), ""];
}

function line(place: string, check: RecordedCheck): readonly string[] {
  const { id, asks, force, verdict, value, relation, limit, utilisation, source, grade } = check;
  return [
    place,
    id,
    asks,
    force,
    VERDICTS[verdict].word,
    ...side(value),
    relation,
    ...side(limit),
    utilisation ?? "",
    source?.in ?? "",
    source?.clause ?? "",
    gradeWord(grade),
    reasonOf(check) ?? "",
    verdict === "met" ? "" : (remedyOf(check) ?? ""),
  ];
}
