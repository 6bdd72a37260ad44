import { model } from "../../formula/index.js";
import { InputError, type Input, type Quantity } from "../../quantity/index.js";
import { arrayPowerAt, clippingShare, energyAbove, energyOver } from "./dc-ac-ratio.js";

/** One class of an irradiance histogram. */
export interface IrradianceClass {
  /** Middle of the class, in the plane of the array. */
  readonly irradiance: Input<"irradiance">;
  readonly duration: Input<"time">;
}

/** An array on an inverter, and how often how much sun there is. */
export interface ClippingInput {
  readonly arrayPower: Input<"activePower">;
  /** Largest power that the inverter takes on its d.c. side: its rated power over its efficiency. */
  readonly limit: Input<"activePower">;
  /** Share of the power that is left after heat, dirt and cables. */
  readonly performance: Input<"ratio">;
  readonly histogram: readonly IrradianceClass[];
}

/**
 * Expected share of the energy that an inverter cuts off, from an irradiance histogram.
 *
 * @throws InputError for an empty histogram or one without energy
 * @example
 * ```ts
 * import { clipping } from "pv-to-grid/string";
 * clipping({
 *   arrayPower: "18 kW", limit: "15 kW", performance: "0.9",
 *   histogram: [{ irradiance: 500, duration: 1500 }, { irradiance: 1000, duration: 100 }],
 * }).show({ digits: 3 }); // "0.00871"
 * ```
 */
export function clipping({ arrayPower, limit, performance, histogram }: ClippingInput): Quantity<"ratio"> {
  const classes = histogram.map(({ irradiance, duration }) => ({
    power: arrayPowerAt({ arrayPower, irradiance, performance }),
    duration,
  }));
  return clippingShare({
    cutEnergies: classes.map((each) => energyAbove({ ...each, powerLimit: limit })),
    availableEnergies: classes.map(energyOver),
  });
}

/**
 * Share of a series' energy that is cut off, from its sums. @function
 *
 * @example
 * ```ts
 * import { clippingShareOfSums } from "pv-to-grid/string";
 * clippingShareOfSums({ cutEnergy: "100 kWh", availableEnergy: "10000 kWh" }).text; // "0.01"
 * ```
 */
export const clippingShareOfSums = /* @__PURE__ */ model(
  {
    id: "string/clipping-share-of-sums",
    about: "share of a series' energy that is cut off, from its sums",
    takes: {
      cutEnergy: { unit: "Wh", symbol: "E_cut", about: "energy that is cut off", from: 0, usual: [0, 1000000000] },
      availableEnergy: { unit: "Wh", symbol: "E", about: "energy before the cut", above: 0, usual: [0, 1000000000] },
    },
    gives: { unit: "1", symbol: "c" },
    digits: 11,
    method: "sums of a series of powers in double precision",
    source: [{ in: "common practice", clause: "share of the year's energy", grade: "common-practice" }],
  },
  ({ cutEnergy, availableEnergy }) => cutEnergy / availableEnergy,
);

/**
 * Share of the energy that an inverter cuts off, from a series of powers at equal steps of time.
 *
 * @param powers - power of the array after its losses, in W, one value a step
 * @param limit - largest power that the inverter takes on its d.c. side, in W
 * @param step - length of a step, in h; it does not change the share
 * @throws InputError for a power that is not finite or is negative, or a series without energy
 * @example
 * ```ts
 * import { clippingOfSeries } from "pv-to-grid/string";
 * clippingOfSeries([0, 8000, 16000, 12000], 15000).show({ digits: 4 }); // "0.02778"
 * ```
 */
export function clippingOfSeries(powers: ArrayLike<number>, limit: number, step = 1): Quantity<"ratio"> {
  let [cut, available] = [0, 0];
  for (let at = 0; at < powers.length; at += 1) {
    const power = powers[at]!;
    if (!Number.isFinite(power) || power < 0) {
      const message = "a power of the series must be a finite number, zero or more";
      throw new InputError("string/clipping-of-series", [
        { path: `powers[${at}]`, code: "out-of-domain", message, expected: "0 or more", received: String(power) },
      ]);
    }
    available += power;
    if (power > limit) cut += power - limit;
  }
  return clippingShareOfSums({ cutEnergy: `${cut * step} Wh`, availableEnergy: `${available * step} Wh` });
}
