import { type Check, isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import {
  bothFeeds,
  busbarCarriesBothFeeds,
  largerFeed,
  mainSwitchCarries,
  sourcesTogether,
  supplyDeviceCarriesExport,
} from "./feeds.js";

/** A board that is fed by the supply and by inverters. */
export interface TwoFeedsQuestion {
  readonly at: string;
  readonly busbarRating: Known<Input<"current">>;
  /** Rated current of the device that feeds the board from the supply. */
  readonly supplyDevice: Known<Input<"current">>;
  /** Rated current of the main switch; `null` where the supply device is the main switch. */
  readonly mainSwitch: Known<Input<"current">> | null;
  /** Largest output current of each inverter that feeds the board. */
  readonly sourceCurrents: readonly Known<Input<"current">>[];
}

/**
 * Proves that busbar, supply device and main switch of a board carry what supply and inverters feed, by IEC 60364-5-55;
 * the rules of NEC 705.12 are those of `grid/`.
 *
 * @param question - ratings of the board and currents of the inverters; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { proveBoard } from "pv-to-grid/protection";
 * proveBoard({ at: "Main board", busbarRating: "63 A", supplyDevice: "35 A", mainSwitch: null, sourceCurrents: ["8 A"] }).map((check) => check.verdict).join(); // "met,met"
 * ```
 */
export function proveBoard({
  at,
  busbarRating,
  supplyDevice,
  mainSwitch,
  sourceCurrents,
}: TwoFeedsQuestion): readonly Check[] {
  const absent = sourceCurrents.flatMap((current) => (isMissing(current) ? current.missing : []));
  const known = sourceCurrents.filter((current): current is Input<"current"> => !isMissing(current));
  const sources = absent.length > 0 || known.length === 0 ? missing(...absent) : known;
  const both = whenKnown({ supplyDevice, sources }, (feeds) =>
    bothFeeds({ supplyDevice: feeds.supplyDevice, sourceCurrents: feeds.sources }),
  );
  const exported = isMissing(sources) ? sources : sourcesTogether({ sourceCurrents: sources });
  const checks = [
    busbarCarriesBothFeeds({ at, value: both, limit: busbarRating }),
    supplyDeviceCarriesExport({ at, value: exported, limit: supplyDevice }),
  ];
  if (mainSwitch !== null) {
    const larger = whenKnown({ supplyDevice, sources }, (feeds) =>
      largerFeed({ supplyDevice: feeds.supplyDevice, sourceCurrents: feeds.sources }),
    );
    checks.push(mainSwitchCarries({ at, value: larger, limit: mainSwitch }));
  }
  return Object.freeze(checks);
}
