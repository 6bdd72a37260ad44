import {
  ampacityInUse,
  nfpa70_2023_310_15_b_1_1,
  nfpa70_2023_310_15_c_1,
  nfpa70_2023_310_16,
} from "../../conductor/index.js";
import { formula } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";

/**
 * Largest short-circuit current that a source-circuit conductor serves. @function
 *
 * @example
 * ```ts
 * import { shortCircuitCurrentServed } from "pv-to-grid/string";
 * shortCircuitCurrentServed({ correctedAmpacity: "14.35 A", terminalAmpacity: "20 A" }).text; // "11.48"
 * ```
 */
export const shortCircuitCurrentServed = /* @__PURE__ */ formula({
  id: "string/short-circuit-current-served",
  about: "largest short-circuit current that a source-circuit conductor serves",
  takes: {
    correctedAmpacity: { unit: "A", symbol: "I_z,corr", about: "ampacity after the factors for ambient and number", above: 0, usual: [1, 5000] },
    terminalAmpacity: { unit: "A", symbol: "I_z,term", about: "tabulated ampacity in the column of the terminals", above: 0, usual: [1, 5000] },
  },
  constants: {
    irradianceFactor: {
      value: "1.25", unit: "1", symbol: "1.25", about: "allowance for irradiance above that of the standard test conditions",
      source: [
        { in: "AS/NZS 5033:2021", clause: "4.2.2", grade: "reproduced", seen: "RFI article on AS/NZS 5033:undated, example" },
        { in: "NFPA 70:2020", clause: "690.8(A)(1)(a)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(A)(1)(a)" },
        { in: "IEC 60364-7-712:2017", clause: "annex B", grade: "memory" },
      ],
    },
    continuous: {
      value: "1.25", unit: "1", symbol: "125 %", about: "allowance for continuous duty",
      source: [
        { in: "NFPA 70:2014", clause: "690.8(B)(1)", grade: "reproduced", seen: "Home Power circuit sizing:undated, three-string example" },
        { in: "NFPA 70:2020", clause: "690.8(B)(1) and 690.9(B)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B) and 690.9(B)" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_SC,max" },
  expression: "min(correctedAmpacity / irradianceFactor, terminalAmpacity / (irradianceFactor * continuous))",
  source: [
    { in: "Oregon LRT page:undated", clause: "table of largest short-circuit currents", grade: "original" },
    { in: "NFPA 70:2020", clause: "690.8(B)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B)" },
  ],
  unproven: { because: "no publication found", sought: "tables of largest module currents that print every assumption; the one found leaves out the rating of the insulation" },
});

/** A source-circuit conductor in a raceway, cable or the earth, and where it lies. */
export interface SourceConductor {
  readonly conductorSize: string;
  readonly conductor: "copper" | "aluminium";
  /** Temperature rating of its insulation, and of the terminals at its ends. */
  readonly rating: "60 °C" | "75 °C" | "90 °C";
  readonly terminalRating: "60 °C" | "75 °C" | "90 °C";
  readonly ambient: Input<"temperature">;
  /** Current-carrying conductors together. */
  readonly conductors: Input<"ratio">;
}

/**
 * Largest short-circuit current of a module or string for a conductor of the NEC: the ampacity tables, their factors, and
 * both checks of 690.8(B) the other way round.
 *
 * @throws InputError where nothing is tabulated
 * @example
 * ```ts
 * import { largestModuleCurrent } from "pv-to-grid/string";
 * largestModuleCurrent({ conductorSize: "10 AWG", conductor: "copper", rating: "90 °C", terminalRating: "75 °C", ambient: "47 °C", conductors: 9 }).show(); // "18.37 A"
 * ```
 */
export function largestModuleCurrent(wire: SourceConductor): Quantity<"current"> {
  const { conductorSize, conductor, rating, terminalRating, ambient, conductors } = wire;
  const correctedAmpacity = ampacityInUse({
    tabulatedAmpacity: nfpa70_2023_310_16({ conductorSize, conductor, rating }),
    temperatureFactor: nfpa70_2023_310_15_b_1_1({ ambient, rating }),
    groupingFactor: nfpa70_2023_310_15_c_1({ conductors }),
  });
  const terminalAmpacity = nfpa70_2023_310_16({ conductorSize, conductor, rating: terminalRating });
  return shortCircuitCurrentServed({ correctedAmpacity, terminalAmpacity });
}
