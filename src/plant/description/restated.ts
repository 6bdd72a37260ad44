import { isQuantity, restate } from "../../quantity/index.js";

/** Gives every quantity of an object, and of those inside it, the place that the nearest `statedIn` names. */
export function restated<T>(value: T, statedIn?: string): T {
  if (isQuantity(value)) return (statedIn === undefined ? value : restate(value, statedIn)) as T;
  if (Array.isArray(value)) return value.map((item) => restated<unknown>(item, statedIn)) as T;
  if (typeof value !== "object" || value === null) return value;
  const own = (value as { statedIn?: unknown }).statedIn;
  const stated = typeof own === "string" ? own : statedIn;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, restated<unknown>(item, stated)])) as T;
}
