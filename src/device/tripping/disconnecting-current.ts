import { isMissing, type Known, missing } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import type { BreakerCharacteristic, DeviceKind } from "../lists.js";
import { iec60898_1_2015_trip_bands } from "./bands.js";
import { iec60269_1_2006_gg_operating_currents } from "./fuse-operating-currents.js";
import { instantaneousTripCurrent } from "./magnetic-trip.js";

/** What is asked of a device that must disconnect a fault. */
export interface DisconnectingDevice {
  readonly kind: DeviceKind;
  readonly ratedCurrent: Input<"current">;
  /** Characteristic of a miniature breaker; what is missing for it otherwise. */
  readonly characteristic: Known<BreakerCharacteristic>;
  /** Time within which the device must disconnect. */
  readonly disconnectionTime: Input<"time">;
  /** The maker's current for that time; it goes before the standard's band. */
  readonly operatingCurrent: Known<Input<"current">>;
}

/**
 * Current at which a device surely disconnects within a time: the maker's value, the upper end of a miniature breaker's
 * instantaneous band, or the gate of a gG fuse-link; missing where none of them is there.
 *
 * @param device - kind, rating, characteristic, time and the maker's current or what is missing for it
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { disconnectingCurrent } from "pv-to-grid/device";
 * const current = disconnectingCurrent({
 *   kind: "miniature breaker", ratedCurrent: "20 A", characteristic: "C", disconnectionTime: "0.4 s", operatingCurrent: missing("device.operatingCurrent"),
 * });
 * "text" in current && current.text; // "200"
 * ```
 */
export function disconnectingCurrent(device: DisconnectingDevice): Known<Quantity<"current">> {
  const { kind, ratedCurrent, characteristic, operatingCurrent } = device;
  if (!isMissing(operatingCurrent)) return given(operatingCurrent, "A", "maker's operating current");
  if (kind === "miniature breaker") {
    if (isMissing(characteristic)) return characteristic;
    const tripMultiple = iec60898_1_2015_trip_bands({ characteristic, limit: "trips at the latest" });
    return instantaneousTripCurrent({ ratedCurrent, tripMultiple });
  }
  if (kind === "gG fuse") return fuseGate(device, operatingCurrent.missing);
  return missing(...operatingCurrent.missing);
}

function fuseGate(
  { ratedCurrent, disconnectionTime }: DisconnectingDevice,
  paths: readonly string[],
): Known<Quantity<"current">> {
  const time = given(disconnectionTime, "s").text;
  const rating = given(ratedCurrent, "A");
  const column = time === "5" ? "5 s" : time === "0.4" ? "0.4 s" : null;
  const tabulated = iec60269_1_2006_gg_operating_currents.rows().includes(rating.text);
  if (column === null || !tabulated) return missing(...paths);
  return iec60269_1_2006_gg_operating_currents({ ratedCurrent: rating, disconnectionTime: column });
}
