import { type RcdType, residualCurrentRatings } from "../../device/index.js";
import { type Check, choose, type Choice, isMissing, type Known } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import type { SupplyEarthing } from "../shock/disconnection.js";
import { electrodeDisconnects, largestElectrodeResistance, touchVoltageLimits } from "../shock/tt-condition.js";
import {
  leakageWithinShare,
  residualDeviceBidirectional,
  residualTypeAllowed,
  upstreamDelayed,
  upstreamLessSensitive,
  upstreamNotBlinded,
} from "./conditions.js";
import { leakageShare, selectiveResidualCurrent } from "./share.js";

/** A residual current device upstream of the inverter's circuit. */
export interface UpstreamResidualDevice {
  readonly type: Known<RcdType>;
  readonly ratedResidualCurrent: Known<Input<"current">>;
  readonly delay: Known<"general" | "S">;
}

/** What decides a residual current device of an inverter circuit. */
export interface ResidualQuestion {
  readonly at: string;
  readonly earthing: Known<SupplyEarthing>;
  /** Whether a local rule, the wiring system or the operator asks for one. */
  readonly asked: Known<boolean>;
  /** Whether the inverter has at least simple separation between array and supply. */
  readonly isolated: Known<boolean>;
  /** Type that the maker declares to be enough, or that nothing is declared. */
  readonly declaredType: RcdType | "not declared";
  readonly leakageCurrent: Known<Input<"current">>;
  readonly electrodeResistance: Known<Input<"resistance">>;
  /** The device: chosen, stated, or none. */
  readonly device:
    | "choose"
    | "none"
    | {
        readonly type: Known<RcdType>;
        readonly ratedResidualCurrent: Known<Input<"current">>;
        readonly feed: Known<"bidirectional" | "one way">;
      };
  readonly upstream: UpstreamResidualDevice | "none" | { readonly missing: readonly string[] };
}

/** Whether a residual current device is needed, which types serve, and the device. */
export interface ResidualChoice {
  readonly needed: Known<boolean>;
  /** Types that detect whatever the inverter can feed, narrowest first. */
  readonly types: readonly RcdType[];
  readonly ratedResidualCurrent: Known<Quantity<"current">> | null;
  readonly choice: Choice<"A"> | null;
  readonly checks: readonly Check[];
}

const WIDENING: readonly RcdType[] = ["AC", "A", "F", "B", "B+"];

/**
 * Types of residual current device that serve an inverter: what its maker declares, by load where it separates array and
 * supply, type B otherwise.
 *
 * @param declared - type that the maker declares to be enough
 * @param isolated - whether the inverter has at least simple separation, or what is missing for it
 * @example
 * ```ts
 * import { residualTypesFor } from "pv-to-grid/protection";
 * residualTypesFor("not declared", false).join(", "); // "B, B+"
 * ```
 */
export function residualTypesFor(declared: RcdType | "not declared", isolated: Known<boolean>): readonly RcdType[] {
  const least = declared !== "not declared" ? declared : isolated === true ? "A" : "B";
  return WIDENING.slice(WIDENING.indexOf(least));
}

/**
 * Chooses the smallest rated residual current, or verifies a stated device; type B unless the maker or the separation of
 * the inverter allow another.
 *
 * @param question - earthing, inverter, leakage, electrode and devices; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { missing } from "pv-to-grid/formula";
 * import { chooseResidualDevice } from "pv-to-grid/protection";
 * const choice = chooseResidualDevice({
 *   at: "INV1", earthing: "TT", asked: false, isolated: false, declaredType: "not declared", leakageCurrent: "25 mA", electrodeResistance: "60 Ω", device: "choose", upstream: "none",
 * });
 * choice.choice?.chosen?.in("mA").text; // "100"
 * ```
 */
export function chooseResidualDevice(question: ResidualQuestion): ResidualChoice {
  const { at, earthing, asked, isolated, declaredType, device } = question;
  const types = residualTypesFor(declaredType, isolated);
  const needed = isMissing(earthing) ? earthing : earthing === "TT" ? true : asked;
  const upstream = upstreamChecks(question, types);
  if (device === "none" || (device === "choose" && needed === false)) {
    const because = "a TT supply disconnects by a residual current device";
    const absent =
      device === "none" && needed === true ? [residualTypeAllowed({ at, value: "none", limit: types, because })] : [];
    const open =
      device === "none" && isMissing(needed)
        ? [residualTypeAllowed({ at, value: "none", missing: needed.missing })]
        : [];
    return Object.freeze({
      needed,
      types,
      ratedResidualCurrent: null,
      choice: null,
      checks: Object.freeze([...absent, ...open, ...upstream]),
    });
  }
  if (device !== "choose") {
    const { type, ratedResidualCurrent, feed } = device;
    const own = isMissing(ratedResidualCurrent) ? ratedResidualCurrent : given(ratedResidualCurrent, "A");
    const checks = [
      residualTypeAllowed({ at, value: type, limit: types }),
      residualDeviceBidirectional({ at, value: feed, limit: ["bidirectional"] }),
      ...ratingChecks(question, own),
      ...selectivityChecks(question, own),
      ...upstream,
    ];
    return Object.freeze({ needed, types, ratedResidualCurrent: own, choice: null, checks: Object.freeze(checks) });
  }
  const choice = choose(residualCurrentRatings, (size) => ratingChecks(question, size));
  const checks = choice.chosen
    ? [...choice.checks, ...selectivityChecks(question, choice.chosen), ...upstream]
    : [...choice.checks, ...upstream];
  return Object.freeze({ needed, types, ratedResidualCurrent: choice.chosen, choice, checks: Object.freeze(checks) });
}

function ratingChecks(question: ResidualQuestion, rated: Known<Quantity<"current">>): readonly Check[] {
  const { at, earthing, leakageCurrent, electrodeResistance } = question;
  const share = isMissing(rated) ? rated : leakageShare({ ratedResidualCurrent: rated });
  const checks = [leakageWithinShare({ at, value: leakageCurrent, limit: share })];
  if (earthing === "TT") {
    const touchVoltageLimit = touchVoltageLimits({ place: "ordinary" });
    const limit = isMissing(rated)
      ? rated
      : largestElectrodeResistance({ touchVoltageLimit, ratedResidualCurrent: rated });
    checks.push(electrodeDisconnects({ at, value: electrodeResistance, limit }));
  }
  return checks;
}

function upstreamChecks({ at, upstream }: ResidualQuestion, types: readonly RcdType[]): readonly Check[] {
  if (upstream === "none") return [];
  if (isMissing(upstream)) return [upstreamNotBlinded({ at, missing: upstream.missing })];
  return [upstreamNotBlinded({ at, value: upstream.type, limit: types })];
}

function selectivityChecks({ at, upstream }: ResidualQuestion, rated: Known<Quantity<"current">>): readonly Check[] {
  if (upstream === "none" || isMissing(upstream)) return [];
  const limit = isMissing(rated) ? rated : selectiveResidualCurrent({ ratedResidualCurrent: rated });
  return [
    upstreamDelayed({ at, value: upstream.delay, limit: ["S"] }),
    upstreamLessSensitive({ at, value: upstream.ratedResidualCurrent, limit }),
  ];
}
