import { type Check, condition, type Known, table, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import { vdeArN4105_2011_powerFactorOfPlant, vdeArN4105_2018_powerFactorOfPlant } from "./german-power-factor.js";
import { apparentPowerForPowerFactor, apparentPowerOf, reactivePowerOfShare } from "./power-triangle.js";

/**
 * Reactive power that a unit of IEEE 1547:2018 must be able to give, as a share of its rated apparent power.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_reactiveCapability } from "pv-to-grid/grid";
 * ieee1547_2018_reactiveCapability({ category: "A", direction: "absorbing" }).text; // "0.25"
 * ```
 */
export const ieee1547_2018_reactiveCapability = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-reactive-capability",
  about: "reactive power that a unit of IEEE 1547:2018 must be able to give, as a share of its rated apparent power",
  rows: { name: "category", names: "in the first column", about: "normal operating category" },
  rowRule: "exact",
  columns: { direction: ["injecting", "absorbing"] },
  gives: { unit: "p.u.", symbol: "q" },
  source: [{ in: "IEEE 1547:2018", clause: "5.2, table 7", grade: "memory" }],
  cells: `
    A  0.44  0.25
    B  0.44  0.44
  `,
});

/**
 * Power factor that other documents ask a plant for.
 *
 * @function
 * @example
 * ```ts
 * import { powerFactorsAsked } from "pv-to-grid/grid";
 * powerFactorsAsked({ document: "RD 1699/2011" }).text; // "0.98"
 * ```
 */
export const powerFactorsAsked = /* @__PURE__ */ table({
  id: "grid/power-factors-asked",
  about: "power factor that other documents ask a plant for",
  rows: { name: "document", names: "in the first column", about: "document" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "cos φ" },
  source: [
    { in: "RD 1699/2011:2011", clause: "12.4", grade: "copied" },
    { in: "EN 50549-1:2019", clause: "4.7.2", grade: "memory" },
    { in: "IEC 61727:2004", clause: "4.6", grade: "memory" },
  ],
  cellGrades: { memory: ["EN 50549-1:2019", "IEC 61727:2004"] },
  cells: `
    RD 1699/2011      0.98
    EN 50549-1:2019   0.90
    IEC 61727:2004    0.90
  `,
  note: "Spain: more than the figure above a quarter of the rated power; IEC 61727: more than the figure above half of it; EN 50549-1: to be reached at rated power, injecting and absorbing",
});

/**
 * Can the inverter give the reactive power that is asked without giving less active power?
 *
 * @function
 * @example
 * ```ts
 * import { activePowerKeptBesideReactive } from "pv-to-grid/grid";
 * activePowerKeptBesideReactive({ value: "11.12 kVA", limit: "11 kVA" }).verdict; // "not met"
 * ```
 */
export const activePowerKeptBesideReactive = /* @__PURE__ */ condition({
  id: "grid/active-power-kept-beside-reactive",
  asks: "Can the inverter give the reactive power that is asked without giving less active power?",
  force: "yield",
  value: { unit: "VA", symbol: "S_due", about: "apparent power of the active power and the reactive power that is asked" },
  relation: "≤",
  limit: { unit: "VA", symbol: "S_r", about: "rated apparent power of the inverter" },
  source: [{ in: "EKS notice:undated", clause: "example", grade: "original" }],
  note: "where it cannot, reactive power comes first and the active power is reduced",
});

/**
 * Is the power factor above what the rules ask for?
 *
 * @function
 * @example
 * ```ts
 * import { powerFactorAboveAsked } from "pv-to-grid/grid";
 * powerFactorAboveAsked({ value: "0.98", limit: "0.98" }).verdict; // "not met"
 * ```
 */
export const powerFactorAboveAsked = /* @__PURE__ */ condition({
  id: "grid/power-factor-above-asked",
  asks: "Is the power factor above what the rules ask for?",
  force: "requirement",
  value: { unit: "1", symbol: "cos φ", about: "power factor above a quarter of the rated power" },
  relation: ">",
  limit: { unit: "1", symbol: "cos φ_lim", about: "power factor of the document" },
  source: [{ in: "RD 1699/2011:2011", clause: "12.4", grade: "copied" }],
});

/** An inverter that is asked for reactive power. */
export interface ReactiveCapabilityFor {
  readonly rules: GridRules;
  /** Sum of the rated apparent powers of the plant; it decides the step in Germany. */
  readonly plantPower: Known<Input<"apparentPower">>;
  readonly apparentPower: Known<Input<"apparentPower">>;
  /** Active power that the inverter is to give. */
  readonly activePower: Known<Input<"activePower">>;
  readonly at: string;
}

/** Apparent power that an inverter needs for the reactive power that the rules ask; no check where they ask none. */
export function reactiveCapabilityChecks(request: ReactiveCapabilityFor): readonly Check[] {
  const { rules, apparentPower, at } = request;
  const value = apparentPowerDue(request);
  if (value === null) return [];
  const remedy = "a larger inverter, or less active power while reactive power is asked for";
  return [activePowerKeptBesideReactive({ value, limit: apparentPower, at, because: rules, remedy })];
}

function apparentPowerDue({ rules, plantPower, apparentPower, activePower }: ReactiveCapabilityFor): Apparent | null {
  const category = /^IEEE 1547:2018 category ([AB])/.exec(rules)?.[1];
  if (category !== undefined) {
    const reactiveShare = ieee1547_2018_reactiveCapability({ category, direction: "injecting" });
    return whenKnown({ apparentPower, activePower }, (known) => {
      const reactivePower = reactivePowerOfShare({ apparentPower: known.apparentPower, reactiveShare });
      return apparentPowerOf({ activePower: known.activePower, reactivePower });
    });
  }
  switch (rules) {
    case "EN 50549-1:2019": {
      const powerFactor = powerFactorsAsked({ document: rules });
      return whenKnown({ activePower }, (known) => apparentPowerForPowerFactor({ ...known, powerFactor }));
    }
    case "VDE-AR-N 4105:2018":
    case "VDE-AR-N 4105:2011": {
      const ofPlant =
        rules === "VDE-AR-N 4105:2018" ? vdeArN4105_2018_powerFactorOfPlant : vdeArN4105_2011_powerFactorOfPlant;
      return whenKnown({ activePower, plantPower }, (known) =>
        apparentPowerForPowerFactor({
          activePower: known.activePower,
          powerFactor: ofPlant({ plantPower: known.plantPower }),
        }),
      );
    }
    default:
      return null;
  }
}

type Apparent = Known<Quantity<"apparentPower">>;
