import type { Rule } from "../../../../src/catalogue/index.js";
import { escaped, list, section, sentence } from "../html.js";
import type { PageLinks } from "../links.js";
import { ruleLink } from "./citations.js";
import { keysOf } from "../knowledge.js";

const RELATED = 8;

/** What a rule yields, so that rules of other documents for the same thing are found. */
function yields({ declaration }: Rule): string | null {
  if ("gives" in declaration) return declaration.gives.symbol;
  return "limit" in declaration && "symbol" in declaration.value ? declaration.value.symbol : null;
}

/** Whether two rules ask the same of a caller for the same thing, so that only their documents differ. */
function sameQuestion(a: Rule, b: Rule): boolean {
  const limits = [a, b].map(({ declaration }) =>
    "limit" in declaration && "symbol" in declaration.limit ? declaration.limit.symbol : "",
  );
  return (
    a.kind === b.kind &&
    yields(a) !== null &&
    yields(a) === yields(b) &&
    limits[0] === limits[1] &&
    [...keysOf(a)].sort().join() === [...keysOf(b)].sort().join()
  );
}

/** Publications that a rule cites. */
function documents({ declaration }: Rule): ReadonlySet<string> {
  return new Set(declaration.source.map((citation) => citation.in));
}

function aboutOf({ declaration }: Rule): string {
  return "asks" in declaration ? declaration.asks : declaration.about;
}

/** Rules for the same thing by other documents, differences between copies of a table, and prints that disagree. */
export function differencesPart(rule: Rule, links: PageLinks): string {
  const own = documents(rule);
  const others = siblings(rule, links).filter(
    (other) => sameQuestion(rule, other) && ![...documents(other)].some((key) => own.has(key)),
  );
  const items = [
    ...others.map(
      (other) =>
        `${ruleLink(other.id, links)} follows ${escaped([...documents(other)].join(", ")) || "no publication"}: ${escaped(aboutOf(other))}`,
    ),
    ...("differences" in rule.declaration ? (rule.declaration.differences ?? []) : []).map(
      ({ cell, ships, others: prints, why }) =>
        `cell ${escaped(cell)}: ships ${escaped(ships)}; others print ${escaped(prints)}: ${escaped(why)}`,
    ),
    ...links.knowledge
      .errataOf(rule.id)
      .map(
        ({ source, place, printed, computed, problem, libraryDoes, direction }) =>
          `${escaped(source)}, ${escaped(place)}, prints ${escaped(printed)}; computed ${escaped(computed)}. ${escaped(sentence(problem))} The library ${escaped(libraryDoes)}.${direction === "none" ? "" : ` Following the print would be ${direction}.`}`,
      ),
  ];
  return section("Where practices and prints differ", list(items));
}

function siblings({ id }: Rule, links: PageLinks): readonly Rule[] {
  return links
    .neighbours(id)
    .filter((other) => other !== id)
    .flatMap((other) => links.knowledge.catalogue.rules.get(other) ?? []);
}

/** Rules of the same folder and those that share most inputs. */
export function relatedPart(rule: Rule, links: PageLinks): string {
  const own = new Set(keysOf(rule));
  const near = new Set(links.neighbours(rule.id));
  const shared = new Map<string, number>();
  for (const key of own) {
    const users = links.knowledge.usersOf(key);
    // A key that everything takes says little.
    for (const user of users) shared.set(user.id, (shared.get(user.id) ?? 0) + 1 / Math.sqrt(users.length));
  }
  for (const id of near) shared.set(id, (shared.get(id) ?? 0) + 1);
  shared.delete(rule.id);
  const nearest = [...shared].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1)).slice(0, RELATED);
  const items = nearest.flatMap(([id]) => {
    const other = links.knowledge.catalogue.rules.get(id);
    return other === undefined ? [] : [`${ruleLink(id, links)}: ${escaped(aboutOf(other))}`];
  });
  return section("Related rules", list(items));
}
