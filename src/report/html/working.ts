import { type RecordedNumber, type RecordedStep, stepsBehind } from "../../plant/index.js";
import { all, element, type Markup } from "../markup/markup.js";
import { withSymbols } from "../markup/symbols.js";
import type { Cell } from "../view/cell.js";
import { exactText, type Shown, shown, shownPercent, THIN_SPACE } from "../view/number-text.js";
import { originText, readable, type StepName, stepNames, type WithWorking } from "../view/step-text.js";
import { gradeWord, sentence } from "../view/words.js";
import { citationList } from "./citation.js";

type FactCell = Extract<Cell, { readonly kind: "fact" }>;
type MadeCell = Extract<Cell, { readonly kind: "made" }>;

/** Prints numbers so that each unfolds to its working, and keeps which of them the page shows. */
export interface Working {
  number(number: RecordedNumber, options?: { readonly percent?: boolean; readonly as?: Shown }): Markup;
  fact(cell: FactCell): Markup;
  made(cell: MadeCell): Markup;
  /** Every step behind the numbers of a check, one a line, inputs before results; `at` is the anchor of the check. */
  steps(keys: readonly string[], at: string): Markup | null;
  /** The cards of every number that the page shows, and of all that stands behind it. */
  cards(): Markup;
}

/** A number as a button that unfolds its card; every digit is its title. */
function button(target: string, { digits, unit, exact }: Shown): Markup {
  return element(
    "button",
    { type: "button", class: "n", popovertarget: target, title: exact },
    digitsAndUnit({ digits, unit }),
  );
}

export function digitsAndUnit({ digits, unit }: Pick<Shown, "digits" | "unit">): Markup {
  return unit === "" ? all(digits) : all(digits, THIN_SPACE, unit);
}

/** Beyond that many checks, equal workings are printed once; a plant of many equal strings would fill a phone. */
const MOST_CHECKS = 300;

/** Begins the working of one page; `mark` keeps apart the cards of two records on one page. */
export function makeWorking(record: WithWorking, mark = ""): Working {
  const { steps } = record;
  const names = stepNames(record);
  const idOf = (step: string): string => `w${mark}-${step}`;
  const asked = new Set<string>();
  const told = new Map<string, string>();
  const long = record.checks.length > MOST_CHECKS;
  const cards = new Map<string, Markup>();

  const nameOf = (key: string, { symbol, about, kind }: RecordedStep): StepName => {
    const given = names.get(key);
    const own = kind === "given" || kind === "conversion" ? (given?.about ?? about) : about;
    return { symbol: symbol ?? given?.symbol ?? "", about: own };
  };

  function number(
    number: RecordedNumber,
    { percent = false, as }: { readonly percent?: boolean; readonly as?: Shown } = {},
  ): Markup {
    const text = as ?? (percent ? shownPercent(number) : shown(number));
    if (!steps || !Object.hasOwn(steps, number.step))
      return element("span", { class: "n", title: text.exact }, digitsAndUnit(text));
    asked.add(number.step);
    return button(idOf(number.step), text);
  }

  function linked(key: string): Markup {
    const step = steps![key]!;
    const { value, unit } = step;
    if (unit === "") return element("button", { type: "button", class: "n", popovertarget: idOf(key) }, value);
    return button(idOf(key), shown({ value, unit }));
  }

  function fact({ path, text, statedIn }: FactCell): Markup {
    const id = `d${mark}-${path.replace(/[^A-Za-z0-9]+/g, "-")}-${cardHash(path)}`;
    if (!cards.has(id)) {
      cards.set(
        id,
        card(id, "From the plant description", [
          element("p", { class: "result" }, text),
          element("p", {}, "Stated at ", element("code", {}, path), statedIn === null ? "." : ` (${statedIn}).`),
        ]),
      );
    }
    return element("button", { type: "button", class: "n", popovertarget: id, title: text }, text);
  }

  function made({ value, unit, about, equation, substituted, from }: MadeCell): Markup {
    const text = shown({ value, unit });
    const id = `m${mark}-${cards.size + 1}`;
    cards.set(
      id,
      card(id, about, [
        element("p", { class: "result" }, exactText({ value, unit })),
        element("p", { class: "equation" }, withSymbols(equation)),
        element("p", { class: "equation" }, "= ", readable(substituted)),
        from.length > 0 &&
          element(
            "p",
            {},
            "Made from ",
            from.map((used, at) => all(at > 0 ? ", " : null, number(used))),
            ".",
          ),
      ]),
    );
    return button(id, text);
  }

  function stepCard(key: string): Markup {
    const step = steps![key]!;
    const { symbol, about } = nameOf(key, step);
    const used = Object.entries(step.uses ?? {}).flatMap(([name, keys]) =>
      [keys].flat().map((each) => ({ name, key: each })),
    );
    return card(idOf(key), about, [
      element("p", { class: "result" }, symbol === "" ? null : all(withSymbols(symbol), " = "), step.result),
      step.equation === undefined ? null : element("p", { class: "equation" }, withSymbols(step.equation)),
      step.substituted === undefined ? null : element("p", { class: "equation" }, "= ", readable(step.substituted)),
      used.length > 0 &&
        element(
          "ul",
          { class: "uses" },
          used.map((each) => element("li", {}, usedName(each.key), linked(each.key))),
        ),
      element("p", {}, sentence(`${originText(step)}${step.detail === undefined ? "" : `: ${readable(step.detail)}`}`)),
      step.rounded === true && element("p", {}, "Digits beyond the thirty-fourth were lost on the way."),
      step.source ? citationList(step.source) : null,
      element("p", { class: "grade" }, `Grade: ${gradeWord(step.grade)}.`),
    ]);
  }

  function usedName(key: string): Markup {
    const { symbol, about } = nameOf(key, steps![key]!);
    return all(symbol === "" ? null : all(withSymbols(symbol), ", "), about, " ");
  }

  return {
    number,
    fact,
    made,
    steps: (keys, at) => {
      if (!steps) return null;
      const behind = stepsBehind(steps, keys);
      if (behind.length === 0) return null;
      const same = JSON.stringify(keys);
      const shared = long ? told.get(same) : undefined;
      if (shared !== undefined)
        return element(
          "p",
          {},
          "The numbers and their working are those of ",
          element("a", { href: `#${shared}` }, "this check"),
          ".",
        );
      told.set(same, at);
      return element(
        "ol",
        { class: "steps" },
        behind.map((step) => stepLine(step, nameOf(step.step, step), number)),
      );
    },
    cards: () => {
      const known = steps ? stepsBehind(steps, [...asked]) : [];
      return all(
        [...cards.values()],
        known.map(({ step }) => stepCard(step)),
      );
    },
  };
}

