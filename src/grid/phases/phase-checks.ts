import type { Check } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import { activePowerAtPowerFactor } from "../power/power-triangle.js";
import { outputCurrentSinglePhase } from "../power/output-current.js";
import { supplyFacts } from "../supply/supply-facts.js";
import type { SupplySystem } from "../supply/supply-systems.js";
import { type PhaseAllocation, type PhaseName, phaseNames } from "./allocate-phases.js";
import {
  activeUnbalanceBelowLimit,
  activeUnbalanceWithinLimit,
  currentPerPhaseWithinLimit,
  singlePhaseActivePowerWithinLimit,
  singlePhasePowerWithinLimit,
  unbalanceWithinLimit,
} from "./conditions.js";
import { phaseLoad } from "./phase-load.js";
import { activePowerThresholds, apparentPowerThresholds, currentThresholds } from "./connection-thresholds.js";

/** A plant on the phases of a supply. */
export interface PhasesFor {
  readonly rules: GridRules;
  readonly supply: SupplySystem;
  readonly allocation: PhaseAllocation;
  /** What three-phase inverters add to each phase, where there are any. */
  readonly threePhasePowerPerPhase?: Input<"apparentPower">;
  readonly at: string;
}

const REMEDY = "spread single-phase inverters over the phases, or take a three-phase inverter";

/** Unbalance and power per phase against the limits of the connection rules; no check where the rules print none. */
export function phaseChecks({ rules, supply, allocation, threePhasePowerPerPhase, at }: PhasesFor): readonly Check[] {
  const { unbalance } = allocation;
  const loads = loadsWith(allocation, threePhasePowerPerPhase);
  const words = { at, remedy: REMEDY };
  const active = (apparentPower: Quantity<"apparentPower">): Quantity<"activePower"> =>
    activePowerAtPowerFactor({ apparentPower, powerFactor: 1 });
  const alone = phaseNames.filter((phase) => loads[phase].text !== "0").length === 1;
  const single = phaseNames.map((phase) => loads[phase]).find(({ text }) => text !== "0");
  switch (rules) {
    case "VDE-AR-N 4105:2011":
      return [
        unbalanceWithinLimit({
          value: unbalance,
          limit: apparentPowerThresholds({ threshold: "VDE-AR-N 4105:2011 unbalance" }),
          ...words,
        }),
      ];
    case "VDE-AR-N 4105:2018": {
      const checks = [
        unbalanceWithinLimit({
          value: unbalance,
          limit: apparentPowerThresholds({ threshold: "VDE-AR-N 4105:2018 unbalance" }),
          ...words,
        }),
      ];
      if (alone && single)
        checks.push(
          singlePhasePowerWithinLimit({
            value: single,
            limit: apparentPowerThresholds({ threshold: "VDE-AR-N 4105:2018 single-phase" }),
            ...words,
          }),
        );
      return checks;
    }
    case "AS/NZS 4777.2:2020 Australia A":
    case "AS/NZS 4777.2:2020 Australia B":
    case "AS/NZS 4777.2:2020 Australia C":
    case "AS/NZS 4777.2:2020 New Zealand": {
      const checks = [
        activeUnbalanceWithinLimit({
          value: active(unbalance),
          limit: activePowerThresholds({ threshold: "AS/NZS 4777.1:2016 unbalance" }),
          ...words,
        }),
      ];
      if (alone && single)
        checks.push(
          singlePhaseActivePowerWithinLimit({
            value: active(single),
            limit: activePowerThresholds({ threshold: "AS/NZS 4777.1:2016 single-phase" }),
            ...words,
          }),
        );
      return checks;
    }
    case "RD 1699/2011:2020": {
      if (alone && single)
        return [
          singlePhaseActivePowerWithinLimit({
            value: active(single),
            limit: activePowerThresholds({ threshold: "RD 1699/2011:2020 three phases" }),
            ...words,
          }),
        ];
      return [
        activeUnbalanceBelowLimit({
          value: active(unbalance),
          limit: activePowerThresholds({ threshold: "RD 1699/2011:2020 unbalance" }),
          ...words,
        }),
      ];
    }
    case "RD 1699/2011:2011":
    case "RD 1699/2011:2014":
      return alone && single
        ? [
            singlePhaseActivePowerWithinLimit({
              value: active(single),
              limit: activePowerThresholds({ threshold: "RD 1699/2011:2011 three phases" }),
              ...words,
            }),
          ]
        : [];
    case "EREC G98:2022":
      return perPhase(loads, supply, at, "EREC G98 per phase", "above it the rules of EREC G99 hold");
    case "ESB Networks micro-generation:2021":
      return perPhase(
        loads,
        supply,
        at,
        alone ? "ESB Networks single-phase" : "ESB Networks three-phase",
        "above it the plant is no micro-generation",
      );
    default:
      return [];
  }
}

type Loads = PhaseAllocation["loads"];

function loadsWith({ loads }: PhaseAllocation, threePhase: Input<"apparentPower"> | undefined): Loads {
  if (threePhase === undefined) return loads;
  const both = (phase: PhaseName): Quantity<"apparentPower"> =>
    phaseLoad({ apparentPowers: [loads[phase], threePhase] });
  return { L1: both("L1"), L2: both("L2"), L3: both("L3") };
}

function perPhase(
  loads: Loads,
  supply: SupplySystem,
  at: string,
  threshold: string,
  because: string,
): readonly Check[] {
  const { lineToNeutral } = supplyFacts(supply);
  const current = (phase: PhaseName): Quantity<"current"> =>
    outputCurrentSinglePhase({ apparentPower: loads[phase], voltage: lineToNeutral });
  return phaseNames
    .filter((phase) => loads[phase].text !== "0")
    .map((phase) =>
      currentPerPhaseWithinLimit({
        value: current(phase),
        limit: currentThresholds({ threshold }),
        at: `${phase}/${at}`,
        because,
      }),
    );
}
