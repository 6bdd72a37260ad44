import { given, type Input, type Quantity } from "../../quantity/index.js";
import {
  conventionalLength,
  eig2009_reactance_allowance,
  eig2009_resistivity,
  eig2009_section,
  magneticOperatingCurrent,
} from "./length.js";

/** A circuit whose longest length is asked for by the conventional method. */
export interface ConventionalQuestion {
  readonly lineToEarth: Input<"voltage">;
  /** Nominal section of the line conductor. */
  readonly section: Input<"area">;
  readonly material: "copper" | "aluminium";
  /** Section of the line conductor over that of the protective conductor or neutral. */
  readonly sectionRatio: Input<"ratio">;
  /** Setting of the instantaneous release; the release tolerates 20 per cent more. */
  readonly magneticSetting: Input<"current">;
}

/**
 * Longest circuit whose device still trips at a fault at its end, by the conventional method of the trade: 80 per cent of
 * the voltage at the origin, reactance neglected up to 120 mm². Never together with a factor for the lowest voltage.
 *
 * @param circuit - voltage, conductors and setting of the release
 * @throws InputError where a value lies outside its domain, or the section is more than 240 mm²
 * @example
 * ```ts
 * import { longestConventionalCircuit } from "pv-to-grid/protection";
 * longestConventionalCircuit({ lineToEarth: "230 V", section: "2.5 mm²", material: "copper", sectionRatio: "1", magneticSetting: "100 A" }).show(); // "83.33 m"
 * ```
 */
export function longestConventionalCircuit(circuit: ConventionalQuestion): Quantity<"length"> {
  const { lineToEarth, section, material, sectionRatio, magneticSetting } = circuit;
  const nominal = given(section, "mm²");
  const drawnSmaller = eig2009_section.rows().includes(nominal.text);
  return conventionalLength({
    lineToEarth,
    conventionalSectionValue: drawnSmaller ? eig2009_section({ section: nominal }) : nominal,
    conventionalResistivity: eig2009_resistivity({ material }),
    reactanceAllowance: eig2009_reactance_allowance({ section: nominal }),
    sectionRatio,
    operatingCurrent: magneticOperatingCurrent({ magneticSetting }),
  });
}
