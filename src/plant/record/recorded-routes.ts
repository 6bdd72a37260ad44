import type { RecordedNumber } from "./recorded-number.js";

/** One stretch of a route. */
export interface RecordedStretch {
  readonly place: string;
  readonly length: RecordedNumber;
  readonly ampacity: RecordedNumber | null;
  readonly change: RecordedNumber | null;
}

/** One route and what was found for it. */
export interface RecordedRoute {
  readonly path: string;
  readonly from: string;
  readonly to: string;
  readonly kind: "d.c." | "a.c.";
  readonly cable: string;
  readonly size: RecordedNumber | null;
  readonly sizeName: string | null;
  readonly protectiveConductor: RecordedNumber | null;
  /** The checks that fixed the size, or nothing where it was stated or is the smallest of the series. */
  readonly fixedBy: readonly string[];
  readonly length: RecordedNumber;
  readonly circuits: number;
  readonly current: RecordedNumber | null;
  readonly ampacity: RecordedNumber | null;
  readonly voltageChange: RecordedNumber | null;
  readonly voltageChangeShare: RecordedNumber | null;
  readonly loss: RecordedNumber | null;
  readonly breaker: RecordedNumber | null;
  readonly breakerCharacteristic: string | null;
  readonly stretches: readonly RecordedStretch[];
}
