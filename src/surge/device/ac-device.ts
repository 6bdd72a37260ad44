import { isMissing, type Known } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { dischargeMinimum } from "../limits.js";
import type { LightningSituation, SurgeType } from "../lists.js";
import {
  backUpFuseSmallEnough,
  nominalDischargeEnough,
  surgeDeviceCarriesSupply,
  surgeEarthLargeEnough,
} from "./conditions.js";
import { absenceChecks, type SurgeVerdict } from "./dc-device.js";
import { highestSupplyVoltage } from "./levels.js";
import { mountingChecks, type SurgeMounting } from "./mounting.js";
import { surgeEarthMinimum } from "./type-by-lightning.js";
import { typeCheck, typesFor } from "./type-choice.js";

/** A surge protective device on the a.c. side, as far as it is known. */
export interface AcSurgeDevice extends SurgeMounting {
  readonly type: Known<SurgeType>;
  readonly continuousVoltage: Known<Input<"voltage">>;
  readonly nominalDischargeCurrent: Known<Input<"current">>;
  readonly largestBackUpFuse: Known<Input<"current">>;
  readonly earthSection: Known<Input<"area">>;
}

/** What decides the surge protection of a place on the a.c. side. */
export interface AcSurgeQuestion {
  readonly at: string;
  readonly place: "service entrance" | "inverter, a.c. side";
  readonly needed: Known<boolean>;
  readonly lightning: Known<LightningSituation>;
  readonly lineToEarth: Known<Input<"voltage">>;
  /** Rating of the overcurrent device ahead of the surge device. */
  readonly deviceAhead: Known<Input<"current">>;
  readonly impulseWithstand: Known<Input<"voltage">>;
  readonly device: AcSurgeDevice | "none";
}

/**
 * Verifies the surge protection of a place on the a.c. side: present where needed, of the right type, and rated for the supply.
 *
 * @param question - need, lightning situation, supply and device; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { acSurgeProtection } from "pv-to-grid/surge";
 * const verdict = acSurgeProtection({
 *   at: "Main board", place: "service entrance", needed: true, lightning: "separation distance kept", lineToEarth: "230 V", deviceAhead: "63 A", impulseWithstand: "4 kV",
 *   device: { type: "type 2", continuousVoltage: "275 V", nominalDischargeCurrent: "20 kA", largestBackUpFuse: "125 A", earthSection: "16 mm²", protectionLevel: "1.5 kV", leadLength: "0.4 m" },
 * });
 * verdict.checks.find((check) => check.verdict === "not met")?.rule.id; // "surge/surge-type-suits-lightning"
 * ```
 */
export function acSurgeProtection(question: AcSurgeQuestion): SurgeVerdict {
  const { at, place, needed, lightning, lineToEarth, deviceAhead, impulseWithstand, device } = question;
  const types = typesFor(lightning, place);
  if (device === "none") {
    return Object.freeze({ types, secondDevice: false, checks: Object.freeze(absenceChecks(at, needed, types)) });
  }
  const { type, continuousVoltage, nominalDischargeCurrent, largestBackUpFuse, earthSection } = device;
  const highest = isMissing(lineToEarth) ? lineToEarth : highestSupplyVoltage({ lineToEarth });
  const least = isMissing(type)
    ? type
    : surgeEarthMinimum({ type: type === "type 2" || type === "type 3" ? "type 2" : "type 1" });
  const checks = [
    ...(needed === false ? [] : [typeCheck(at, type, types)]),
    surgeDeviceCarriesSupply({ at, value: continuousVoltage, limit: highest }),
    nominalDischargeEnough({ at, value: nominalDischargeCurrent, limit: dischargeMinimum({ class: "II" }) }),
    backUpFuseSmallEnough({ at, value: deviceAhead, limit: largestBackUpFuse }),
    surgeEarthLargeEnough({ at, value: earthSection, limit: least }),
    ...mountingChecks(at, device, impulseWithstand, false),
  ];
  return Object.freeze({ types, secondDevice: false, checks: Object.freeze(checks) });
}
