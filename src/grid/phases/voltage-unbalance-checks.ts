import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { voltageUnbalanceWithinLimit } from "./conditions.js";
import { voltageUnbalance } from "./phase-load.js";
import { voltageUnbalanceLimits } from "./unbalance-limits.js";

/** Measured or computed line voltages with the plant feeding in, against the three per cent of NFPA 70. */
export function voltageUnbalanceChecks(supply: {
  /** The three line-to-line voltages. */
  readonly lineVoltages: Known<readonly Input<"voltage">[]>;
  readonly at: string;
}): readonly Check[] {
  const value = whenKnown({ lineVoltages: supply.lineVoltages }, voltageUnbalance);
  const limit = voltageUnbalanceLimits({ document: "NFPA 70:2017" });
  return [
    voltageUnbalanceWithinLimit({ value, limit, at: supply.at, remedy: "spread single-phase sources over the phases" }),
  ];
}
