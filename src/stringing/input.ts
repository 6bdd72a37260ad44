import type { Known } from "../formula/index.js";
import type { Input } from "../quantity/index.js";
import type { Ceiling, ModuleVoltages, PvRules, TrackerLimits } from "../string/index.js";

/** A roof face whose modules are to be put into strings: one plane, one module type. */
export interface StringingRoof {
  readonly name: string;
  readonly moduleType: string;
  readonly modules: number;
  /** The way that it faces, by any name; roofs of one name face one way. */
  readonly orientation: string;
  /** What one module gives at the design temperatures. */
  readonly module: ModuleVoltages;
  /** Ratings that limit its strings wherever they go: module, connectors, cable, the ceiling of the rules. */
  readonly ceilings: readonly Ceiling[];
  readonly maximumPower: Input<"activePower">;
  readonly mppCurrent: Input<"current">;
  readonly shortCircuitCurrent: Input<"current">;
  readonly currentCorrection?: Known<Input<"ratio">>;
  readonly maximumSeriesFuse: Known<Input<"current">>;
  /** Share of the hot voltage that drops in its cables. */
  readonly voltageDrop: Known<Input<"ratio">>;
}

/** A tracker by its name. */
export interface StringingTracker extends TrackerLimits {
  readonly name: string;
}

/** An inverter whose trackers are to be filled. */
export interface StringingInverter {
  readonly name: string;
  readonly maximumDcVoltage: Known<Input<"voltage">>;
  readonly mppVoltageRange: Known<readonly [Input<"voltage">, Input<"voltage">]>;
  readonly startVoltage: Known<Input<"voltage">>;
  readonly backfeedCurrent: Known<Input<"current">>;
  /** Further ratings on its side: switch, fuses, surge device. */
  readonly ceilings?: readonly Ceiling[];
  /** Largest array power by its maker; left out, none. */
  readonly maximumArrayPower?: Known<Input<"activePower">>;
  /** Rated active power, for the distance from a stated ratio. */
  readonly ratedPower?: Input<"activePower">;
  readonly trackers: readonly StringingTracker[];
}

/** Everything that the search for a stringing looks at. */
export interface StringingInput {
  readonly rules: PvRules;
  readonly roofs: readonly StringingRoof[];
  readonly inverters: readonly StringingInverter[];
  /** Margin on the lower end of the tracking range, such as 1.1; left out, none. */
  readonly windowMargin?: Input<"ratio">;
  /** Ratio of array power to inverter power to come near to, last of all; left out, none. */
  readonly targetRatio?: Input<"ratio">;
  /** Whether strings that need fuses are tried. */
  readonly fuses: "choose" | "none";
  /** Whether equal strings of several roofs may share a tracker, which costs yield where the roofs face different ways. */
  readonly joinRoofs: boolean;
  /** Most stringings that are returned; left out, three. */
  readonly most?: number;
}
