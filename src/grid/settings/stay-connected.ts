import { type Check, type Known, missing } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import {
  overfrequencyTripAboveBand,
  overvoltageTripAboveRideThrough,
  tripWaitsForBand,
  tripWaitsForRideThrough,
  underfrequencyTripBelowBand,
  undervoltageTripBelowRideThrough,
} from "./stay-connected-conditions.js";
import { eu2016_1388_frequencyBand, eu2016_1388_frequencyTime } from "./tables/eu-2016-1388.js";
import {
  ieee1547_1_2020_rideThroughTime,
  ieee1547_1_2020_rideThroughVoltage,
} from "./tables/ieee-1547-1-2020-ride-through.js";

/** The synchronous areas of the European network codes. */
export const synchronousAreas = [
  { key: "Continental Europe", label: "Continental Europe", edition: "EU 2016/1388:2016", grade: "original" },
  { key: "Nordic", label: "Nordic", edition: "EU 2016/1388:2016", grade: "original" },
  { key: "Great Britain", label: "Great Britain", edition: "EU 2016/1388:2016", grade: "original" },
  {
    key: "Ireland and Northern Ireland",
    label: "Ireland and Northern Ireland",
    edition: "EU 2016/1388:2016",
    grade: "original",
  },
  { key: "Baltic", label: "Baltic", edition: "EU 2016/1388:2016", grade: "original" },
] as const;

/** A synchronous area of the European network codes. */
export type SynchronousArea = (typeof synchronousAreas)[number]["key"];

/** The synchronous area in which a set of connection rules holds; `null` where it says none, or is not European. */
export function synchronousAreaOf(rules: GridRules): SynchronousArea | null {
  if (rules.startsWith("EREC ")) return "Great Britain";
  if (rules.startsWith("ESB ")) return "Ireland and Northern Ireland";
  const elsewhere = ["AS/NZS", "IEEE", "California", "ISO-NE", "IEC", "EN 50549"].some((start) =>
    rules.startsWith(start),
  );
  return elsewhere ? null : "Continental Europe";
}

/** A frequency trip: its threshold, and how long it waits. */
export interface FrequencyTrip {
  readonly side: "under" | "over";
  readonly frequency: Input<"frequency">;
  readonly time: Known<Input<"time">>;
  readonly at: string;
}

const NARROWER = "narrower than the bands in which the European network code asks a plant to stay connected";

/** Whether a frequency trip leaves the plant connected as long as the European network code asks. */
export function frequencyStayConnectedChecks(
  area: SynchronousArea,
  { side, frequency, time, at }: FrequencyTrip,
): readonly Check[] {
  return Object.freeze(
    bandsOf(area, side).map((band) => {
      const [from, to] = [
        eu2016_1388_frequencyBand({ band, bound: "from" }),
        eu2016_1388_frequencyBand({ band, bound: "to" }),
      ];
      const words = { at: `${area} ${from.text} to ${to.text} Hz/${at}`, because: NARROWER };
      const leaves =
        side === "under"
          ? underfrequencyTripBelowBand({ value: frequency, limit: from, ...words })
          : overfrequencyTripAboveBand({ value: frequency, limit: to, ...words });
      if (leaves.verdict === "met" || isEndless(band)) return leaves;
      return tripWaitsForBand({ value: time, limit: eu2016_1388_frequencyTime({ band }), ...words });
    }),
  );
}

/** The bands of an area that a trip to one side can enter: the one without an end of time, and those beyond it. */
function bandsOf(area: SynchronousArea, side: "under" | "over"): readonly string[] {
  const bands = eu2016_1388_frequencyBand.rows().filter((band) => band.replace(/ \d$/, "") === area);
  const endless = bands.findIndex(isEndless);
  return side === "under" ? bands.slice(0, endless + 1) : bands.slice(endless);
}

function isEndless(band: string): boolean {
  return !eu2016_1388_frequencyTime.rows().includes(band);
}

/** A voltage trip as a share of the nominal voltage, and how long it waits. */
export interface VoltageTrip {
  readonly side: "under" | "over";
  readonly voltageShare: Quantity<"ratio">;
  readonly time: Known<Input<"time">>;
  readonly at: string;
}

/** Whether a voltage trip rides through the test conditions of IEEE 1547.1 for an abnormal category; none are known for category I. */
export function voltageRideThroughChecks(
  category: "II" | "III",
  { side, voltageShare, time, at }: VoltageTrip,
): readonly Check[] {
  const start = `${category} ${side === "under" ? "low" : "high"} `;
  const tests = ieee1547_1_2020_rideThroughVoltage.rows().filter((test) => test.startsWith(start));
  return Object.freeze(
    tests.map((test) => {
      const limit = ieee1547_1_2020_rideThroughVoltage({ test });
      const words = { at: `category ${test}/${at}` };
      const clears = side === "under" ? undervoltageTripBelowRideThrough : overvoltageTripAboveRideThrough;
      const clear = clears({ value: voltageShare, limit, ...words });
      return clear.verdict === "met"
        ? clear
        : tripWaitsForRideThrough({ value: time, limit: ieee1547_1_2020_rideThroughTime({ test }), ...words });
    }),
  );
}

/** What a trip waits where the rules print no time. */
export function timeOf(time: Quantity<"time"> | null, path: string): Known<Quantity<"time">> {
  return time ?? missing(path);
}
