import { InputError, type Quantity } from "../../quantity/index.js";
import { ansiC84_1_2020_nominalVoltage, iec60038_2009_nominalVoltage, nominalFrequency } from "./nominal-voltage.js";
import { type Connection, type SupplySystem, supplySystem } from "./supply-systems.js";

/** What the name of a supply system says. */
export interface SupplyFacts {
  readonly key: SupplySystem;
  readonly lineToNeutral: Quantity<"voltage">;
  readonly lineToLine: Quantity<"voltage">;
  readonly frequency: Quantity<"frequency">;
  readonly phases: 1 | 3;
  /** How a plant can be connected to it. */
  readonly connections: readonly Connection[];
}

const THREE_PHASE: readonly Connection[] = ["three-phase", "single-phase"];
const SPLIT_PHASE: readonly Connection[] = ["split-phase", "single-phase"];

function voltageBetween(supply: SupplySystem, between: "line and neutral" | "two lines"): Quantity<"voltage"> {
  return supply === "230/400 V 50 Hz"
    ? iec60038_2009_nominalVoltage({ supply, between })
    : ansiC84_1_2020_nominalVoltage({ supply, between });
}

/**
 * Nominal voltages, frequency and phases of a supply system.
 *
 * @throws InputError that lists the known systems where the name is another
 * @example
 * ```ts
 * import { supplyFacts } from "pv-to-grid/grid";
 * supplyFacts("208Y/120 V 60 Hz").lineToLine.text; // "208"
 * ```
 */
export function supplyFacts(supply: SupplySystem): SupplyFacts {
  const { key } = supplySystem(supply);
  const split = key === "120/240 V 60 Hz split-phase";
  return Object.freeze({
    key,
    lineToNeutral: voltageBetween(key, "line and neutral"),
    lineToLine: voltageBetween(key, "two lines"),
    frequency: nominalFrequency({ supply: key }),
    phases: split ? 1 : 3,
    connections: split ? SPLIT_PHASE : THREE_PHASE,
  });
}

/**
 * The nominal voltage that a connection sees: between two lines, or between line and neutral for a single-phase connection.
 *
 * @throws InputError where the supply system has no such connection
 */
export function nominalVoltageOf(supply: SupplySystem, connection: Connection): Quantity<"voltage"> {
  const facts = supplyFacts(supply);
  if (!facts.connections.includes(connection)) {
    const expected = facts.connections.join(", ");
    throw new InputError("connection", [
      {
        path: "connection",
        code: "contradiction",
        message: `${supply} has no ${connection} connection`,
        expected,
        received: connection,
      },
    ]);
  }
  return connection === "single-phase" ? facts.lineToNeutral : facts.lineToLine;
}
