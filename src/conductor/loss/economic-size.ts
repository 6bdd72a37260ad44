import { given, type Input, type Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import { type CircuitKind, routeVoltageChange } from "../voltage/route.js";
import type { WiringRules } from "../wiring.js";
import { sizeName } from "../size/size.js";
import { lossCostOverLife, lossGrowth, presentWorth, purchaseCost, totalCost } from "./economic.js";
import { lossHours, lossHoursOfBin } from "./energy.js";
import { whenKnown } from "../../formula/index.js";

/** A step of a load histogram: a share of the maximum current, and the hours of a year at it. */
export interface LoadStep {
  readonly loadShare: Input<"ratio">;
  readonly duration: Input<"time">;
}

/** Hours a year at the maximum current that lose as much as a load does. */
export function lossHoursOf(load: readonly LoadStep[]): Quantity<"time"> {
  return lossHours({ weightedHours: load.map(lossHoursOfBin) });
}

/** What decides the economic size of a cable. */
export interface EconomicRequest {
  readonly circuit: CircuitKind;
  readonly wiring: WiringRules;
  readonly cable: Cable;
  readonly length: Input<"length">;
  /** Length of all cable to buy, such as twice the length for two single cores. */
  readonly cableLength: Input<"length">;
  readonly maximumCurrent: Input<"current">;
  readonly temperature: Input<"temperature">;
  readonly load: readonly LoadStep[];
  readonly energyPrice: Input<"energyPrice">;
  readonly yearsOfLife: Input<"ratio">;
  readonly discountRate: Input<"ratio">;
  readonly loadGrowth: Input<"ratio">;
  readonly priceGrowth: Input<"ratio">;
  /** Sizes that meet every technical requirement, with the price of a metre laid. */
  readonly candidates: readonly {
    readonly size: string | Quantity<"area">;
    readonly lengthPrice: Input<"lengthPrice">;
  }[];
}

/** A size with what it costs over its life. */
export interface EconomicSize {
  readonly size: string;
  readonly purchase: Quantity<"money">;
  readonly losses: Quantity<"money">;
  readonly total: Quantity<"money">;
}

/**
 * Costs over the life of each candidate, cheapest first, after IEC 60287-3-2. An economic criterion: it replaces no technical one.
 *
 * @throws InputError where an input is outside its domain
 */
export function economicSizes(request: EconomicRequest): readonly EconomicSize[] {
  const { yearsOfLife, discountRate, loadGrowth, priceGrowth, energyPrice, cableLength } = request;
  const growth = lossGrowth({ loadGrowth, priceGrowth, discountRate });
  const years = given(yearsOfLife, "1");
  const worth = growth.text === "1" ? years : presentWorth({ lossGrowth: growth, yearsOfLife: years });
  const hours = lossHoursOf(request.load);
  const costs = request.candidates.map(({ size, lengthPrice }): EconomicSize => {
    const purchase = purchaseCost({ lengthPrice, cableLength });
    const losses = lossCostOverLife({
      loss: lossOf(request, size),
      lossHours: hours,
      energyPrice,
      presentWorth: worth,
      discountRate,
    });
    const total = totalCost({ purchaseCost: purchase, lossCost: losses });
    return Object.freeze({ size: typeof size === "string" ? size : sizeName(size), purchase, losses, total });
  });
  return Object.freeze(costs.sort((a, b) => a.total.number - b.total.number));
}

function lossOf(request: EconomicRequest, size: string | Quantity<"area">): Quantity<"activePower"> {
  const { circuit, wiring, cable, length, maximumCurrent, temperature } = request;
  const { loss } = routeVoltageChange({
    circuit,
    wiring,
    nominalVoltage: "1 V",
    parts: [{ cable, size, length, current: maximumCurrent, temperature, powerFactor: 1, reactiveFactor: 0 }],
  });
  return whenKnown({ loss }, (known) => known.loss) as Quantity<"activePower">;
}
