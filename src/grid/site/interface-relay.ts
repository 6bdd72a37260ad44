import { type Check, condition, formula, type Known, table, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { activePowerThresholds, apparentPowerThresholds } from "../phases/connection-thresholds.js";
import { apparentPowerForPowerFactor } from "../power/power-triangle.js";
import type { GridRules } from "../rules/grid-rule-sets.js";

/**
 * Time from the fault to the open contacts of the coupling switch.
 *
 * @function
 * @example
 * ```ts
 * import { disconnectionTime } from "pv-to-grid/grid";
 * disconnectionTime({ relayTime: "0.1 s", switchTime: "0.05 s" }).text; // "0.15"
 * ```
 */
export const disconnectionTime = /* @__PURE__ */ formula({
  id: "grid/disconnection-time",
  about: "time from the fault to the open contacts of the coupling switch",
  takes: {
    relayTime: { unit: "s", symbol: "t_relay", about: "delay and operating time of the relay", from: 0, usual: [0, 60] },
    switchTime: { unit: "s", symbol: "t_switch", about: "opening time of the coupling switch", from: 0, usual: [0, 10] },
  },
  gives: { unit: "s", symbol: "t_off" },
  expression: "relayTime + switchTime",
  source: [{ in: "VDE-AR-N 4105:2018", clause: "6.1", grade: "memory" }],
  unproven: { because: "composition only" },
});

/**
 * Longest time from the fault to the open contacts.
 *
 * @function
 * @example
 * ```ts
 * import { disconnectionTimeLimits } from "pv-to-grid/grid";
 * disconnectionTimeLimits({ document: "VDE-AR-N 4105:2011" }).text; // "0.2"
 * ```
 */
export const disconnectionTimeLimits = /* @__PURE__ */ table({
  id: "grid/disconnection-time-limits",
  about: "longest time from the fault to the open contacts",
  rows: { name: "document", names: "in the first column", about: "document" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "t_lim" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "6.1", grade: "memory" }],
  cells: `
    VDE-AR-N 4105:2011   0.2
    VDE-AR-N 4105:2018   0.2
  `,
  note: "for the stages with a delay of 0.1 s",
});

/**
 * Does the plant stay within the power up to which the inverter's own interface protection suffices?
 *
 * @function
 * @example
 * ```ts
 * import { ownInterfaceProtectionSuffices } from "pv-to-grid/grid";
 * ownInterfaceProtectionSuffices({ value: "30 kVA", limit: "30 kVA" }).verdict; // "met"
 * ```
 */
export const ownInterfaceProtectionSuffices = /* @__PURE__ */ condition({
  id: "grid/own-interface-protection-suffices",
  asks: "Does the plant stay within the power up to which the inverter's own interface protection suffices?",
  force: "requirement",
  value: { unit: "VA", symbol: "S", about: "sum of the rated apparent powers" },
  relation: "≤",
  limit: { unit: "VA", symbol: "S_lim", about: "power above which an external interface relay is due" },
  source: [
    { in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table" },
    { in: "AS/NZS 4777.1:2016", clause: "central protection", grade: "reproduced", seen: "SEANZ on 4777.1:2016, item IV" },
  ],
  note: "not met: an external relay with a coupling switch is due; it then meets the requirement",
});

/**
 * Does the coupling switch open in spite of a single fault?
 *
 * @function
 * @example
 * ```ts
 * import { couplingSwitchSurvivesSingleFault } from "pv-to-grid/grid";
 * couplingSwitchSurvivesSingleFault({ value: "one switch", limit: ["two switches in series", "type-tested switch inside the inverter"] }).verdict; // "not met"
 * ```
 */
export const couplingSwitchSurvivesSingleFault = /* @__PURE__ */ condition({
  id: "grid/coupling-switch-survives-single-fault",
  asks: "Does the coupling switch open in spite of a single fault?",
  force: "requirement",
  value: { named: true, about: "arrangement of the coupling switch" },
  relation: "one of",
  limit: { named: true, about: "arrangements that survive a single fault" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "6.4", grade: "memory" }],
});

/**
 * Is the plant disconnected in time?
 *
 * @function
 * @example
 * ```ts
 * import { disconnectedInTime } from "pv-to-grid/grid";
 * disconnectedInTime({ value: "0.2 s", limit: "0.2 s" }).verdict; // "met"
 * ```
 */
export const disconnectedInTime = /* @__PURE__ */ condition({
  id: "grid/disconnected-in-time",
  asks: "Is the plant disconnected in time?",
  force: "requirement",
  value: { unit: "s", symbol: "t_off", about: "relay and switch together" },
  relation: "≤",
  limit: { unit: "s", symbol: "t_lim", about: "longest time of the document" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "6.1", grade: "memory" }],
});

/** Arrangements of a coupling switch that open in spite of a single fault. */
export const singleFaultSafeSwitches = [
  "two switches in series",
  "one switch whose failure is monitored and stops the inverters",
  "type-tested switch inside the inverter",
] as const;

/** A plant that may need an external interface relay. */
export interface InterfaceRelayFor {
  readonly rules: GridRules;
  readonly plantPower: Known<Input<"apparentPower">>;
  /** The external relay, where there is one. */
  readonly relay?: {
    readonly relayTime: Known<Input<"time">>;
    readonly switchTime: Known<Input<"time">>;
    readonly couplingSwitch: Known<(typeof singleFaultSafeSwitches)[number] | "one switch">;
  };
  readonly at: string;
}

/** The power above which an external interface relay is due; `null` where the rules print none. */
export function interfaceRelayThreshold(rules: GridRules): Quantity<"apparentPower"> | null {
  const atUnity = (threshold: string): Quantity<"apparentPower"> =>
    apparentPowerForPowerFactor({ activePower: activePowerThresholds({ threshold }), powerFactor: 1 });
  if (rules === "VDE-AR-N 4105:2018" || rules === "VDE-AR-N 4105:2011")
    return apparentPowerThresholds({ threshold: `${rules} central protection` });
  if (rules.startsWith("AS/NZS")) return atUnity("AS/NZS 4777.1:2016 central protection");
  if (rules.startsWith("CEI 0-21")) return atUnity("CEI 0-21 external protection");
  if (rules.startsWith("TOR")) return apparentPowerThresholds({ threshold: "TOR Erzeuger external protection" });
  return null;
}

/** Whether an external interface relay is due, and whether the one that there is opens in time and in spite of a fault. */
export function interfaceRelayChecks({ rules, plantPower, relay, at }: InterfaceRelayFor): readonly Check[] {
  const threshold = interfaceRelayThreshold(rules);
  if (relay === undefined) {
    if (threshold === null) return [];
    return [
      ownInterfaceProtectionSuffices({
        value: plantPower,
        limit: threshold,
        at,
        remedy: "an external interface relay with a coupling switch",
      }),
    ];
  }
  const checks = [
    couplingSwitchSurvivesSingleFault({ value: relay.couplingSwitch, limit: singleFaultSafeSwitches, at }),
  ];
  if (disconnectionTimeLimits.rows().includes(rules)) {
    const { relayTime, switchTime } = relay;
    checks.push(
      disconnectedInTime({
        value: whenKnown({ relayTime, switchTime }, disconnectionTime),
        limit: disconnectionTimeLimits({ document: rules }),
        at,
      }),
    );
  }
  return Object.freeze(checks);
}
