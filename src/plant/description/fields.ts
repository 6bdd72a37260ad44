import * as z from "zod/mini";
import {
  type DimensionOf,
  type Domain,
  domainText,
  type Problem,
  type Quantity,
  readInput,
  type Unit,
} from "../../quantity/index.js";

/**
 * What a key of the description is: a fact must be there; a finding may be left out, and the checks that need it are then
 * open; a choice may be left out or be "choose", and the library chooses.
 */
export type Role = "fact" | "finding" | "choice";

/** Marks where an issue of a schema carries a ready problem. */
export interface ProblemIssue {
  readonly code: "custom";
  readonly message: string;
  readonly params: { readonly problem: Problem };
}

const PATH_FROM_SCHEMA = "";

/** The quantity of one unit, or of either of several. */
type QuantityIn<U extends Unit> = U extends Unit ? Quantity<DimensionOf<U>> : never;

function quantitySchema<U extends Unit>(units: readonly [U, ...U[]], about: string, domain: Domain) {
  const read = z.transform((input: string | number, context): QuantityIn<U> => {
    // The first unit is the documented one; the others are other ways in which a datasheet prints the same fact.
    let problem: Problem | undefined;
    for (const unit of units) {
      const reading = readInput(input, unit === units[0] ? { unit, ...domain } : { unit }, PATH_FROM_SCHEMA);
      if (reading.ok) return reading.quantity as QuantityIn<U>;
      problem ??= reading.problem;
    }
    context.issues.push({ code: "custom", message: problem!.message, params: { problem }, input });
    return z.NEVER;
  });
  const description = `${about} [${units.join(" or ")}]; ${domainText(domain, units[0])}`;
  return z.pipe(z.union([z.string(), z.number()]), read).check(z.meta({ description, unit: units[0] }));
}

/** A quantity that must be there. */
export function fact<U extends Unit>(unit: U | readonly [U, ...U[]], about: string, domain: Domain = {}) {
  return quantitySchema(asList(unit), about, domain).check(z.meta({ ...metaOf(unit, about, domain), role: "fact" }));
}

/** A quantity that may be left out; the checks that need it are then open. */
export function finding<U extends Unit>(unit: U | readonly [U, ...U[]], about: string, domain: Domain = {}) {
  const schema = quantitySchema(asList(unit), about, domain);
  return z.optional(schema.check(z.meta({ ...metaOf(unit, about, domain), role: "finding" })));
}

/** A quantity that the library chooses where it is left out or "choose". */
export function choice<U extends Unit>(unit: U | readonly [U, ...U[]], about: string, domain: Domain = {}) {
  const schema = z.union([z.literal("choose"), quantitySchema(asList(unit), about, domain)]);
  return z.optional(schema.check(z.meta({ ...metaOf(unit, about, domain), role: "choice" })));
}

/** A device as text: its characteristic or class, where it has one, and its rating, such as "gG 50 A". */
export interface StatedDevice {
  readonly characteristic: string | null;
  readonly ratedCurrent: Quantity<"current">;
}

/** A device that may be left out, written as its characteristic or class and its rating. */
export function deviceText(about: string) {
  const read = z.transform((input: string, context): StatedDevice => {
    const [, characteristic, rating] = /^(?:(gG|gL|B|C|D)\s+)?(\S+\s*A)$/.exec(input.trim()) ?? [];
    const reading = readInput(rating ?? input, { unit: "A", above: 0 }, PATH_FROM_SCHEMA);
    if (reading.ok) return { characteristic: characteristic ?? null, ratedCurrent: reading.quantity };
    const problem: Problem = { ...reading.problem, expected: "a characteristic and a rating, such as gG 50 A or 63 A" };
    context.issues.push({ code: "custom", message: problem.message, params: { problem }, input });
    return z.NEVER;
  });
  const description = `${about}, as characteristic and rating, such as "gG 50 A"`;
  return z.optional(z.pipe(z.string(), read).check(z.meta({ description, role: "finding" })));
}

/** A conductor size: a section, a gauge size such as 10 AWG where the wiring rules count in gauges, or left to choice. */
export function conductorSize(about: string) {
  const gauge = z.string().check(z.regex(/^\d+(\/0)? AWG$/));
  const section = quantitySchema(["mm²"], about, { above: 0, usual: [0.5, 1000] });
  const description = `${about} [mm² or kcmil], a gauge size such as 10 AWG, or "choose"`;
  return z.optional(
    z.union([z.literal("choose"), gauge, section]).check(z.meta({ description, unit: "mm²", role: "choice" })),
  );
}

function asList<U extends Unit>(unit: U | readonly [U, ...U[]]): readonly [U, ...U[]] {
  return Array.isArray(unit) ? (unit as unknown as readonly [U, ...U[]]) : [unit as U];
}

function metaOf<U extends Unit>(unit: U | readonly [U, ...U[]], about: string, domain: Domain) {
  const units = asList(unit);
  return { description: `${about} [${units.join(" or ")}]; ${domainText(domain, units[0])}`, unit: units[0] };
}

/** A name: text that is not empty. */
export function name(about: string) {
  return z.string().check(z.minLength(1), z.maxLength(200), z.meta({ description: about, role: "fact" }));
}

/** Text that may be left out. */
export function note(about: string) {
  return z.optional(z.string().check(z.maxLength(2000), z.meta({ description: about, role: "finding" })));
}

/** The keys of a closed list that a subject exports, for the schema's enumerations. */
export function keysOf<const L extends readonly { readonly key: string }[]>(
  list: L,
): { readonly [I in keyof L]: L[I]["key"] } {
  return list.map(({ key }) => key) as unknown as { readonly [I in keyof L]: L[I]["key"] };
}

/** One of a closed list, required. */
export function oneOf<const L extends readonly string[]>(list: L, about: string) {
  return z.enum(list as unknown as { [K in L[number]]: K }).check(z.meta({ description: about, role: "fact" }));
}

/** One of a closed list that may be left out. */
export function perhapsOneOf<const L extends readonly string[]>(list: L, about: string) {
  return z.optional(
    z.enum(list as unknown as { [K in L[number]]: K }).check(z.meta({ description: about, role: "finding" })),
  );
}

/** A count of things. */
export function count(about: string, least = 1) {
  return z.int().check(z.gte(least), z.lte(1_000_000), z.meta({ description: about, role: "fact" }));
}

/** A count that may be left out. */
export function perhapsCount(about: string, least = 0) {
  return z.optional(z.int().check(z.gte(least), z.lte(1_000_000), z.meta({ description: about, role: "finding" })));
}

/** Yes or no, or left out. */
export function perhaps(about: string) {
  return z.optional(z.boolean().check(z.meta({ description: about, role: "finding" })));
}

/** Where the values of an object are from. */
export const statedIn = note(
  "where the values of this object are from: a datasheet and its revision, a survey, an assumption",
);
