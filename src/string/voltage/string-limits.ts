import {
  type Check,
  type Condition,
  type ConditionDeclaration,
  isMissing,
  type Known,
  type Relation,
  type Side,
} from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { largestMet, smallestMet, whole } from "../count.js";
import {
  coldVoltageWithinCable,
  coldVoltageWithinConnector,
  coldVoltageWithinFuse,
  coldVoltageWithinInverter,
  coldVoltageWithinLegalCeiling,
  coldVoltageWithinModule,
  coldVoltageWithinSurgeDevice,
  coldVoltageWithinSwitch,
} from "./ceiling-conditions.js";
import { longestString, shortestString } from "./module-counts.js";
import { lowerLimitWithMargin, mppVoltageAtInverter } from "./mpp-voltage.js";
import { stringVoltage } from "./string-voltage.js";
import {
  coldMppVoltageWithinRange,
  endOfLifeMppVoltageWithinRange,
  hotMppVoltageWithinRange,
  hotVoltageReachesStart,
} from "./window-conditions.js";
import { placeIn } from "../place.js";

type Volts = Input<"voltage">;
type Voltage = Quantity<"voltage">;

const ceilingConditions = {
  inverter: coldVoltageWithinInverter,
  module: coldVoltageWithinModule,
  connector: coldVoltageWithinConnector,
  cable: coldVoltageWithinCable,
  switch: coldVoltageWithinSwitch,
  fuse: coldVoltageWithinFuse,
  "surge device": coldVoltageWithinSurgeDevice,
  "legal ceiling": coldVoltageWithinLegalCeiling,
};

/** What may limit a string's voltage when it is cold. */
export type CeilingKey = keyof typeof ceilingConditions;

/** One rating that the cold string must not exceed. */
export interface Ceiling {
  readonly key: CeilingKey;
  readonly limit: Known<Volts>;
  /** Which one of several of a kind; it becomes part of the check's place. */
  readonly name?: string;
}

/** What one module gives at the design temperatures. */
export interface ModuleVoltages {
  /** Open-circuit voltage at the lowest temperature. */
  readonly coldOpenCircuitVoltage: Known<Volts>;
  /** Maximum-power-point voltage at the lowest operating temperature; left out, the upper end of the range is not judged. */
  readonly coldMppVoltage?: Known<Volts>;
  /** Maximum-power-point voltage at the highest cell temperature. */
  readonly hotMppVoltage: Known<Volts>;
  /** Open-circuit voltage at the highest cell temperature. */
  readonly hotOpenCircuitVoltage: Known<Volts>;
  /** Hot maximum-power-point voltage at the end of the module's life, where it is to be judged too. */
  readonly endOfLifeMppVoltage?: Known<Volts>;
}

/** What decides how many modules a string may have. */
export interface StringInput {
  readonly at?: string;
  readonly module: ModuleVoltages;
  readonly ceilings: readonly Ceiling[];
  readonly mppVoltageRange: Known<readonly [Volts, Volts]>;
  readonly startVoltage: Known<Volts>;
  /** Share of the hot voltage that drops in the cables. */
  readonly voltageDrop: Known<Input<"ratio">>;
  /** Margin on the lower end of the range, such as 1.1; left out, none. */
  readonly windowMargin?: Input<"ratio">;
}

/** One limit of a string's length, ready to be tried at any count. */
export interface StringLimit {
  readonly key: string;
  readonly end: "longest" | "shortest";
  readonly rule: ConditionDeclaration;
  /** What the limit lacks; empty where it can be tried. */
  readonly missing: readonly string[];
  readonly check: (count: number) => Check;
  /** The last count that the condition admits. */
  readonly turn: () => {
    readonly count: Quantity<"ratio"> | null;
    readonly met: Check | null;
    readonly beyond: Check | null;
  };
}

type InVolts = Side & { readonly unit: "V" };

interface Parts {
  readonly key: string;
  readonly at: string;
  readonly end: "longest" | "shortest";
  readonly condition: Condition<{ value: InVolts; relation: Relation; limit: InVolts }>;
  readonly perModule: Known<Voltage>;
  readonly limit: Known<Voltage>;
  readonly voltageOf: (count: Quantity<"ratio">) => Voltage;
}

