import { InputError, type Problem } from "../../quantity/index.js";
import { received } from "../../quantity/input-error.js";
import { contradictionsOf } from "./contradictions.js";
import { type Plant, type PlantDescription, plantSchema } from "./plant-description.js";
import { problemsOf } from "./problems.js";
import { restated } from "./restated.js";
import { valueContradictions } from "./values.js";

/** A description that was read, or everything that is wrong with it. */
export type ReadPlant =
  | { readonly ok: true; readonly plant: PlantDescription }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const DEEPEST = 40;

/** Topics that the library refuses on purpose. */
const REFUSED: readonly (readonly [RegExp, string])[] = [
  [
    /batter|storage|hybrid/i,
    "storage and hybrid inverters on the d.c. side are not sized here, since their fault currents and modes need rules of their own",
  ],
  [/generator|genset/i, "parallel generators are not sized here, since islanding and fault levels change with them"],
  [/island|off.?grid/i, "island operation is not sized here, since protection by the grid's fault current is absent"],
  [/static|ballast|wind.?load|snow/i, "statics are not computed here; they are a structural engineer's work"],
];

function withRefusals(problem: Problem): Problem {
  if (problem.code !== "unknown-key") return problem;
  const key = problem.path.split(".").at(-1) ?? "";
  const reason = REFUSED.find(([words]) => words.test(key))?.[1];
  return reason === undefined ? problem : { ...problem, code: "refused", message: reason };
}

function depthOf(value: unknown, most: number): number {
  if (most < 0 || typeof value !== "object" || value === null) return 0;
  let deepest = 0;
  for (const item of Object.values(value)) deepest = Math.max(deepest, depthOf(item, most - 1));
  return deepest + 1;
}

/** Reads a description into quantities; returns the plant or every problem at once. */
export function interpretPlant(input: unknown): { readonly plant: Plant } | { readonly problems: readonly Problem[] } {
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    const message = "a plant description is one object";
    return { problems: [{ path: "", code: "wrong-type", message, expected: "an object", received: received(input) }] };
  }
  if (depthOf(input, DEEPEST) > DEEPEST) {
    const message = `nested deeper than ${DEEPEST} levels`;
    return {
      problems: [{ path: "", code: "refused", message, expected: `at most ${DEEPEST} levels`, received: "an object" }],
    };
  }
  const parsed = plantSchema.safeParse(input);
  const contradictions = contradictionsOf(input);
  if (!parsed.success) {
    return { problems: [...problemsOf(plantSchema, input, parsed.error.issues).map(withRefusals), ...contradictions] };
  }
  const plant = restated(parsed.data);
  const problems = [...contradictions, ...valueContradictions(plant)];
  return problems.length > 0 ? { problems } : { plant };
}

/**
 * Reads a plant description from JSON text or from an object, without throwing.
 *
 * @param source - JSON text, or what `JSON.parse` returned
 * @returns the description, or every problem with its path, what was expected and what came
 * @example
 * ```ts
 * import { readPlant } from "pv-to-grid";
 * const read = readPlant('{ "format": "pv-to-grid/plant@1" }');
 * read.ok; // false
 * ```
 */
export function readPlant(source: unknown): ReadPlant {
  let input = source;
  if (typeof source === "string") {
    try {
      input = JSON.parse(source.replace(/^\uFEFF/, "")) as unknown;
    } catch (error) {
      const message = `this is not JSON: ${(error as Error).message}`;
      return {
        ok: false,
        problems: [{ path: "", code: "not-readable", message, expected: "JSON text", received: received(source) }],
      };
    }
  }
  const read = interpretPlant(input);
  return "plant" in read ? { ok: true, plant: input as PlantDescription } : { ok: false, problems: read.problems };
}

/** The plant of a description; throws one `InputError` with every problem. */
export function plantOf(description: unknown): Plant {
  const read = interpretPlant(description);
  if ("problems" in read) throw new InputError("plant", read.problems);
  return read.plant;
}
