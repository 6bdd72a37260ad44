import { convertQuantity, type GivenOrigin, isQuantity, keptOf, makeQuantity, type Quantity } from "./quantity.js";
import { dimensionOf } from "./conversion.js";
import { type Domain, domainText, implausible, inDomain } from "./domain.js";
import { Exact } from "./decimal.js";
import { type Problem, type ProblemCode, received } from "./input-error.js";
import { isFault, readNumber } from "./number-text.js";
import { nearestUnit, unitFromText } from "./unit-text.js";
import type { Dimension, DimensionOf, Unit, UnitOf } from "./units.js";

/** What a symbol takes: its unit and the domain of its value. */
export interface Expectation<U extends Unit = Unit> extends Domain {
  readonly unit: U;
}

/** A number in the documented unit, text with or without a unit, or a quantity of the same kind. */
export type Input<D extends Dimension = Dimension> = number | string | Quantity<D>;

/** A quantity in the documented unit, or what is wrong with the input. */
export type Reading<D extends Dimension> =
  { readonly ok: true; readonly quantity: Quantity<D> } | { readonly ok: false; readonly problem: Problem };

const UNSTATED: GivenOrigin = /* @__PURE__ */ Object.freeze({ kind: "given" });

/** Reads one input as a quantity in the unit of its symbol and checks its domain. */
export function readInput<U extends Unit>(
  input: unknown,
  expectation: Expectation<U>,
  path: string,
  origin: GivenOrigin = UNSTATED,
): Reading<DimensionOf<U>> {
  const { unit } = expectation;
  const fail = (code: ProblemCode, message: string): Reading<DimensionOf<U>> => ({
    ok: false,
    problem: { path, code, message, expected: domainText(expectation, unit), received: received(input) },
  });

  let quantity: Quantity;
  let bare = false;
  if (isQuantity(input)) {
    quantity = input;
  } else if (typeof input === "number") {
    if (!Number.isFinite(input)) return fail("not-finite", "the number must be finite");
    // A number in code means its shortest decimal text.
    quantity = makeQuantity({ value: new Exact(input), keeps: Infinity }, unit as never, origin);
    bare = true;
  } else if (typeof input === "string") {
    const text = input.normalize("NFKC").trim();
    const split = /^([+\-\u2212\u2013]?[\d.,]*(?:[eE][+-]?\d+)?)\s*(.*)$/su.exec(text);
    if (text === "") return fail("empty", "the text is empty");
    const value = readNumber(split?.[1] || text);
    if (isFault(value)) return fail(value.code, value.message);
    const unitText = split?.[2] ?? "";
    const stated = unitText === "" ? unit : unitFromText(unitText);
    if (stated === undefined) return fail("unknown-unit", unknownUnit(unitText, unit));
    quantity = makeQuantity({ value, keeps: Infinity }, stated as never, origin);
    bare = unitText === "" && unit !== "1";
  } else if (input === undefined) {
    return fail("missing", `missing; expected ${domainText(expectation, unit)}`);
  } else {
    return fail("wrong-type", "expected a number, text with a unit, or a quantity");
  }

  if (dimensionOf(quantity.unit) !== dimensionOf(unit)) {
    return fail("other-dimension", otherDimension(quantity.unit, unit));
  }
  const converted = convertQuantity(quantity as Quantity<DimensionOf<U>>, unit as unknown as UnitOf<DimensionOf<U>>);
  const { value } = keptOf(converted);
  const slip = bare ? implausible(value, expectation, unit, path) : undefined;
  if (!inDomain(value, expectation) && !slip?.message.includes("did you mean")) {
    return fail("out-of-domain", `must be ${domainText(expectation, unit)}, but came as ${received(input)}`);
  }
  if (slip) return { ok: false, problem: slip };
  return { ok: true, quantity: converted };
}

function unknownUnit(text: string, unit: Unit): string {
  if (/^(\d+(\/0)?\s*AWG|AWG.*)$/i.test(text.trim()) || /^(\/0\s*)?AWG$/i.test(text.trim())) {
    return "an AWG size is not a quantity; look its area up with awgArea in pv-to-grid/conductor";
  }
  const near = nearestUnit(text);
  return `"${text}" is not a unit that is known${near ? `; did you mean ${near}?` : `; expected ${unit}`}`;
}

function otherDimension(came: Unit, due: Unit): string {
  const kinds = [dimensionOf(came), dimensionOf(due)];
  if (kinds.includes("temperature") && kinds.includes("temperatureDifference")) {
    return `${came} and ${due} are a temperature and a difference of temperatures, which do not convert`;
  }
  return `${came} is a unit of ${dimensionOf(came)}; a value in ${due} (${dimensionOf(due)}) is due`;
}
