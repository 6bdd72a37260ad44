import { weakTable } from "./audit-page.js";
import { type Findings, grouped } from "./findings.js";
import { page } from "./markdown.js";

/** Everything that is weak and behind no known requirement, with the cells that nobody notices. */
export function weakPage({ audit }: Findings): string {
  const others = audit.summary.weak.filter(({ safety }) => !safety);
  const bare = grouped(
    audit.cells.filter(({ shiftNoticed }) => !shiftNoticed),
    ({ table }) => table,
  );
  const lines = bare.map(
    ([table, cells]) => `- **${table}** (${cells.length}): ${cells.map(({ place }) => place).join("; ")}`,
  );
  return page("What else is weak", [
    "Rules that no requirement of the example plants leans on. Those that one does stand first on the [audit page](README.md).",
    weakTable(others),
    "## Cells of which nobody would notice another last digit",
    lines.join("\n") || "None.",
  ]);
}