function known<T, R>(value: Known<T>, use: (value: T) => R): Known<R> {
  return isMissing(value) ? value : use(value);
}

const volts = (value: Known<Volts>): Known<Voltage> => known(value, (input) => given(input, "V"));

function limitOf({ key, at, end, condition, perModule, limit, voltageOf }: Parts): StringLimit {
  const missing = [perModule, limit].flatMap((side) => (isMissing(side) ? side.missing : []));
  const check = (count: number): Check => {
    if (missing.length > 0) return condition({ missing, at });
    return condition({ value: voltageOf(whole(count)), limit: limit as Voltage, at });
  };
  const turn: StringLimit["turn"] = () => {
    if (isMissing(perModule) || isMissing(limit)) return { count: null, met: null, beyond: null };
    const guess = limit.number / perModule.number;
    const found = end === "longest" ? largestMet(check, guess) : smallestMet(check, guess);
    if (found.count === null) return { ...found, count: null };
    const explained = (end === "longest" ? longestString : shortestString)({
      voltageLimit: limit,
      moduleVoltage: perModule,
    });
    const agrees = explained.number === found.count;
    return { ...found, count: agrees ? explained : whole(found.count, "the last count that the condition admits") };
  };
  return { key, end, rule: condition.declaration, missing, check, turn };
}

/** Every limit of a string's length, the ceilings in the order in which they came. */
export function stringLimits(input: StringInput): readonly StringLimit[] {
  const { at = "", module, ceilings, mppVoltageRange, windowMargin } = input;
  const seriesOf = (moduleVoltage: Known<Voltage>) => (modules: Quantity<"ratio">) =>
    stringVoltage({ modules, moduleVoltage: moduleVoltage as Voltage });

  const cold = volts(module.coldOpenCircuitVoltage);
  const list: Parts[] = ceilings.map(({ key, limit, name }) => ({
    key: name === undefined ? key : `${key} ${name}`,
    at: placeIn(at, name),
    end: "longest",
    condition: ceilingConditions[key],
    perModule: cold,
    limit: volts(limit),
    voltageOf: seriesOf(cold),
  }));

  if (module.coldMppVoltage !== undefined) {
    const perModule = volts(module.coldMppVoltage);
    const limit = known(mppVoltageRange, ([, upper]) => given(upper, "V"));
    list.push({
      key: "upper end of the tracking range",
      at,
      end: "longest",
      condition: coldMppVoltageWithinRange,
      perModule,
      limit,
      voltageOf: seriesOf(perModule),
    });
  }

  const lower = known(mppVoltageRange, ([low]) => {
    const lowerMppVoltage = given(low, "V");
    return windowMargin === undefined ? lowerMppVoltage : lowerLimitWithMargin({ lowerMppVoltage, windowMargin });
  });
  const atInverter = (mppVoltage: Known<Volts>): Pick<Parts, "perModule" | "voltageOf"> => {
    const voltageOf = (modules: Quantity<"ratio">): Voltage =>
      mppVoltageAtInverter({
        modules,
        mppVoltage: mppVoltage as Volts,
        voltageDrop: input.voltageDrop as Input<"ratio">,
      });
    const lacks = [mppVoltage, input.voltageDrop].flatMap((side) => (isMissing(side) ? side.missing : []));
    return { perModule: lacks.length > 0 ? { missing: lacks } : voltageOf(whole(1)), voltageOf };
  };
  list.push({
    key: "lower end of the tracking range",
    at,
    end: "shortest",
    condition: hotMppVoltageWithinRange,
    limit: lower,
    ...atInverter(module.hotMppVoltage),
  });
  if (module.endOfLifeMppVoltage !== undefined) {
    list.push({
      key: "lower end of the tracking range, old",
      at,
      end: "shortest",
      condition: endOfLifeMppVoltageWithinRange,
      limit: lower,
      ...atInverter(module.endOfLifeMppVoltage),
    });
  }

  const hot = volts(module.hotOpenCircuitVoltage);
  list.push({
    key: "start voltage",
    at,
    end: "shortest",
    condition: hotVoltageReachesStart,
    perModule: hot,
    limit: volts(input.startVoltage),
    voltageOf: seriesOf(hot),
  });
  return list.map(limitOf);
}
