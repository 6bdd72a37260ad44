import { type Check, isMissing, type Known, missing } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { deviceReach } from "../limits.js";
import type { LightningSituation, SurgeType } from "../lists.js";
import { mountingChecks, type SurgeMounting } from "./mounting.js";
import {
  oneDeviceReaches,
  surgeDeviceCarriesVoltage,
  surgeDevicePresent,
  surgeDeviceStandsShortCircuit,
} from "./conditions.js";
import { typeCheck, typesFor } from "./type-choice.js";

/** A surge protective device on the d.c. side, as far as it is known. */
export interface DcSurgeDevice extends SurgeMounting {
  readonly type: Known<SurgeType>;
  readonly continuousVoltage: Known<Input<"voltage">>;
  readonly shortCircuitRating: Known<Input<"current">>;
}

/** What decides the surge protection of an inverter's d.c. side. */
export interface DcSurgeQuestion {
  readonly at: string;
  readonly needed: Known<boolean>;
  readonly lightning: Known<LightningSituation>;
  /** Open-circuit voltage of the longest string at the coldest temperature, or by the factor 1.2 where that is not known. */
  readonly coldVoltage: Known<Input<"voltage">>;
  /** Highest current of the array behind the device. */
  readonly maximumCurrent: Known<Input<"current">>;
  /** Length of cable between array and inverter. */
  readonly cableLength: Known<Input<"length">>;
  /** What the equipment withstands, by its maker. */
  readonly impulseWithstand: Known<Input<"voltage">>;
  /** The device, or that there is none. */
  readonly device: DcSurgeDevice | "none";
}

/** What surge protection asks for at a place, and the verdicts on the device. */
export interface SurgeVerdict {
  /** Types that the lightning situation allows, or what is missing for it. */
  readonly types: Known<readonly SurgeType[]>;
  /** Whether a second device belongs at the other end of the cable. */
  readonly secondDevice: Known<boolean>;
  readonly checks: readonly Check[];
}

/**
 * Verifies the surge protection of the d.c. side: present where needed, of the right type, and rated for the array.
 *
 * @param question - need, lightning situation, array and device; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { dcSurgeProtection } from "pv-to-grid/surge";
 * const verdict = dcSurgeProtection({
 *   at: "INV1", needed: true, lightning: "no lightning protection", coldVoltage: "908 V", maximumCurrent: "17.6 A", cableLength: "22 m",
 *   impulseWithstand: missing("inverters[0].impulseWithstand"), device: "none",
 * });
 * verdict.checks[0]?.verdict; // "not met"
 * ```
 */
export function dcSurgeProtection(question: DcSurgeQuestion): SurgeVerdict {
  const { at, needed, lightning, coldVoltage, maximumCurrent, cableLength, impulseWithstand, device } = question;
  const types = typesFor(lightning, "inverter, d.c. side");
  const reach = oneDeviceReaches({ at, value: cableLength, limit: deviceReach({ rule: "one device" }) });
  const secondDevice = reach.verdict === "open" ? missing(...reach.missing) : reach.verdict === "not met";
  if (device === "none") {
    return Object.freeze({ types, secondDevice, checks: Object.freeze(absenceChecks(at, needed, types)) });
  }
  const checks = [
    ...(needed === false ? [] : [typeCheck(at, device.type, types)]),
    surgeDeviceCarriesVoltage({ at, value: device.continuousVoltage, limit: coldVoltage }),
    surgeDeviceStandsShortCircuit({ at, value: device.shortCircuitRating, limit: maximumCurrent }),
    ...mountingChecks(at, device, impulseWithstand, secondDevice),
    reach,
  ];
  return Object.freeze({ types, secondDevice, checks: Object.freeze(checks) });
}

/** The verdict on a place without a device. */
export function absenceChecks(
  at: string,
  needed: Known<boolean>,
  types: Known<readonly SurgeType[]>,
): readonly Check[] {
  if (needed === false) return [];
  if (isMissing(needed)) return [surgeDevicePresent({ at, value: "none", missing: needed.missing })];
  const limit = isMissing(types) ? ["type 1", "type 2", "type 1 and 2"] : types;
  return [surgeDevicePresent({ at, value: "none", limit, remedy: "a surge protective device at this place" })];
}
