import type { Problem } from "../../quantity/index.js";
import { received } from "../../quantity/input-error.js";

/** A description as it came: nothing about it is sure, so that contradictions show beside mistakes of spelling. */
type Loose = Readonly<Record<string, unknown>>;

function objects(value: unknown): Loose[] {
  return Array.isArray(value)
    ? value.map((item) => (typeof item === "object" && item !== null ? (item as Loose) : {}))
    : [];
}

function text(value: unknown): string | undefined {
  return typeof value === "string" && value !== "" ? value : undefined;
}

function whole(value: unknown): number | undefined {
  return typeof value === "number" && Number.isInteger(value) && value > 0 ? value : undefined;
}

function namesOf(list: readonly Loose[]): string[] {
  return list.flatMap((item) => text(item["name"]) ?? []);
}

/** Everything in a description that cannot be true together. */
export function contradictionsOf(input: unknown): Problem[] {
  if (typeof input !== "object" || input === null || Array.isArray(input)) return [];
  const plant = input as Loose;
  return [...rulesProblems(plant), ...nameProblems(plant), ...stringProblems(plant), ...routeProblems(plant)];
}

function contradiction(path: string, message: string, expected: string, value: unknown): Problem {
  return { path, code: "contradiction", message, expected, received: received(value) };
}

function unknownName(path: string, what: string, value: unknown, known: readonly string[]): Problem[] {
  const name = text(value);
  if (name === undefined || known.includes(name)) return [];
  const expected = known.length > 0 ? `one of ${known.join(", ")}` : `a ${what} of this description`;
  return [contradiction(path, `there is no ${what} named ${name}; expected ${expected}`, expected, value)];
}

function rulesProblems(plant: Loose): Problem[] {
  const [rules, practice] = [plant["rules"], plant["practice"]];
  if (rules === undefined && practice === undefined) {
    return [
      {
        path: "rules",
        code: "missing",
        message: "state rules, or a practice in their place",
        expected: "rules or practice",
        received: "undefined",
      },
    ];
  }
  if (rules !== undefined && practice !== undefined) {
    return [contradiction("practice", "state either rules or practice, never both", "rules or practice", practice)];
  }
  return [];
}

function nameProblems(plant: Loose): Problem[] {
  const problems: Problem[] = [];
  const places = new Map<string, string>();
  for (const group of ["roofs", "inverters", "boards"] as const) {
    for (const [index, item] of objects(plant[group]).entries()) {
      const name = text(item["name"]);
      if (name === undefined) continue;
      const path = `${group}[${index}].name`;
      const before = places.get(name);
      if (before)
        problems.push(contradiction(path, `the name ${name} stands at ${before} already`, "a name of its own", name));
      else places.set(name, path);
    }
  }
  const types = Object.keys(
    typeof plant["moduleTypes"] === "object" && plant["moduleTypes"] !== null ? plant["moduleTypes"] : {},
  );
  for (const [index, roof] of objects(plant["roofs"]).entries()) {
    problems.push(...unknownName(`roofs[${index}].moduleType`, "module type", roof["moduleType"], types));
  }
  for (const [index, inverter] of objects(plant["inverters"]).entries()) {
    const trackers = namesOf(objects(inverter["trackers"]));
    for (const [at, tracker] of trackers.entries()) {
      if (trackers.indexOf(tracker) < at) {
        problems.push(
          contradiction(
            `inverters[${index}].trackers[${at}].name`,
            `tracker ${tracker} stands twice`,
            "a name of its own",
            tracker,
          ),
        );
      }
    }
    for (const [join, joined] of objects(inverter["joinedTrackers"]).entries()) {
      const members = Array.isArray(joined["trackers"]) ? (joined["trackers"] as unknown[]) : [];
      for (const [at, member] of members.entries()) {
        problems.push(
          ...unknownName(`inverters[${index}].joinedTrackers[${join}].trackers[${at}]`, "tracker", member, trackers),
        );
      }
    }
  }
  return problems;
}

