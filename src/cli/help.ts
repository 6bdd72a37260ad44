import type { Command } from "./command.js";

const CAUTION = "Sizing does not replace licensed work: local rules and the makers' instructions prevail.";

const CODES = `Exit codes: 0 all met, 1 something not met, 2 something open, 64 the command line, 65 the input, 74 reading or writing.`;

/** What the command says when asked for help. */
export function overview(commands: readonly Command[], version: string): string {
  const width = Math.max(...commands.map(({ name }) => name.length)) + 2;
  return `pv-to-grid ${version} – sizes a PV plant from the module to the grid, and shows the working and source of every number

Commands
${commands.map(({ name, about }) => `  ${name.padEnd(width)}${about}`).join("\n")}
  ${"help".padEnd(width)}help COMMAND explains one

Examples
  pv-to-grid start roof.json
  pv-to-grid size roof.json --html roof.html
  pv-to-grid explain conductor/dc-drop

${CODES}
${CAUTION}
`;
}

export function helpOf({ name, use, about, details }: Command): string {
  return `pv-to-grid ${name} ${use}\n  ${about}\n\n${details}\n\n${CODES}\n`;
}
