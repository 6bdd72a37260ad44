import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import {
  alternatingDropWithinPractice,
  changeWithinRebt,
  directDropWithinMcs,
  directDropWithinPractice,
  dropWithinAnnexG,
  dropWithinAsNzs3000,
  dropWithinBs7671,
  dropWithinNfpa70,
  dropWithinRebt,
  riseWithinAsNzs4777,
  riseWithinVde4105,
} from "./limit-conditions.js";
import { type VoltageLimitKey, voltageLimits } from "./limit-list.js";
import { limitOfAnnexG, supplementOfAnnexG, voltageLimitShares } from "./limit-shares.js";

const conditions = {
  alternatingDropWithinPractice,
  changeWithinRebt,
  directDropWithinMcs,
  directDropWithinPractice,
  dropWithinAnnexG,
  dropWithinAsNzs3000,
  dropWithinBs7671,
  dropWithinNfpa70,
  dropWithinRebt,
  riseWithinAsNzs4777,
  riseWithinVde4105,
};

/** A voltage change against a limit. */
export interface VoltageLimitRequest {
  readonly limit: VoltageLimitKey;
  /** The change over the stretch, at the current and by the plants that the limit is made for. */
  readonly share: Known<Input<"ratio">>;
  readonly at: string;
  /** Length of the main wiring: annex G allows more beyond 100 m. */
  readonly length?: Known<Input<"length">>;
}

/** Whether a voltage change is within a limit; the caller answers for stretch, current and plants being those of the limit. */
export function voltageLimitCheck({ limit, share, at, length }: VoltageLimitRequest): Check {
  const { condition, plants, current, stretch } = voltageLimits.find(({ key }) => key === limit)!;
  const tabulated = voltageLimitShares({ changeLimit: limit });
  const due = condition === "dropWithinAnnexG" && length !== undefined ? supplemented(tabulated, length) : tabulated;
  return conditions[condition]({ value: share, limit: due, at, because: `${stretch}; ${current}; ${plants}` });
}

function supplemented(tabulatedLimit: Quantity<"ratio">, length: Known<Input<"length">>): Known<Quantity<"ratio">> {
  return whenKnown({ length }, (known) => limitOfAnnexG({ tabulatedLimit, supplement: supplementOfAnnexG(known) }));
}
