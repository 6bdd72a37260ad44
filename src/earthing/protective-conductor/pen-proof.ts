import type { Check, Known } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { iec60364_5_54_2011_pen_minimum, noResidualDeviceInPen, penLargeEnough } from "./pen.js";

/** A combined protective and neutral conductor of a fixed installation. */
export interface PenQuestion {
  readonly at: string;
  readonly section: Known<Input<"area">>;
  readonly material: "copper" | "aluminium";
  /** Whether a residual current device stands in the circuit. */
  readonly residualDevice: Known<"present" | "none">;
}

/**
 * Proves that a combined protective and neutral conductor is large enough and has no residual current device in it.
 *
 * @param question - section, material and residual current device; what is not known is said as missing
 * @throws InputError where the section is not a section
 * @example
 * ```ts
 * import { provePen } from "pv-to-grid/earthing";
 * provePen({ at: "Main board", section: "10 mm²", material: "aluminium", residualDevice: "none" }).map((check) => check.verdict).join(); // "not met,met"
 * ```
 */
export function provePen({ at, section, material, residualDevice }: PenQuestion): readonly Check[] {
  return Object.freeze([
    penLargeEnough({ at, value: section, limit: iec60364_5_54_2011_pen_minimum({ material }) }),
    noResidualDeviceInPen({ at, value: residualDevice, limit: ["none"] }),
  ]);
}