function stringProblems(plant: Loose): Problem[] {
  const problems: Problem[] = [];
  const [roofs, inverters, junctions] = [
    objects(plant["roofs"]),
    objects(plant["inverters"]),
    objects(plant["junctions"]),
  ];
  const used = new Map<string, number>();
  const onTracker = new Map<string, { strings: number; inputs: number; joined: boolean; path: string }>();
  for (const [index, string] of objects(plant["strings"]).entries()) {
    const path = `strings[${index}]`;
    problems.push(...unknownName(`${path}.roof`, "roof", string["roof"], namesOf(roofs)));
    problems.push(...unknownName(`${path}.inverter`, "inverter", string["inverter"], namesOf(inverters)));
    problems.push(...unknownName(`${path}.junction`, "junction", string["junction"], namesOf(junctions)));
    const inverter = inverters.find((item) => item["name"] === string["inverter"]);
    const count = whole(string["count"]) ?? 1;
    if (inverter) {
      const trackers = objects(inverter["trackers"]);
      problems.push(
        ...unknownName(
          `${path}.tracker`,
          `tracker of ${String(inverter["name"])}`,
          string["tracker"],
          namesOf(trackers),
        ),
      );
      const tracker = trackers.find((item) => item["name"] === string["tracker"]);
      if (tracker) {
        const key = `${String(inverter["name"])}/${String(tracker["name"])}`;
        const before = onTracker.get(key) ?? {
          strings: 0,
          inputs: whole(tracker["inputs"]) ?? Infinity,
          joined: false,
          path,
        };
        const joined = before.joined || string["junction"] !== undefined;
        onTracker.set(key, { ...before, strings: before.strings + count, joined, path });
      }
    }
    const roof = text(string["roof"]);
    const modules = whole(string["modules"]);
    if (roof !== undefined && modules !== undefined) used.set(roof, (used.get(roof) ?? 0) + modules * count);
  }
  for (const [tracker, { strings, inputs, joined, path }] of onTracker) {
    if (strings > inputs && !joined) {
      const expected = `at most ${inputs} strings, or a junction that joins them`;
      problems.push(
        contradiction(
          path,
          `${strings} strings on ${tracker}, which has ${inputs} inputs: describe the junction that joins them`,
          expected,
          strings,
        ),
      );
    }
  }
  for (const [index, roof] of roofs.entries()) {
    const [has, taken] = [whole(roof["modules"]), used.get(String(roof["name"]))];
    if (has !== undefined && taken !== undefined && taken > has) {
      problems.push(
        contradiction(
          `roofs[${index}].modules`,
          `the strings use ${taken} modules of this roof, which has ${has}`,
          `at least ${taken}`,
          has,
        ),
      );
    }
  }
  return problems;
}

function routeProblems(plant: Loose): Problem[] {
  const problems: Problem[] = [];
  const [roofs, inverters, boards] = [plant["roofs"], plant["inverters"], plant["boards"]].map((group) =>
    namesOf(objects(group)),
  );
  const supply = typeof plant["supply"] === "object" && plant["supply"] !== null ? (plant["supply"] as Loose) : {};
  const at = text(supply["at"]);
  const known = [...new Set([...boards!, ...(at === undefined ? [] : [at])])];
  const onward = new Map<string, string>();
  for (const [index, route] of objects(plant["routes"]).entries()) {
    const path = `routes[${index}]`;
    const [from, to] = [text(route["from"]), text(route["to"])];
    problems.push(
      ...unknownName(`${path}.from`, "roof, inverter or board", from, [...roofs!, ...inverters!, ...known]),
    );
    if (from === undefined || to === undefined) continue;
    const ends = roofs!.includes(from) ? inverters! : known;
    const what = roofs!.includes(from) ? "inverter" : "board";
    problems.push(...unknownName(`${path}.to`, what, to, ends));
    if (roofs!.includes(from)) continue;
    if (onward.has(from))
      problems.push(contradiction(`${path}.from`, `a second route leaves ${from}`, "one route onward", from));
    else onward.set(from, to);
  }
  if (at === undefined) return problems;
  for (const [index, name] of inverters!.entries()) {
    let place: string | undefined = name;
    for (let hops = 0; place !== undefined && place !== at && hops <= onward.size; hops += 1) place = onward.get(place);
    if (place !== at) {
      const expected = `routes from ${name} to ${at}`;
      problems.push(
        contradiction(`inverters[${index}].name`, `no route leads from ${name} to the supply at ${at}`, expected, name),
      );
    }
  }
  return problems;
}
