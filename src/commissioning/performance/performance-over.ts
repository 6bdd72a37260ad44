import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { correctedPerformanceRatio, intervalEnergy, temperatureRating } from "./corrected.js";
import { finalYield, performanceRatio, referenceYield, totalEnergy, totalIrradiation } from "./yield.js";

/** What was measured in one interval; what is missing excludes the interval, and says so. */
export interface MeasuredInterval {
  readonly energy: Known<Input<"energy">>;
  readonly irradiation: Known<Input<"irradiation">>;
  readonly moduleTemperature: Known<Input<"temperature">>;
  /** Why the interval is left out: a grid outage, curtailment, a sensor out of order. */
  readonly excluded?: string;
}

/** A plant over a period. */
export interface PerformanceQuestion {
  /** At standard test conditions. */
  readonly arrayPower: Input<"activePower">;
  readonly intervals: readonly MeasuredInterval[];
  readonly maximumPowerCoefficient: Known<Input<"relativeTemperatureCoefficient">>;
  /** 25 °C for the ratio at standard test conditions; the mean of the year for one that compares with the year. */
  readonly referenceTemperature: Input<"temperature">;
}

/** How a plant performed, by the intervals that were used. */
export interface Performance {
  readonly energy: Quantity<"energy">;
  readonly irradiation: Quantity<"irradiation">;
  readonly finalYield: Quantity<"time">;
  readonly referenceYield: Quantity<"time">;
  readonly performanceRatio: Quantity<"ratio">;
  /** Over the same intervals; missing where a used interval has no temperature, or the module no coefficient. */
  readonly temperatureCorrected: Known<Quantity<"ratio">>;
  readonly used: number;
  readonly excluded: readonly { readonly interval: number; readonly because: string }[];
}

/**
 * Performance ratio of a plant over intervals, as measured and brought to a reference temperature. Energy and irradiation
 * of an excluded interval are left out together.
 *
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { performanceOver } from "pv-to-grid/commissioning";
 * const performance = performanceOver({
 *   arrayPower: "10 kW", maximumPowerCoefficient: "-0.3 %/K", referenceTemperature: "25 °C",
 *   intervals: [{ energy: "6.4 kWh", irradiation: "0.8 kWh/m2", moduleTemperature: "45 °C" }],
 * });
 * "performanceRatio" in performance && performance.performanceRatio.text; // "0.8"
 * ```
 */
export function performanceOver(question: PerformanceQuestion): Known<Performance> {
  const { intervals, maximumPowerCoefficient, referenceTemperature } = question;
  const excluded: Performance["excluded"][number][] = [];
  const used: UsedInterval[] = [];
  for (const [interval, measured] of intervals.entries()) {
    const because = exclusionOf(measured);
    if (because === null) used.push({ interval, ...(measured as Omit<UsedInterval, "interval">) });
    else excluded.push({ interval, because });
  }
  if (used.length === 0) return missing("intervals with energy and irradiation");
  const arrayPower = given(question.arrayPower, "W").in("kW");
  const energy = totalEnergy({ energies: used.map((each) => each.energy) });
  const irradiation = totalIrradiation({ irradiations: used.map((each) => each.irradiation) });
  const yields = { finalYield: finalYield({ energy, arrayPower }), referenceYield: referenceYield({ irradiation }) };
  const lacking = used.flatMap(({ interval, moduleTemperature }) =>
    isMissing(moduleTemperature) ? [`intervals[${interval}].moduleTemperature`] : [],
  );
  const temperatures: Known<readonly UsedInterval[]> = lacking.length > 0 ? missing(...lacking) : used;
  return Object.freeze({
    energy,
    irradiation,
    ...yields,
    performanceRatio: performanceRatio(yields),
    temperatureCorrected: whenKnown({ maximumPowerCoefficient, temperatures }, (known) =>
      correctedPerformanceRatio({
        energies: known.temperatures.map((each) => each.energy),
        intervalEnergies: known.temperatures.map((each) =>
          intervalEnergy({
            arrayPower,
            irradiation: each.irradiation,
            temperatureRating: temperatureRating({
              maximumPowerCoefficient: known.maximumPowerCoefficient,
              moduleTemperature: each.moduleTemperature as Input<"temperature">,
              referenceTemperature,
            }),
          }),
        ),
      }),
    ),
    used: used.length,
    excluded: Object.freeze(excluded),
  });
}

interface UsedInterval {
  readonly interval: number;
  readonly energy: Input<"energy">;
  readonly irradiation: Input<"irradiation">;
  readonly moduleTemperature: Known<Input<"temperature">>;
}

function exclusionOf({ energy, irradiation, excluded }: MeasuredInterval): string | null {
  if (excluded !== undefined) return excluded;
  if (isMissing(energy)) return "the energy was not measured";
  if (isMissing(irradiation)) return "the irradiation was not measured";
  return given(irradiation, "kWh/m²").number > 0 ? null : "without light";
}
