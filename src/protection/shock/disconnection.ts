import type { WiringRules } from "../../conductor/index.js";
import { type BreakerCharacteristic, type DeviceKind, disconnectingCurrent } from "../../device/index.js";
import { type Check, isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { residualOperatingCurrent } from "../residual/operating-current.js";
import { type CircuitUse, disconnectionTime } from "./disconnection-time.js";
import type { FaultLoop } from "./fault-loop.js";
import { insulationMonitored, secondFaultDisconnects } from "./it-condition.js";
import { largestLoopImpedanceAtLowVoltage, loopDisconnects, smallestEarthFaultCurrent } from "./tn-condition.js";
import {
  electrodeDisconnects,
  electrodeStable,
  largestElectrodeResistance,
  stableElectrodeLimit,
  touchVoltageLimits,
} from "./tt-condition.js";
import { lowestVoltageFactors } from "./voltage-factor.js";

/** Kind of earthing of the supply. */
export type SupplyEarthing = "TN-S" | "TN-C-S" | "TN-C" | "TT" | "IT";

/** What decides whether a fault to earth is disconnected in time. */
export interface DisconnectionQuestion {
  readonly at: string;
  readonly wiring: WiringRules;
  readonly earthing: Known<SupplyEarthing>;
  readonly circuit: CircuitUse;
  readonly lineToEarth: Known<Input<"voltage">>;
  readonly kind: DeviceKind;
  readonly ratedCurrent: Known<Input<"current">>;
  readonly characteristic: Known<BreakerCharacteristic>;
  /** The maker's current for the disconnection time. */
  readonly operatingCurrent: Known<Input<"current">>;
  /** The fault loop at the end of the circuit, at its temperature during the fault. */
  readonly loop: Known<FaultLoop>;
  /** Lowest voltage during the fault: by the wiring rules, or the stricter 0.90. */
  readonly lowestVoltage: "by the rules" | "stricter option";
  /** Rated residual current of a residual current device in the circuit, or `"none"`. */
  readonly residualCurrent: Known<Input<"current">>;
  /** TT: the earth electrode with its conductor. */
  readonly electrodeResistance: Known<Input<"resistance">>;
  /** IT: whether the insulation is monitored. */
  readonly insulationMonitoring: Known<"present" | "none">;
}

/** The proof of disconnection with the numbers that decide it. */
export interface Disconnection {
  readonly disconnectionTime: Known<Quantity<"time">>;
  readonly operatingCurrent: Known<Quantity<"current">>;
  readonly largestLoopImpedance: Known<Quantity<"resistance">>;
  readonly smallestFaultCurrent: Known<Quantity<"current">>;
  /** The device that disconnects. */
  readonly by: "overcurrent device" | "residual current device" | null;
  readonly checks: readonly Check[];
}

/**
 * Proves that a fault to earth is disconnected in time, by the earthing of the supply. In an IT system the proof stays
 * open. NEC practice knows no such proof: it sizes the grounding conductor by the device.
 *
 * @param question - earthing, device, loop and electrode; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { faultLoop, proveDisconnection } from "pv-to-grid/protection";
 * const proof = proveDisconnection({
 *   at: "INV1", wiring: "IEC 60364:2009-2017", earthing: "TN-S", circuit: "final", lineToEarth: "230 V", kind: "miniature breaker", ratedCurrent: "25 A", characteristic: "C",
 *   operatingCurrent: missing("routes[1].breaker.operatingCurrent"), lowestVoltage: "by the rules", residualCurrent: "none",
 *   loop: faultLoop({ resistance: "0.4 Ω", reactance: "0.12 Ω" }, [{ lineResistance: "0.1 Ω", protectiveResistance: "0.1 Ω", reactance: "0.004 Ω" }]),
 *   electrodeResistance: missing("electrode.resistance"), insulationMonitoring: missing("supply.insulationMonitoring"),
 * });
 * proof.checks[0]?.verdict; // "met"
 * ```
 */
export function proveDisconnection(question: DisconnectionQuestion): Disconnection {
  const { at, wiring, earthing } = question;
  if (wiring.startsWith("NFPA 70")) return result(NOTHING, null, []);
  if (isMissing(earthing)) return result(earthing, null, [loopDisconnects({ at, missing: earthing.missing })]);
  if (earthing === "IT") return isolatedSupply(question);
  const system = earthing === "TT" ? "TT" : "TN";
  const overcurrent = byOvercurrent(question, system);
  const check = overcurrent.checks[0]!;
  if (question.residualCurrent === "none") return overcurrent;
  if (earthing === "TT") return byElectrode(question, overcurrent);
  return check.verdict === "met" || earthing === "TN-C" ? overcurrent : byResidual(question, overcurrent);
}

const NOTHING = missing();

function result(
  gap: { readonly missing: readonly string[] },
  by: Disconnection["by"],
  checks: readonly Check[],
): Disconnection {
  const absent = missing(...gap.missing);
  const numbers = {
    disconnectionTime: absent,
    operatingCurrent: absent,
    largestLoopImpedance: absent,
    smallestFaultCurrent: absent,
  };
  return Object.freeze({ ...numbers, by, checks: Object.freeze([...checks]) });
}

function factorFor({ wiring, lowestVoltage }: DisconnectionQuestion): Quantity<"ratio"> {
  if (lowestVoltage === "stricter option") return lowestVoltageFactors({ rule: "stricter option" });
  return lowestVoltageFactors({ rule: wiring === "BS 7671:2018" ? wiring : "rules that are silent" });
}

function byOvercurrent(question: DisconnectionQuestion, system: "TN" | "TT"): Disconnection {
  const { at, circuit, lineToEarth, kind, ratedCurrent, characteristic, operatingCurrent, loop } = question;
  const time = disconnectionTime(system, circuit, lineToEarth);
  const current = whenKnown({ time, ratedCurrent }, (known) =>
    disconnectingCurrent({
      kind,
      ratedCurrent: known.ratedCurrent,
      characteristic,
      disconnectionTime: known.time,
      operatingCurrent,
    }),
  );
  return withLoop(
    question,
    time,
    current,
    "overcurrent device",
    (value, limit) => loopDisconnects({ at, value, limit }),
    loop,
  );
}

function byResidual(question: DisconnectionQuestion, overcurrent: Disconnection): Disconnection {
  const { at, residualCurrent, loop } = question;
  if (residualCurrent === "none") return overcurrent;
  const current = isMissing(residualCurrent)
    ? residualCurrent
    : residualOperatingCurrent({ ratedResidualCurrent: residualCurrent });
  const check = (value: Known<Quantity<"resistance">>, limit: Known<Quantity<"resistance">>): Check =>
    loopDisconnects({ at, value, limit });
  return withLoop(question, overcurrent.disconnectionTime, current, "residual current device", check, loop);
}

function withLoop(
  question: DisconnectionQuestion,
  time: Known<Quantity<"time">>,
  current: Known<Quantity<"current">>,
  by: Disconnection["by"],
  check: (value: Known<Quantity<"resistance">>, limit: Known<Quantity<"resistance">>) => Check,
  loop: Known<FaultLoop>,
): Disconnection {
  const { lineToEarth } = question;
  const faultVoltageFactor = factorFor(question);
  const largest = whenKnown({ lineToEarth, current }, (known) =>
    largestLoopImpedanceAtLowVoltage({
      lineToEarth: known.lineToEarth,
      faultVoltageFactor,
      operatingCurrent: known.current,
    }),
  );
  const smallest = whenKnown({ lineToEarth, loop }, (known) =>
    smallestEarthFaultCurrent({
      lineToEarth: known.lineToEarth,
      faultVoltageFactor,
      loopImpedance: known.loop.impedance,
    }),
  );
  const value = isMissing(loop) ? loop : loop.impedance;
  return Object.freeze({
    disconnectionTime: time,
    operatingCurrent: current,
    largestLoopImpedance: largest,
    smallestFaultCurrent: smallest,
    by,
    checks: Object.freeze([check(value, largest)]),
  });
}

function byElectrode(question: DisconnectionQuestion, overcurrent: Disconnection): Disconnection {
  const { at, residualCurrent, electrodeResistance } = question;
  const rated = residualCurrent;
  const limit = isMissing(rated)
    ? rated
    : largestElectrodeResistance({
        touchVoltageLimit: touchVoltageLimits({ place: "ordinary" }),
        ratedResidualCurrent: rated,
      });
  const checks = [
    electrodeDisconnects({ at, value: electrodeResistance, limit }),
    electrodeStable({ at, value: electrodeResistance, limit: stableElectrodeLimit({ rule: "stable up to" }) }),
  ];
  return Object.freeze({
    ...overcurrent,
    operatingCurrent: isMissing(rated) ? rated : given(rated, "A"),
    by: "residual current device" as const,
    checks: Object.freeze(checks),
  });
}

// An isolated supply is accepted with its insulation monitored; the proof for a second fault stays open.
function isolatedSupply({ at, insulationMonitoring }: DisconnectionQuestion): Disconnection {
  const because = "the loop of a second fault in an isolated supply is not part of the description";
  return result(NOTHING, null, [
    insulationMonitored({ at, value: insulationMonitoring, limit: ["present"] }),
    secondFaultDisconnects({ at, missing: ["supply.loop"], because }),
  ]);
}
