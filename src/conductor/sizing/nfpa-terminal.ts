import { type Check, condition, isMissing, type Known, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import {
  continuousCurrentWithMargin,
  terminalColumnAmpacity,
  unmarkedTerminalColumn,
} from "../ampacity/nfpa/compose.js";
import { nfpa70_2023_310_16 } from "../ampacity/nfpa/table-310-16.js";
import { nfpa70_2023_240_4_d } from "../ampacity/nfpa/small-conductors.js";
import type { Cable, ConductorMetal } from "../cable.js";
import { sizeName } from "../size/size.js";
import type { Terminal } from "./terminal.js";

/**
 * Does the column of the terminal's temperature carry 125 % of the maximum current?
 *
 * @function
 */
export const withinTerminalAmpacity = /* @__PURE__ */ condition({
  id: "conductor/within-terminal-ampacity", asks: "Does the column of the terminal's temperature carry 125 % of the maximum current?", force: "requirement",
  value: { unit: "A", symbol: "1.25 I_max", about: "maximum current with its margin" }, relation: "≤",
  limit: { unit: "A", symbol: "I_t", about: "ampacity in the column of the terminal's temperature" },
  source: [{ in: "NFPA 70:2023", clause: "110.14(C) and 690.8(B)(1)", grade: "copied" }],
});

const columns = ["60 °C", "75 °C", "90 °C"] as const;

/** The checks of NFPA 70 for a conductor at its terminals; one with unmarked terminals where none is described. */
export function nfpaTerminalChecks(
  at: string,
  cable: Cable,
  size: Quantity<"area">,
  terminals: readonly Terminal[],
  continuousCurrent: Known<Input<"current">>,
): readonly Check[] {
  const conductorsInParallel = given(cable.parallel ?? 1, "1");
  const conductor = cable.kind === "PV" ? "copper" : (cable.conductor ?? "copper");
  const needed = whenKnown({ continuousCurrent }, (known) => continuousCurrentWithMargin(known));
  const places: readonly Terminal[] = terminals.length > 0 ? terminals : [{ at: `${at}/terminals` }];
  return places.map((terminal) => {
    const column = columnOf(terminal, needed);
    const because =
      terminal.temperature === undefined || isMissing(terminal.temperature)
        ? { because: "the terminals are taken as unmarked" }
        : {};
    const limit = whenKnown({ column }, (known) =>
      terminalColumnAmpacity({
        tabulatedAmpacity: nfpa70_2023_310_16({ conductorSize: sizeName(size), conductor, rating: known.column }),
        conductorsInParallel,
      }),
    );
    return withinTerminalAmpacity({ value: needed, limit, at: terminal.at, ...because });
  });
}

function columnOf({ temperature }: Terminal, needed: Known<Quantity<"current">>): Known<(typeof columns)[number]> {
  if (temperature !== undefined && !isMissing(temperature)) return warmest(given(temperature, "°C"));
  return whenKnown({ needed }, (known) => warmest(unmarkedTerminalColumn({ circuitCurrent: known.needed })));
}

// The warmest column that the terminal allows; every terminal allows the coolest.
function warmest(temperature: Quantity<"temperature">): (typeof columns)[number] {
  return columns.findLast((column) => given(column, "°C").number <= temperature.number) ?? "60 °C";
}

/** The largest overcurrent device of a small conductor after NFPA 70, 240.4(D); `null` where the conductor is not small. */
export function smallConductorLimit(size: Quantity<"area">, conductor: ConductorMetal): Quantity<"current"> | null {
  const name = sizeName(size);
  const small = nfpa70_2023_240_4_d.cells().some(({ row, column }) => row === name && column[0] === conductor);
  return small ? nfpa70_2023_240_4_d({ conductorSize: name, conductor }) : null;
}
