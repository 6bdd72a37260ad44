import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { busbarAllowance, busbarLoad } from "./busbar.js";
import {
  busbarWithinAllowance,
  busbarWithinRating,
  controlledWithinBusbar,
  devicesWithinBusbar,
  engineeredBusbar,
  mainDeviceWithinBusbar,
  sourcePlacedAsAsked,
} from "./busbar-conditions.js";
import { type BusbarWay, busbarWays, type InterconnectionEdition, type SourcePlace } from "./nec-editions.js";
import { controlledCurrentSum, deviceSum } from "./source-currents.js";

type Currents = Known<readonly Input<"current">[]>;

/** A busbar with sources under NFPA 70. */
export interface BusbarConnection {
  readonly edition: InterconnectionEdition;
  readonly busbarRating: Known<Input<"current">>;
  /** The device that protects the busbar. */
  readonly mainDevice: Known<Input<"current">>;
  /** Continuous output current of each source. */
  readonly sourceCurrents: Currents;
  /** Rating of the device of each source. */
  readonly sourceDevices: Currents;
  readonly loadDevices: Currents;
  readonly sourcePlace: Known<SourcePlace>;
  /** Setting of a listed power control system, where there is one. */
  readonly controlledCurrent?: Known<Input<"current">>;
  /** Who worked the arrangement out, where the engineered way is taken. */
  readonly engineeredBy?: Known<"engineering supervision" | "nobody">;
  readonly at: string;
}

/** One way to meet the busbar rules. */
export interface WayTried {
  readonly way: BusbarWay;
  readonly clause: string;
  readonly label: string;
  readonly checks: readonly Check[];
}

/** The way that is taken, and those that were tried. */
export interface BusbarResult {
  /** The first way whose checks are all met; else the first that is still open; else `null`. */
  readonly taken: BusbarWay | null;
  /** The checks of the way that is taken, or of the plain sum where none is. */
  readonly checks: readonly Check[];
  readonly tried: readonly WayTried[];
}

/**
 * A busbar with sources: any one way of the edition suffices.
 *
 * @param way - the way that the designer has chosen; each is tried where it is left out
 */
export function busbarConnection(connection: BusbarConnection, way?: BusbarWay): BusbarResult {
  const tried = busbarWays.flatMap((each): readonly WayTried[] => {
    const clause = each[connection.edition];
    if (clause === null || (way !== undefined && way !== each.key)) return [];
    const checks = checksOf(each.key, connection, clause);
    return checks === null
      ? []
      : [Object.freeze({ way: each.key, clause, label: each.label, checks: Object.freeze(checks) })];
  });
  const met = tried.find(({ checks }) => checks.every(({ verdict }) => verdict === "met"));
  const open = tried.find(({ checks }) => checks.every(({ verdict }) => verdict !== "not met"));
  const taken = met ?? open ?? null;
  return Object.freeze({
    taken: taken?.way ?? null,
    checks: (taken ?? tried[0])?.checks ?? [],
    tried: Object.freeze(tried),
  });
}

const REMEDY =
  "smaller main device, source at the opposite end, larger busbar, power control system, or connection on the supply side";

function checksOf(way: BusbarWay, connection: BusbarConnection, clause: string): readonly Check[] | null {
  const {
    edition,
    busbarRating,
    mainDevice,
    sourceCurrents,
    sourceDevices,
    loadDevices,
    sourcePlace,
    controlledCurrent,
    engineeredBy,
    at,
  } = connection;
  const words = { at: `${way}/${at}`, because: `${edition}, ${clause}`, remedy: REMEDY };
  const load = whenKnown({ sourceCurrents, mainDevice }, busbarLoad);
  const allowance = whenKnown({ busbarRating }, busbarAllowance);
  switch (way) {
    case "sum":
      return [busbarWithinRating({ value: load, limit: busbarRating, ...words })];
    case "opposite ends":
    case "centre-fed": {
      const place: SourcePlace =
        way === "centre-fed" ? "one end of a centre-fed busbar in a dwelling" : "opposite end from the supply";
      return [
        sourcePlacedAsAsked({ value: sourcePlace, limit: [place], ...words }),
        busbarWithinAllowance({ value: load, limit: allowance, ...words }),
      ];
    }
    case "devices": {
      const sum = whenKnown({ sourceDevices, loadDevices }, (known) =>
        deviceSum({ deviceRatings: [...known.sourceDevices, ...known.loadDevices] }),
      );
      return [
        devicesWithinBusbar({ value: sum, limit: busbarRating, ...words }),
        mainDeviceWithinBusbar({ value: mainDevice, limit: busbarRating, ...words }),
      ];
    }
    case "power control": {
      if (controlledCurrent === undefined) return null;
      const sum = whenKnown({ controlledCurrent, mainDevice }, controlledCurrentSum);
      return [controlledWithinBusbar({ value: sum, limit: busbarRating, ...words })];
    }
    case "engineered":
      return engineeredBy === undefined
        ? null
        : [engineeredBusbar({ value: engineeredBy, limit: ["engineering supervision"], ...words })];
  }
}
