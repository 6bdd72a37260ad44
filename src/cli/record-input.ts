import { type PlantDescription, type PlantRecord, readPlant, RECORD_FORMAT, sizePlant } from "../plant/index.js";
import { recordSchema } from "../plant/record/record-schema.js";
import { EXIT, Failure } from "./exit.js";
import { parsed, readText } from "./files/read.js";
import { onInput, problemsText } from "./problems.js";

/** Whether a value says that it is a sizing record of some version. */
function isRecord(value: unknown): value is { readonly format: string } {
  const format = typeof value === "object" && value !== null && "format" in value ? value.format : undefined;
  return typeof format === "string" && format.startsWith("pv-to-grid/record@");
}

/** A record of this version; another version, or one that is not whole, is refused with the way out. */
function checkedRecord(value: { readonly format: string }, name: string): PlantRecord {
  if (value.format !== RECORD_FORMAT) {
    throw new Failure(
      `${name}: this is a record of the format ${value.format}; this version reads ${RECORD_FORMAT}: size its plant again`,
      EXIT.badInput,
    );
  }
  const read = recordSchema.safeParse(value);
  if (read.success) return value as unknown as PlantRecord;
  const [issue] = read.error.issues;
  throw new Failure(
    `${name}: the record is not whole: ${issue?.path.join(".") ?? ""}: ${issue?.message ?? ""}`,
    EXIT.badInput,
  );
}

/** The record of a file: itself, or the sizing of the description that it holds. */
export async function readRecord(path: string): Promise<{ readonly name: string; readonly record: PlantRecord }> {
  const { name, text } = await readText(path);
  const value = parsed(text, name);
  if (isRecord(value)) return { name, record: checkedRecord(value, name) };
  const read = readPlant(value);
  if (!read.ok) throw new Failure(problemsText(name, read.problems), EXIT.badInput);
  return { name, record: onInput(name, () => sizePlant(value as PlantDescription)) };
}
