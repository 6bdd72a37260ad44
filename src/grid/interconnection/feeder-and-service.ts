import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import {
  deviceProtectsFeeder,
  feederCarriesSources,
  sourceCurrentsWithinService,
  sourceDevicesWithinService,
  tapCarriesItsShare,
} from "./feeder-and-service-conditions.js";
import { feederAmpacityNeeded, tapAmpacityByCurrents, tapAmpacityByDevices } from "./feeder.js";
import type { InterconnectionEdition } from "./nec-editions.js";
import { deviceSum, sourceCurrentSum } from "./source-currents.js";

type Current = Known<Input<"current">>;
type Currents = Known<readonly Input<"current">[]>;

/** Sources on a feeder under NFPA 70, elsewhere than at its far end. */
export interface FeederConnection {
  readonly edition: InterconnectionEdition;
  readonly feederAmpacity: Current;
  readonly feederDevice: Current;
  readonly sourceCurrents: Currents;
  /** Device on the load side of the connection, where there is one. */
  readonly deviceBeyond?: Current;
  readonly at: string;
}

const FEEDER = {
  "NFPA 70:2017": "705.12(B)(2)(1)",
  "NFPA 70:2020": "705.12(B)(1)",
  "NFPA 70:2023": "705.12(A)(2)",
} as const;
const TAP = {
  "NFPA 70:2017": "705.12(B)(2)(2)",
  "NFPA 70:2020": "705.12(B)(2)",
  "NFPA 70:2023": "705.12(A)(3)",
} as const;

/** A feeder with sources: a device beyond the connection, where there is one; else an ampacity for both. */
export function feederConnectionChecks({
  edition,
  feederAmpacity,
  feederDevice,
  sourceCurrents,
  deviceBeyond,
  at,
}: FeederConnection): readonly Check[] {
  const words = {
    at,
    because: `${edition}, ${FEEDER[edition]}`,
    remedy: "a device beyond the connection, not above the ampacity of the feeder; or a larger feeder",
  };
  if (deviceBeyond !== undefined)
    return [deviceProtectsFeeder({ value: deviceBeyond, limit: feederAmpacity, ...words })];
  const due = whenKnown({ sourceCurrents, feederDevice }, feederAmpacityNeeded);
  return [feederCarriesSources({ value: due, limit: feederAmpacity, ...words })];
}

/** A tap of up to 7.5 m (25 ft) on a feeder with sources. */
export interface FeederTap {
  readonly edition: InterconnectionEdition;
  readonly tapAmpacity: Current;
  readonly feederDevice: Current;
  readonly sourceCurrents: Currents;
  readonly sourceDevices: Currents;
  readonly at: string;
}

/** A tap on a feeder with sources: one third, by the currents of the sources until 2020, by their devices from 2023. */
export function feederTapChecks({
  edition,
  tapAmpacity,
  feederDevice,
  sourceCurrents,
  sourceDevices,
  at,
}: FeederTap): readonly Check[] {
  const due =
    edition === "NFPA 70:2023"
      ? whenKnown({ sourceDevices, feederDevice }, tapAmpacityByDevices)
      : whenKnown({ sourceCurrents, feederDevice }, tapAmpacityByCurrents);
  return [tapCarriesItsShare({ value: due, limit: tapAmpacity, at, because: `${edition}, ${TAP[edition]}` })];
}

/** Sources on the supply side of the service disconnect under NFPA 70. */
export interface SupplySideConnection {
  readonly edition: InterconnectionEdition;
  /** Rating of the service; counts in 2017. */
  readonly serviceRating: Current;
  /** Ampacity of the service conductors; counts from 2020 on. */
  readonly serviceAmpacity: Current;
  readonly sourceCurrents: Currents;
  readonly sourceDevices: Currents;
  readonly at: string;
}

/** A supply-side connection: by devices against the service in 2017, by output currents against its conductors from 2020 on. */
export function supplySideChecks({
  edition,
  serviceRating,
  serviceAmpacity,
  sourceCurrents,
  sourceDevices,
  at,
}: SupplySideConnection): readonly Check[] {
  if (edition === "NFPA 70:2017") {
    const value = whenKnown({ sourceDevices }, (known) => deviceSum({ deviceRatings: known.sourceDevices }));
    return [sourceDevicesWithinService({ value, limit: serviceRating, at, because: `${edition}, 705.12(A)` })];
  }
  return [
    sourceCurrentsWithinService({
      value: whenKnown({ sourceCurrents }, sourceCurrentSum),
      limit: serviceAmpacity,
      at,
      because: `${edition}, 705.11`,
    }),
  ];
}
