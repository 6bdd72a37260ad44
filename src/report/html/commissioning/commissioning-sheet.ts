import type { WorkStep } from "../../../commissioning/index.js";
import { type Commissioning, commissioningOf, type PlantRecord, type ToDo } from "../../../plant/index.js";
import { all, element, type Markup } from "../../markup/markup.js";
import { numbers } from "../../view/cell.js";
import type { ReportOptions } from "../../view/options.js";
import { sentence } from "../../view/words.js";
import { htmlPage } from "../html-page.js";
import { cautions } from "../outcome.js";
import { cellsMarkup } from "../rows.js";
import { readingsSection, settingsSheet, sheet } from "../sheets.js";
import { titleBlock } from "../title-block.js";
import { makeWorking, type Working } from "../working.js";

const KINDS: Readonly<Record<WorkStep["kind"], string>> = {
  check: "check",
  measure: "measure",
  set: "set",
  seal: "seal",
  confirm: "confirm",
};

/**
 * The commissioning sheet of a plant as one HTML page that prints on A4: the order of work with its cautions, what to set,
 * seal and confirm, what to measure with the values to expect, and space for readings and signature.
 *
 * @param record - a sizing record
 * @param options - a date and a presenter; without them, the page leaves space
 * @example
 * ```ts
 * import { commissioningSheetHtml } from "pv-to-grid/report";
 * import { sizePlant } from "pv-to-grid";
 * commissioningSheetHtml(sizePlant(plant)).startsWith("<!doctype html>"); // true
 * ```
 */
export function commissioningSheetHtml(record: PlantRecord, options: ReportOptions = {}): string {
  const work = commissioningOf(record);
  const ofRecord = makeWorking(record);
  const ofSheet = makeWorking({ steps: work.working, declarations: {}, checks: [] }, "s");
  const body = element(
    "body",
    { class: "work" },
    element("a", { class: "skip", href: "#work" }, "Skip to the order of work"),
    titleBlock(record, options),
    element(
      "main",
      {},
      element(
        "section",
        { id: "outcome" },
        element("h2", {}, "First switch-on"),
        cautions(record.cautions, "cautions"),
      ),
      workSection(work),
      toDoSection(work),
      placesSection(work, ofSheet),
      insulationSection(work, ofSheet),
      readingsSection(record, ofRecord),
      settingsSheet(record, ofRecord),
      signature(options),
      cautions(record.cautions, "cautions-again"),
    ),
    element("footer", { id: "working" }, ofRecord.cards(), ofSheet.cards()),
  );
  return htmlPage(`${record.plant.name}: commissioning sheet`, body);
}

function workSection({ steps }: Commissioning): Markup {
  const phases = [...new Set(steps.map(({ phase }) => phase))];
  return element(
    "section",
    { id: "work" },
    element("h2", {}, "Order of work"),
    phases.map((phase) =>
      all(
        element("p", { class: "kind" }, sentence(phase).replace(/\.$/, "")),
        element("ol", { class: "ticks" }, steps.filter((step) => step.phase === phase).map(workStep)),
      ),
    ),
  );
}

function workStep({ kind, text, cautions: warnings }: WorkStep): Markup {
  return element(
    "li",
    {},
    element("strong", {}, `${KINDS[kind]}: `),
    text,
    warnings.map((warning) => element("span", { class: "warning" }, ` ! ${warning}`)),
  );
}

function toDoSection({ toSet, toSeal, toConfirm }: Commissioning): Markup {
  const list = (title: string, items: readonly ToDo[]): Markup | null =>
    items.length === 0
      ? null
      : all(
          element("p", { class: "kind" }, title),
          element(
            "ul",
            { class: "ticks" },
            items.map(({ text }) => element("li", {}, text)),
          ),
        );
  return element(
    "section",
    { id: "to-do" },
    element("h2", {}, "To set, to seal, to confirm"),
    list("Seal", toSeal),
    list("Set", toSet),
    list("Confirm", toConfirm),
  );
}

function placesSection({ places, tells }: Commissioning, working: Working): Markup {
  const rows = places.map(({ at, what, unit, expected, low, high }) => [
    at === "" ? "whole plant" : at,
    what,
    cellsMarkup(numbers(expected), working),
    all(
      low && !high ? "at least " : null,
      high && !low ? "at most " : null,
      cellsMarkup(numbers(low), working),
      low && high ? " to " : null,
      cellsMarkup(numbers(high), working),
    ),
    element("span", { class: "blank" }),
    unit === "1" ? "" : unit,
  ]);
  const { againstExpected } = tells;
  const note =
    againstExpected === null
      ? null
      : `Read irradiance and module temperature with the strings; what to expect at other light stands below, and "pv-to-grid verify" computes it for the light that was read. A missing module shows in strings of up to ${againstExpected} modules; in longer ones it hides in the band.`;
  return sheet("places", "To measure", ["place", "reading", "expected", "within", "read", "unit"], rows, note);
}

function insulationSection({ insulation }: Commissioning, working: Working): Markup {
  const rows = insulation.tests.map(({ at, systemVoltage, testVoltage, minimum }) => [
    at,
    cellsMarkup(numbers(systemVoltage), working),
    cellsMarkup(numbers(testVoltage), working),
    cellsMarkup(numbers(minimum), working),
    element("span", { class: "blank" }),
  ]);
  const methods = element(
    "ul",
    { class: "dashes" },
    insulation.methods.map(({ label }) => element("li", {}, sentence(label))),
  );
  const notes = element(
    "ul",
    { class: "dashes" },
    insulation.notes.map((note) => element("li", {}, sentence(note))),
  );
  return all(
    sheet(
      "insulation",
      "Insulation of the strings",
      ["string", "system voltage", "test voltage", "at least", "read"],
      rows,
    ),
    methods,
    notes,
  );
}

function signature({ date, by }: ReportOptions): Markup {
  const line = (label: string, text: string | undefined): Markup =>
    element("div", {}, element("span", { class: "line" }, text ?? ""), element("span", {}, label));
  return element(
    "section",
    { class: "signature", "aria-label": "Signature" },
    line("date", date),
    line("name, licence", by),
    line("signature", undefined),
  );
}
