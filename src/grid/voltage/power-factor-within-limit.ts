import type { Input, Quantity } from "../../quantity/index.js";
import { apparentPowerOf, powerFactorOf } from "../power/power-triangle.js";
import { voltageChangeWithinLimit } from "./limits/within-the-limit.js";
import { reactivePowerForVoltageLimit } from "./within-the-limit.js";

/** What a plant feeds in, and the limit that it is to keep. */
export interface VoltageLimitToKeep {
  readonly activePower: Input<"activePower">;
  /** Voltage change without reactive power. */
  readonly voltageChangeAtUnity: Input<"voltage">;
  readonly voltageChangeLimit: Input<"voltage">;
  readonly nominalVoltage: Input<"voltage">;
  /** Reactance that the reactive power of the plant flows through. */
  readonly reactance: Input<"resistance">;
}

/** The power factor that keeps a limit, and what it takes. */
export interface PowerFactorWithinLimit {
  /** `none` where the limit is kept without reactive power. */
  readonly direction: "none" | "absorbing";
  /** Negative: absorbed. `null` where none is needed. */
  readonly reactivePower: Quantity<"reactivePower"> | null;
  readonly powerFactor: Quantity<"ratio"> | null;
  /** Apparent power that the inverters must be able to give. */
  readonly apparentPower: Quantity<"apparentPower"> | null;
}

const NONE: PowerFactorWithinLimit = { direction: "none", reactivePower: null, powerFactor: null, apparentPower: null };

/**
 * The power factor at which a plant keeps a limit of the voltage change, and the apparent power that this takes.
 *
 * @throws InputError where a value lies outside its domain, such as a reactance of zero
 * @example
 * ```ts
 * import { powerFactorWithinVoltageLimit } from "pv-to-grid/grid";
 * const kept = powerFactorWithinVoltageLimit({ activePower: "6 kW", voltageChangeAtUnity: "14 V", voltageChangeLimit: "12 V", nominalVoltage: "400 V", reactance: "0.1 ohm" });
 * kept.powerFactor!.show(); // "0.6"
 * ```
 */
export function powerFactorWithinVoltageLimit(plant: VoltageLimitToKeep): PowerFactorWithinLimit {
  const { activePower, ...limit } = plant;
  const kept = voltageChangeWithinLimit({ value: plant.voltageChangeAtUnity, limit: plant.voltageChangeLimit });
  if (kept.verdict === "met") return NONE;
  const reactivePower = reactivePowerForVoltageLimit(limit);
  return Object.freeze({
    direction: "absorbing",
    reactivePower,
    powerFactor: powerFactorOf({ activePower, reactivePower }),
    apparentPower: apparentPowerOf({ activePower, reactivePower }),
  });
}

/** In words, the reactive power that would bring a change back to its limit; `null` where no reactance lets it act. */
export function furtherReactivePower(excess: {
  readonly voltageChange: Quantity<"voltage">;
  readonly voltageChangeLimit: Quantity<"voltage">;
  readonly nominalVoltage: Quantity<"voltage">;
  readonly reactance: Quantity<"resistance">;
}): string | null {
  const { voltageChange: voltageChangeAtUnity, reactance, ...rest } = excess;
  if (reactance.number <= 0) return null;
  const due = reactivePowerForVoltageLimit({ voltageChangeAtUnity, reactance, ...rest })
    .in("kvar")
    .show({ digits: 3 });
  return `absorbing a further ${due.replace("-", "")} if the network operator agrees`;
}
