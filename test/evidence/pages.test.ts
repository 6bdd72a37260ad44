import { describe, expect, it } from "vitest";
import { auditFiles } from "../../docs/generator/audit/pages.js";
import { audit, type Erratum } from "../../src/evidence/index.js";
import { ownCase } from "./own-case.js";
import { ownRules } from "./own-rules.js";

const erratum: Erratum = {
  id: "own-erratum",
  source: "GSES handout:2011",
  place: "p. 1",
  printed: "49.06",
  computed: "49.05",
  problem: "a last digit | with a bar",
  kind: "misrounded",
  evidence: "recomputed",
  libraryDoes: "computes 49.05",
  direction: "unsafe",
  cases: ["disputed"],
};
const cases = [ownCase(), ownCase({ id: "disputed", erratum: "own-erratum", expected: { printed: "49.06" } })];
const found = audit(
  { cases, guards: [], errata: [erratum], changes: [], lock: null },
  { library: "0.0.0", from: ownRules },
);
const files = auditFiles({ audit: found, catalogue: ownRules, clauses: [], wrongReleases: [] });

describe("the audit pages", () => {
  it("say that no purchased standard was compared before anything else, and totals after all that is weak", () => {
    const page = files["README.md"]!;
    const order = [
      "No value was compared with a purchased standard",
      "## What nobody has checked",
      "## Where the library departs",
      "## The cases nearest",
      "## What changed",
      "## Totals",
    ];
    const places = order.map((text) => page.indexOf(text));
    expect(places.every((place) => place > 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(page).not.toMatch(/\d %|percent/);
  });

  it("show each rule with its source, and each case with what was printed and computed", () => {
    const page = files["subjects/own.md"]!;
    expect(page).toContain("U = U_OC + β · (T_c − T_STC)");
    expect(page).toContain("| own-cold | – | GSES handout:2011, worked examples (original) |");
    expect(page).toContain("| 49.05 V (nearest) | 49.05 | 0.0000 | yes |");
    expect(page).toContain("no: disputed (erratum own-erratum)");
    expect(page).toContain("5 cells: 0 guarded by a copy");
  });

  it("list errata, clauses, cells that nobody notices, and no wrong release", () => {
    expect(files["errata.md"]).toContain("following the print would be unsafe");
    expect(files["README.md"]).toContain("| own-erratum | GSES handout:2011 | misrounded | 49.06 | 49.05 | unsafe |");
    expect(files["clauses.md"]).toContain("## common practice");
    expect(files["weak.md"]).toContain("**own/ampacities** (5): 1.5 | copper;");
    expect(files["wrong-releases.md"]).toContain("None so far");
  });

  it("are the same as CSV, one line a thing, and as JSON", () => {
    const lines = files["audit.csv"]!.trimEnd().split("\n");
    expect(lines.length).toBe(1 + ownRules.rules.size + 1 + cases.length);
    expect(new Set(lines.map((line) => line.replace(/"[^"]*"/g, "").split(",").length)).size).toBe(1);
    expect(JSON.parse(files["audit.json"]!)).toMatchObject({
      format: "pv-to-grid/audit@1",
      cases: [{ id: "own-cold" }, { id: "disputed" }],
    });
  });
});
