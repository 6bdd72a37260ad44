import type { Input, Quantity } from "../../quantity/index.js";
import {
  extraLowLeastInsulation,
  extraLowTestVoltage,
  iec60364_6_2016_leastInsulation,
  iec60364_6_2016_testVoltage,
} from "./ac-table.js";

/** A circuit whose insulation is tested: of low voltage, or SELV or PELV. */
export type CircuitUnderTest = { readonly circuitVoltage: Input<"voltage"> } | "SELV or PELV";

/** Test voltage and least resistance of a circuit. */
export interface CircuitInsulation {
  readonly testVoltage: Quantity<"voltage">;
  readonly minimum: Quantity<"resistance">;
}

/**
 * Test voltage and least insulation resistance of an a.c. circuit; where electronics cannot be disconnected, line and neutral
 * are joined and tested against the protective conductor.
 *
 * @throws InputError where the voltage is not a low voltage
 * @example
 * ```ts
 * import { acInsulation } from "pv-to-grid/commissioning";
 * acInsulation({ circuitVoltage: "400 V" }).testVoltage.text; // "500"
 * ```
 */
export function acInsulation(circuit: CircuitUnderTest): CircuitInsulation {
  if (circuit === "SELV or PELV")
    return Object.freeze({ testVoltage: extraLowTestVoltage({}), minimum: extraLowLeastInsulation({}) });
  const { circuitVoltage } = circuit;
  return Object.freeze({
    testVoltage: iec60364_6_2016_testVoltage({ circuitVoltage }),
    minimum: iec60364_6_2016_leastInsulation({ circuitVoltage }),
  });
}
