import { isMissing, type Known } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { whole } from "../count.js";
import { maximumStringCurrent } from "../current/maximum-string-current.js";
import { parallelCurrent, summedCurrent } from "../current/parallel-current.js";

/** Equal strings on a tracker. */
export interface TrackerStrings {
  /** Which group it is; it becomes part of the place of its checks. */
  readonly name?: string;
  readonly count: number;
  /** Modules in series in each. */
  readonly modules: number;
  readonly moduleType: string;
  /** Of one string at its maximum power point. */
  readonly mppCurrent: Input<"current">;
  /** Of one string at standard test conditions. */
  readonly shortCircuitCurrent: Input<"current">;
  /** Correction of the current factor, K_Corr; left out, none. Missing leaves the short-circuit checks open. */
  readonly currentCorrection?: Known<Input<"ratio">>;
  /** Of one string, for rule sets that compare the voltages of parallel strings. */
  readonly openCircuitVoltage?: Known<Input<"voltage">>;
  /** The ways that its modules face, the first one first; left out, not judged. */
  readonly orientations?: readonly string[];
  /** Name of the branch or combiner that joins these strings before they reach an input. */
  readonly junction?: string;
}

/** Maximum current of one string of a group, or what is missing for it. */
export function maximumOfOne({ shortCircuitCurrent, currentCorrection }: TrackerStrings): Known<Quantity<"current">> {
  if (currentCorrection === undefined) return maximumStringCurrent({ shortCircuitCurrent });
  return isMissing(currentCorrection)
    ? currentCorrection
    : maximumStringCurrent({ shortCircuitCurrent, currentCorrection });
}

/** Maximum current of several groups in parallel, or what is missing for it. */
export function maximumOfAll(groups: readonly TrackerStrings[]): Known<Quantity<"current">> {
  const each = groups.map((group) => ({ count: group.count, one: maximumOfOne(group) }));
  const lacks = each.flatMap(({ one }) => (isMissing(one) ? one.missing : []));
  if (lacks.length > 0) return { missing: [...new Set(lacks)] };
  return total(each.map(({ count, one }) => inParallel(count, one as Quantity<"current">)));
}

/** Current of several groups at their maximum power points. */
export function mppCurrentOfAll(groups: readonly TrackerStrings[]): Quantity<"current"> {
  return total(groups.map(({ count, mppCurrent }) => parallelCurrent({ strings: whole(count), current: mppCurrent })));
}

function inParallel(count: number, current: Quantity<"current">): Quantity<"current"> {
  return count === 1 ? current : parallelCurrent({ strings: whole(count), current });
}

function total(currents: readonly Quantity<"current">[]): Quantity<"current"> {
  return currents.length === 1 ? currents[0]! : summedCurrent({ currents });
}
