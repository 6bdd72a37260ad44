import { type Check, isMissing } from "../../formula/index.js";
import { isQuantity } from "../../quantity/index.js";
import type { PvRules } from "../rules.js";
import {
  lowestParallelVoltage,
  oneOrientationInString,
  oneOrientationOnTracker,
  oneOrientationRequired,
  parallelVoltagesAgree,
  stringsOfOneLength,
  stringsOfOneType,
} from "./alike.js";
import type { TrackerStrings } from "./tracker-strings.js";
import { placeIn } from "../place.js";

/**
 * Whether the strings that share a tracker are alike: in type, in length, in the way they face.
 *
 * Another type or length is not met; AS/NZS 5033 judges the length by the open-circuit voltages. Strings of another
 * orientation are allowed at some loss of yield; inside one string it is a requirement where the rules say so.
 */
export function unlikeStrings(at: string, rules: PvRules, groups: readonly TrackerStrings[]): readonly Check[] {
  const first = groups[0];
  if (!first) return [];
  const checks: Check[] = [];
  const placeOf = ({ name }: TrackerStrings): string => placeIn(at, name);
  const different = groups.filter(({ moduleType }) => moduleType !== first.moduleType);
  for (const group of different.length > 0 ? different : groups.slice(1, 2)) {
    checks.push(stringsOfOneType({ value: group.moduleType, limit: [first.moduleType], at: placeOf(group) }));
  }
  checks.push(...(rules === "AS/NZS 5033:2021" ? byVoltage(groups, placeOf) : byLength(groups, placeOf)));
  const facing = first.orientations?.[0];
  for (const group of groups) {
    const [own, ...others] = group.orientations ?? [];
    if (own === undefined) continue;
    if (facing !== undefined && group !== first) {
      checks.push(oneOrientationOnTracker({ value: own, limit: [facing], at: placeOf(group) }));
    }
    const inString = rules === "AS/NZS 5033:2021" ? oneOrientationRequired : oneOrientationInString;
    const other = others.find((orientation) => orientation !== own);
    if (other !== undefined) checks.push(inString({ value: other, limit: [own], at: placeOf(group) }));
  }
  return checks;
}

type PlaceOf = (group: TrackerStrings) => string;

function byLength(groups: readonly TrackerStrings[], placeOf: PlaceOf): Check[] {
  const [first, ...rest] = groups;
  const different = rest.filter(({ modules }) => modules !== first!.modules);
  const remedy = `${first!.modules} modules in this string too, or a tracker of its own`;
  return (different.length > 0 ? different : rest.slice(0, 1)).map((group) =>
    stringsOfOneLength({
      value: group.modules,
      limit: first!.modules,
      at: placeOf(group),
      ...(different.length > 0 ? { remedy } : {}),
    }),
  );
}

function byVoltage(groups: readonly TrackerStrings[], placeOf: PlaceOf): Check[] {
  if (groups.length < 2) return [];
  const voltages = groups.map(({ openCircuitVoltage }) => openCircuitVoltage);
  if (voltages.some((voltage) => voltage === undefined)) return byLength(groups, placeOf);
  const lacks = voltages.flatMap((voltage) => (isMissing(voltage) ? voltage.missing : []));
  if (lacks.length > 0) return [parallelVoltagesAgree({ missing: lacks, at: placeOf(groups[0]!) })];
  const limit = lowestParallelVoltage({
    voltages: voltages as Parameters<typeof lowestParallelVoltage>[0]["voltages"],
  });
  const checks = groups.map((group) =>
    parallelVoltagesAgree({ value: group.openCircuitVoltage!, limit, at: placeOf(group) }),
  );
  const lowest = checks.reduce((least, check) => (numberOf(check) < numberOf(least) ? check : least));
  const failing = checks.filter(({ verdict }) => verdict !== "met");
  return failing.length > 0 ? failing : [lowest];
}

function numberOf({ value }: Check): number {
  return isQuantity(value) ? value.number : 0;
}
