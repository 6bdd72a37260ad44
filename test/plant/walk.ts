type Step = string | number;
interface Loose {
  [key: Step]: unknown;
}

/** Every place of a description that a declared path names; `[]` stands for each item of a list or key of a record. */
export function placesOf(plant: unknown, path: string): readonly (readonly Step[])[] {
  const steps = path.replaceAll("[]", ".[]").split(".");
  let places: { at: unknown; steps: Step[] }[] = [{ at: plant, steps: [] }];
  for (const step of steps) {
    places = places.flatMap(({ at, steps: before }) => {
      if (typeof at !== "object" || at === null) return [];
      const keys: Step[] = step !== "[]" ? [step] : Array.isArray(at) ? [...at.keys()] : Object.keys(at);
      return keys
        .filter((key) => Object.hasOwn(at, key))
        .map((key) => ({ at: (at as Loose)[key], steps: [...before, key] }));
    });
  }
  return places.map(({ steps: found }) => found);
}

export function valueAt(plant: unknown, steps: readonly Step[]): unknown {
  return steps.reduce<unknown>((at, step) => (at as Loose)[step], plant);
}

/** A copy of a description with one value replaced. */
export function withValue<P>(plant: P, steps: readonly Step[], value: unknown): P {
  const copy = structuredClone(plant);
  const owner = valueAt(copy, steps.slice(0, -1)) as Loose;
  owner[steps.at(-1)!] = value;
  return copy;
}

/** The same value made larger or smaller; `undefined` where it is no number. Temperatures move by degrees, counts by whole steps. */
export function moved(value: unknown, direction: "up" | "down", stride: number): unknown {
  if (typeof value === "number") {
    const step = Math.max(1, Math.round(value * (stride - 1)));
    return Number.isInteger(value)
      ? value + (direction === "up" ? step : -step)
      : value * (direction === "up" ? stride : 1 / stride);
  }
  if (typeof value !== "string") return undefined;
  const [, number, unit] = /^([^\d+-]*[-+]?\d+(?:\.\d+)?)\s*(.*)$/.exec(value) ?? [];
  if (number === undefined) return undefined;
  const [, word = "", digits = ""] = /^([^\d+-]*)(.*)$/.exec(number)!;
  const before = Number(digits);
  if (/°[CF]|deg[CF]/.test(unit ?? ""))
    return `${word}${before + (direction === "up" ? 1 : -1) * (stride - 1) * 20} ${unit}`;
  const factor = (direction === "up") === before >= 0 ? stride : 1 / stride;
  return `${word}${String(before * factor)} ${unit}`;
}
