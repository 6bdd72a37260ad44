import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { faultCurrentWithInverters, threePhaseFaultCurrent, voltageDuringFault } from "./current.js";
import { pathImpedance, pathReactance, pathResistance } from "./network.js";
import { transformerImpedance, transformerReactance, transformerResistance } from "./transformer.js";

/** Resistance and reactance of a part of the path to a fault, a phase. */
export interface PhasePath {
  readonly resistance: Input<"resistance">;
  readonly reactance: Input<"resistance">;
}

/** A symmetrical fault with the path that limits it. */
export interface PhaseFault {
  readonly resistance: Quantity<"resistance">;
  readonly reactance: Quantity<"resistance">;
  readonly impedance: Quantity<"resistance">;
  readonly current: Quantity<"current">;
}

/**
 * Symmetrical three-phase fault at the end of a chain of parts, resistance and reactance added apart.
 *
 * @param supply - nominal voltage between lines and the voltage factor
 * @param parts - source, transformer and cables, a phase; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { threePhaseFault } from "pv-to-grid/protection";
 * const fault = threePhaseFault(
 *   { lineToLine: "380 V", faultVoltageFactor: "1" },
 *   [{ resistance: "0 mΩ", reactance: "4.4403 mΩ" }, { resistance: "0.1015 mΩ", reactance: "0.1125 mΩ" }],
 * );
 * "current" in fault && fault.current.in("kA").show(); // "48.18 kA"
 * ```
 */
export function threePhaseFault(
  supply: { readonly lineToLine: Input<"voltage">; readonly faultVoltageFactor: Input<"ratio"> },
  parts: readonly Known<PhasePath>[],
): Known<PhaseFault> {
  const absent = parts.flatMap((part) => (isMissing(part) ? part.missing : []));
  if (absent.length > 0) return missing(...new Set(absent));
  const known = parts.filter((part): part is PhasePath => !isMissing(part));
  const resistance = pathResistance({ phaseResistances: known.map((part) => part.resistance) });
  const reactance = pathReactance({ phaseReactances: known.map((part) => part.reactance) });
  const impedance = pathImpedance({ phaseResistance: resistance, phaseReactance: reactance });
  const current = threePhaseFaultCurrent({ faultVoltage: voltageDuringFault(supply), phaseImpedance: impedance });
  return Object.freeze({ resistance, reactance, impedance, current });
}

/**
 * Largest fault current at a place: that of the grid and the largest output currents of all inverters, plainly added.
 *
 * @param grid - largest fault current from the grid at that place
 * @param inverters - largest output current of each inverter
 * @example
 * ```ts
 * import { largestFaultCurrent } from "pv-to-grid/protection";
 * const current = largestFaultCurrent("6 kA", ["24 A"]);
 * "text" in current && current.text; // "6024"
 * ```
 */
export function largestFaultCurrent(
  grid: Known<Input<"current">>,
  inverters: readonly Known<Input<"current">>[],
): Known<Quantity<"current">> {
  const absent = [grid, ...inverters].flatMap((part) => (isMissing(part) ? part.missing : []));
  if (isMissing(grid) || absent.length > 0) return missing(...new Set(absent));
  const known = inverters.filter((current): current is Input<"current"> => !isMissing(current));
  return faultCurrentWithInverters({ gridFaultCurrent: grid, inverterCurrents: known.length > 0 ? known : ["0 A"] });
}

/** A transformer by its nameplate. */
export interface TransformerPlate {
  readonly transformerPower: Input<"apparentPower">;
  readonly shortCircuitVoltage: Input<"ratio">;
  /** Nominal voltage between lines of the low-voltage side. */
  readonly lineToLine: Input<"voltage">;
  readonly loadLoss: Known<Input<"activePower">>;
}

/**
 * Impedance of a transformer a phase; resistance and reactance apart need its load loss.
 *
 * @param plate - rated power, short-circuit voltage, voltage and load loss
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { transformerPath } from "pv-to-grid/protection";
 * const { path } = transformerPath({ transformerPower: "400 kVA", shortCircuitVoltage: "6 %", lineToLine: "400 V", loadLoss: "4.8 kW" });
 * "resistance" in path && path.resistance.in("mΩ").text; // "4.8"
 * ```
 */
export function transformerPath(plate: TransformerPlate): {
  readonly impedance: Quantity<"resistance">;
  readonly path: Known<{ readonly resistance: Quantity<"resistance">; readonly reactance: Quantity<"resistance"> }>;
} {
  const { transformerPower, shortCircuitVoltage, lineToLine, loadLoss } = plate;
  const impedance = transformerImpedance({ shortCircuitVoltage, referredVoltage: lineToLine, transformerPower });
  const path = whenKnown({ loadLoss }, (known) => {
    const resistance = transformerResistance({
      loadLoss: known.loadLoss,
      referredVoltage: lineToLine,
      transformerPower,
    });
    const reactance = transformerReactance({
      transformerImpedanceValue: impedance,
      transformerResistanceValue: resistance,
    });
    return Object.freeze({ resistance, reactance });
  });
  return Object.freeze({ impedance, path });
}
