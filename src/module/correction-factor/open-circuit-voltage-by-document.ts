import type { Input, Quantity } from "../../quantity/index.js";
import { openCircuitVoltageByFactor } from "./open-circuit-voltage-by-factor.js";
import { voltageCorrectionFactor } from "./voltage-correction-factor.js";

/** A crystalline silicon module without a coefficient, the document to follow, and the cold. */
export interface ByDocument {
  readonly openCircuitVoltage: Input<"voltage">;
  /** A key of `voltageFactorDocuments`. */
  readonly document: string;
  readonly coldest: Input<"temperature">;
}

/**
 * Highest open-circuit voltage of a crystalline silicon module without a coefficient, by the table of one document.
 *
 * @throws InputError where the document has no table, or the temperature lies outside it
 * @example
 * ```ts
 * import { openCircuitVoltageByDocument } from "pv-to-grid/module";
 * openCircuitVoltageByDocument({ openCircuitVoltage: "37.95 V", document: "UTE C15-712-1:undated", coldest: "-10 °C" }).text; // "43.263"
 * ```
 */
export function openCircuitVoltageByDocument({
  openCircuitVoltage,
  document,
  coldest,
}: ByDocument): Quantity<"voltage"> {
  return openCircuitVoltageByFactor({
    openCircuitVoltage,
    voltageFactor: voltageCorrectionFactor({ document, coldest }),
  });
}
