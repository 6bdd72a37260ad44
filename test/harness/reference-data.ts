import { fileURLToPath } from "node:url";
import { readReferenceFiles, type ReferenceFiles } from "../../src/cli/audit-files.js";

/** The folder of the reference data. */
export const REFERENCE_DATA = fileURLToPath(new URL("../../reference-data", import.meta.url));

/** Only this subject's files are run where it is set: `PV_SUBJECT=module npx vitest run test/evidence`. */
export const onlySubject = process.env["PV_SUBJECT"] ?? "";

function chosen<T extends { readonly subject: string }>(files: readonly T[]): readonly T[] {
  return onlySubject === "" ? files : files.filter(({ subject }) => subject === onlySubject);
}

const all = readReferenceFiles(REFERENCE_DATA);

/** The reference data, of one subject where `PV_SUBJECT` names it. */
export const referenceFiles: ReferenceFiles = {
  ...all,
  cases: chosen(all.cases),
  guards: chosen(all.guards),
  errata: chosen(all.errata),
  terms: chosen(all.terms),
};

/** The reference data of all subjects, for what is looked up across them. */
export const allReferenceFiles = all;
