import type { Rule } from "../../../../src/catalogue/index.js";
import type { Domain } from "../../../../src/quantity/index.js";
import { code, escaped, list, section } from "../html.js";
import { domainText } from "./symbols.js";

const READING = `${code("missing")}, ${code("unknown-key")}, ${code("not-a-number")}, ${code("unknown-unit")}, ${code("other-dimension")}: an input is left out, not known, not readable or of another dimension`;

/** Everything for which the rule throws an `InputError`, by its codes. */
export function errorsPart({ declaration }: Rule): string {
  if ("sizes" in declaration) return "";
  const items = [READING];
  if ("takes" in declaration) {
    const bounded = Object.entries(declaration.takes).filter(([, symbol]) => isBounded(symbol));
    if (bounded.length > 0) {
      items.push(
        `${code("out-of-domain")}: ${bounded.map(([key, symbol]) => `${code(key)} not ${domainText({ ...symbol, usual: undefined } as unknown as Domain)}`).join("; ")}`,
      );
    }
    if (Object.values(declaration.takes).some(({ usual }) => usual)) {
      items.push(
        `${code("implausible")}: a bare number outside the usual range, refused with a guess at the slip; with its unit it is taken`,
      );
    }
    const requires = "requires" in declaration ? (declaration.requires ?? []) : [];
    items.push(
      ...requires.map(
        ({ that, because }) => `${code("requirement")}: unless ${code(that)}, because ${escaped(because)}`,
      ),
    );
    items.push(`${code("not-finite")}: the result is not a finite number`);
  }
  if ("rows" in declaration) {
    items.push(
      `${code("not-tabulated")}: nothing is tabulated there; the table is never extrapolated`,
      `${code("not-in-list")}: a heading that the table does not have`,
    );
  }
  if ("asks" in declaration)
    items[0] = `${code("missing")}: neither a value and a limit nor what is missing was given; ${code("other-dimension")}, ${code("wrong-type")}: a side is of another kind`;
  return section("Errors", `<p>Throws an ${code("InputError")} that lists every problem at once:</p>${list(items)}`);
}

function isBounded({ above, from, below, to }: Domain): boolean {
  return [above, from, below, to].some((bound) => bound !== undefined);
}
