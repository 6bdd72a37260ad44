import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import { flickerSquared, longTermFlickerOfUnit, longTermFlickerOfUnits, rapidVoltageChange } from "./flicker.js";
import {
  flickerLimits,
  flickerWithinLimit,
  rapidVoltageChangeLimits,
  rapidVoltageChangeWithinLimit,
} from "./limits.js";

/** Units that switch or flicker at a connection point. */
export interface FlickerFor {
  readonly rules: GridRules;
  readonly shortCircuitPower: Known<Input<"apparentPower">>;
  /** Inrush factor and apparent power of the largest unit. */
  readonly largestUnit: {
    readonly inrushFactor: Known<Input<"ratio">>;
    readonly apparentPower: Known<Input<"apparentPower">>;
  };
  /** Flicker coefficient and apparent power of each unit; left out where nobody asks for flicker. */
  readonly units?: readonly {
    readonly flickerCoefficient: Known<Input<"ratio">>;
    readonly apparentPower: Known<Input<"apparentPower">>;
  }[];
  readonly at: string;
}

/** Rapid voltage change and flicker against the limits of the connection rules; no check where they print none. */
export function flickerChecks({ rules, shortCircuitPower, largestUnit, units, at }: FlickerFor): readonly Check[] {
  const checks: Check[] = [];
  const document = rapidLimitOf(rules);
  if (document !== null) {
    const value = whenKnown({ ...largestUnit, shortCircuitPower }, rapidVoltageChange);
    checks.push(
      rapidVoltageChangeWithinLimit({ value, limit: rapidVoltageChangeLimits({ document }), at: `${document}/${at}` }),
    );
  }
  if (units !== undefined && rules === "VDE-AR-N 4105:2018") {
    const own = units.map((unit) =>
      whenKnown({ ...unit, shortCircuitPower }, (known) => flickerSquared({ flicker: longTermFlickerOfUnit(known) })),
    );
    const value = whenKnown(Object.fromEntries(own.entries()), (known) =>
      longTermFlickerOfUnits({ flickerSquares: Object.values(known) }),
    );
    checks.push(flickerWithinLimit({ value, limit: flickerLimits({ document: "VDE-AR-N 4105:2018 long-term" }), at }));
  }
  return Object.freeze(checks);
}

function rapidLimitOf(rules: GridRules): string | null {
  if (rules === "VDE-AR-N 4105:2018") return rules;
  if (rules.startsWith("EREC ")) return "EREC P28:2019";
  if (rules.startsWith("Netcode")) return "Netcode usual operation";
  if (rules.startsWith("IEEE 1547:2018")) return "IEEE 1547:2018 low voltage";
  return null;
}
