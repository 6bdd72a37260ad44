import { iec61008_1_2010_break_times } from "../../device/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { residualTestCurrent } from "./residual-current.js";

/** A residual current device under test. */
export interface ResidualDevice {
  readonly ratedResidualCurrent: Input<"current">;
  /** Type S, which waits for devices behind it. */
  readonly delayed: boolean;
}

/** One test of a residual current device. */
export interface ResidualTest {
  readonly key: "half" | "once" | "five times";
  readonly current: Quantity<"current">;
  readonly opens: boolean;
  /** Longest break time; `null` where the device must stay closed. */
  readonly longest: Quantity<"time"> | null;
  /** Time within which a delayed device must not open. */
  readonly shortest: Quantity<"time"> | null;
}

/**
 * The tests of a residual current device with their currents and times.
 *
 * @throws InputError where the rated residual current lies outside its domain
 * @example
 * ```ts
 * import { residualTests } from "pv-to-grid/commissioning";
 * residualTests({ ratedResidualCurrent: "30 mA", delayed: false })[2]!.longest!.text; // "0.04"
 * ```
 */
export function residualTests({ ratedResidualCurrent, delayed }: ResidualDevice): readonly ResidualTest[] {
  const current = (multiple: Input<"ratio">): Quantity<"current"> =>
    residualTestCurrent({ ratedResidualCurrent, multiple });
  const times = (residualCurrent: "I_Δn" | "5 I_Δn"): Pick<ResidualTest, "longest" | "shortest"> => ({
    longest: iec61008_1_2010_break_times({
      device: delayed ? "time-delayed S, longest break" : "general, longest break",
      residualCurrent,
    }),
    shortest: delayed
      ? iec61008_1_2010_break_times({ device: "time-delayed S, no break before", residualCurrent })
      : null,
  });
  return Object.freeze([
    { key: "half", current: current("0.5"), opens: false, longest: null, shortest: null },
    { key: "once", current: current(1), opens: true, ...times("I_Δn") },
    { key: "five times", current: current(5), opens: true, ...times("5 I_Δn") },
  ] as const);
}
