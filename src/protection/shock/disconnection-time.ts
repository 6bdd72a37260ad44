import { isMissing, type Known } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { iec60364_4_41_2017_distribution } from "./distribution-times.js";
import { iec60364_4_41_2017_41_1, iec60364_4_41_2017_41_1_above } from "./times-2017.js";
import { voltageWithinTable } from "./table-edge.js";

/** Kind of circuit: the circuit of an inverter counts as a final circuit unless it is said otherwise. */
export type CircuitUse = "final" | "distribution";

/**
 * Longest time until an a.c. circuit must be disconnected, by the edition of 2017.
 *
 * @param system - TN or TT
 * @param circuit - final circuit, or distribution circuit
 * @param lineToEarth - nominal voltage between line and earth
 * @throws InputError where the voltage to earth is 50 V or less
 * @example
 * ```ts
 * import { disconnectionTime } from "pv-to-grid/protection";
 * const time = disconnectionTime("TN", "final", "230 V");
 * "text" in time && time.text; // "0.4"
 * ```
 */
export function disconnectionTime(
  system: "TN" | "TT",
  circuit: CircuitUse,
  lineToEarth: Known<Input<"voltage">>,
): Known<Quantity<"time">> {
  if (circuit === "distribution") return iec60364_4_41_2017_distribution({ system });
  if (isMissing(lineToEarth)) return lineToEarth;
  const voltage = given(lineToEarth, "V");
  const last = given(`${iec60364_4_41_2017_41_1.rows().at(-1)!} V`, "V");
  return voltageWithinTable({ value: voltage, limit: last }).verdict === "met"
    ? iec60364_4_41_2017_41_1({ lineToEarth: voltage, system, currentKind: "a.c." })
    : iec60364_4_41_2017_41_1_above({ voltageRange: "above 400 V", system, currentKind: "a.c." });
}
