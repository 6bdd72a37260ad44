import { convert, dimensionOf, unitsOf } from "./conversion.js";
import { type Decimal, Exact, type Kept, PRECISION } from "./decimal.js";
import { InputError } from "./input-error.js";
import type { Dimension, DimensionOf, Unit, UnitOf } from "./units.js";

/** How a quantity came to be; each kind of origin adds its own facts. */
export interface Origin {
  readonly kind: "given" | "assumed" | "conversion" | "formula" | "lookup" | "choice" | "model";
}

/** An input: where the user says that it is from, or nothing where nothing was said. */
export interface GivenOrigin extends Origin {
  readonly kind: "given";
  readonly statedIn?: string;
}

/** A change of unit: the quantity as it came. */
export interface ConversionOrigin extends Origin {
  readonly kind: "conversion";
  readonly from: Quantity;
}

/** An exact decimal value with its unit and its origin. Frozen, and without arithmetic of its own: formulas combine quantities. */
export interface Quantity<D extends Dimension = Dimension> {
  /** The value in its unit, every digit. */
  readonly text: string;
  readonly unit: UnitOf<D>;
  readonly dimension: D;
  /** The value as the nearest double, for drawing and sorting. */
  readonly number: number;
  /** Whether an operation on the way could not keep every digit. */
  readonly rounded: boolean;
  /** How many digits can be trusted; `Infinity` while the value is exact. */
  readonly keeps: number;
  readonly origin: Origin;
  /** The same quantity in another unit of its kind; the conversion becomes a step of the working. */
  in(unit: UnitOf<D>): Quantity<D>;
  /** Value and unit for people, with four significant digits unless told otherwise. */
  show(options?: ShowOptions): string;
  /** Value and unit, both exact, for JSON. */
  toJSON(): { readonly value: string; readonly unit: string };
}

/** How a quantity is shown to a person. */
export interface ShowOptions {
  /** Significant digits, 1 to 34. */
  readonly digits?: number;
}

class ExactQuantity<D extends Dimension> implements Quantity<D> {
  readonly unit: UnitOf<D>;
  readonly origin: Origin;
  readonly #kept: Kept;
  #text: string | undefined;

  constructor(kept: Kept, unit: UnitOf<D>, origin: Origin) {
    this.#kept = kept;
    this.unit = unit;
    this.origin = origin;
    Object.freeze(this);
  }

  /** The exact value, also of a quantity that another copy of the package made. */
  static kept(quantity: Pick<Quantity, "text" | "keeps">): Kept {
    if (#kept in quantity) return quantity.#kept;
    return { value: new Exact(quantity.text), keeps: quantity.keeps };
  }

  /** The exact value where a value is a quantity of this copy of the package. */
  static ownKept(value: unknown): Kept | undefined {
    return typeof value === "object" && value !== null && #kept in value ? value.#kept : undefined;
  }

  get text(): string {
    return (this.#text ??= this.#kept.value.toFixed());
  }

  get dimension(): D {
    return dimensionOf(this.unit) as D;
  }

  get number(): number {
    return this.#kept.value.toNumber();
  }

  get rounded(): boolean {
    return this.#kept.keeps !== Infinity;
  }

  get keeps(): number {
    return this.#kept.keeps;
  }

  in(unit: UnitOf<D>): Quantity<D> {
    return convertQuantity<D>(this, unit);
  }

  show(options: ShowOptions = {}): string {
    const digits = options.digits ?? 4;
    if (!Number.isInteger(digits) || digits < 1 || digits > PRECISION) {
      throw new InputError("show", [
        {
          path: "digits",
          code: "out-of-domain",
          message: `digits must be a whole number from 1 to ${PRECISION}`,
          expected: `1 to ${PRECISION}`,
          received: String(digits),
        },
      ]);
    }
    const value = this.#kept.value.toSignificantDigits(digits).toFixed();
    return this.unit === "1" ? value : `${value} ${this.unit}`;
  }

  /** Value and unit, both exact, for JSON. */
  toJSON(): { readonly value: string; readonly unit: string } {
    return { value: this.text, unit: this.unit };
  }
}

/** Makes a quantity; for `quantity/` and `formula/` only, so that no number arises without an origin. */
export function makeQuantity<D extends Dimension>(kept: Kept, unit: UnitOf<D>, origin: Origin): Quantity<D> {
  return new ExactQuantity<D>(kept, unit, origin);
}

/** The decimal behind a quantity; for `quantity/` and `formula/` only. */
export function keptOf(quantity: Quantity): Kept {
  return ExactQuantity.kept(quantity);
}

/** The decimal behind a quantity of this copy of the package; `undefined` for anything else. */
export function ownKeptOf(value: unknown): Kept | undefined {
  return ExactQuantity.ownKept(value);
}

/** Whether a value is a quantity, of this or another copy of the package. */
export function isQuantity(value: unknown): value is Quantity {
  if (value instanceof ExactQuantity) return true;
  return (
    typeof value === "object" &&
    value !== null &&
    "text" in value &&
    typeof value.text === "string" &&
    "unit" in value &&
    typeof value.unit === "string" &&
    "keeps" in value &&
    typeof value.keeps === "number" &&
    "origin" in value
  );
}

/** The same quantity in another unit of its kind; itself where the unit is the same. */
export function convertQuantity<D extends Dimension>(quantity: Quantity<D>, unit: UnitOf<D>): Quantity<D> {
  if (quantity.unit === unit) return quantity;
  const from: Unit = quantity.unit;
  if (dimensionOf(unit) !== dimensionOf(from)) {
    throw new InputError("in", [
      {
        path: "unit",
        code: "other-dimension",
        message: `${from} is a unit of ${dimensionOf(from)} and does not convert to ${unit}`,
        expected: unitsOf(dimensionOf(from)).join(", "),
        received: unit,
      },
    ]);
  }
  const origin: ConversionOrigin = { kind: "conversion", from: quantity };
  return makeQuantity<D>(convert(from, unit, ExactQuantity.kept(quantity)), unit, origin);
}

export type { Decimal, DimensionOf, Kept };