/** One step as one line: symbol, equation, substituted, result, source. */
function stepLine(
  step: RecordedStep & { readonly step: string },
  { symbol, about }: StepName,
  number: Working["number"],
): Markup {
  const { equation, substituted, source, kind, detail, value, unit, grade } = step;
  const converted = kind === "conversion";
  // A change of unit shows both, every digit; any other result is rounded.
  const as = converted ? { as: { digits: step.result, unit: "", exact: step.result } } : {};
  const result = unit === "" ? all(value) : number({ value, unit, step: step.step, grade }, as);
  const left = equation === undefined || kind === "model" ? symbol : equation;
  const middle = substituted === undefined ? "" : readable(substituted);
  const terms = [withSymbols(left), all(middle), result].filter(({ markup }) => markup !== "");
  const [place] = source ?? [];
  const stated = kind === "given" ? (detail ?? originText(step)) : originText(step);
  return element(
    "li",
    {},
    element("span", { class: "about" }, about),
    element(
      "span",
      { class: "equation" },
      terms.map((part, at) => all(at > 0 ? " = " : null, part)),
    ),
    element("span", { class: "from" }, place ? `${place.in}, ${place.clause} – ${gradeWord(grade)}` : stated),
  );
}

/** A card that unfolds over the foot of the page and folds away with Escape, a click beside it, or its own button. */
function card(id: string, title: string, children: readonly (Markup | null | undefined | false)[]): Markup {
  return element(
    "div",
    { popover: true, id, class: "card", role: "group", "aria-label": title },
    element(
      "button",
      { type: "button", class: "close", popovertarget: id, popovertargetaction: "hide", "aria-label": "fold away" },
      "×",
    ),
    element("p", { class: "title" }, title),
    children,
  );
}

/** A short number that tells apart paths which differ in signs only. */
function cardHash(text: string): string {
  let hash = 0;
  for (const sign of text) hash = (hash * 31 + sign.codePointAt(0)!) % 1_000_003;
  return hash.toString(36);
}
