import type { Origin } from "../quantity/quantity.js";

/** A named value, such as a conductor size or a cable type, with its origin. */
export interface Named {
  readonly name: string;
  readonly origin: Origin;
}

export function named(name: string, origin: Origin): Named {
  return Object.freeze({ name, origin });
}

/** Whether a value is a named one. */
export function isNamed(value: unknown): value is Named {
  return typeof value === "object" && value !== null && "name" in value && "origin" in value;
}
