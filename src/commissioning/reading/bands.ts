import { isMissing, type Known } from "../../formula/index.js";
import type { Dimension, Quantity } from "../../quantity/index.js";
import { highestCurrent, highestPower, highestVoltage, lowestCurrent, lowestPower, lowestVoltage } from "./band.js";

/** An expected value and the ends of its band; missing where the conditions are. */
export interface Band<D extends Dimension> {
  readonly expected: Known<Quantity<D>>;
  readonly low: Known<Quantity<D>>;
  readonly high: Known<Quantity<D>>;
}

type Share = Quantity<"ratio">;

function bandOf<D extends Dimension>(
  expected: Known<Quantity<D>>,
  low: (expected: Quantity<D>) => Quantity<D>,
  high: (expected: Quantity<D>) => Quantity<D>,
): Band<D> {
  const known = !isMissing(expected);
  return Object.freeze({ expected, low: known ? low(expected) : expected, high: known ? high(expected) : expected });
}

/** The band about an expected voltage. */
export function bandOfVoltage(expected: Known<Quantity<"voltage">>, tolerance: Share): Band<"voltage"> {
  return bandOf(
    expected,
    (expectedVoltage) => lowestVoltage({ expectedVoltage, bandTolerance: tolerance }),
    (expectedVoltage) => highestVoltage({ expectedVoltage, bandTolerance: tolerance }),
  );
}

/** The band about an expected current. */
export function bandOfCurrent(expected: Known<Quantity<"current">>, tolerance: Share): Band<"current"> {
  return bandOf(
    expected,
    (expectedCurrent) => lowestCurrent({ expectedCurrent, bandTolerance: tolerance }),
    (expectedCurrent) => highestCurrent({ expectedCurrent, bandTolerance: tolerance }),
  );
}

/** The band about an expected power. */
export function bandOfPower(expected: Known<Quantity<"activePower">>, tolerance: Share): Band<"activePower"> {
  return bandOf(
    expected,
    (expectedPower) => lowestPower({ expectedPower, bandTolerance: tolerance }),
    (expectedPower) => highestPower({ expectedPower, bandTolerance: tolerance }),
  );
}
