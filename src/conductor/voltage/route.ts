import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import { conductorLoss, totalLoss } from "../loss/loss.js";
import type { ConductorProperties, Raceway } from "../resistance/conductor-properties.js";
import { conductorProperties } from "../resistance/properties.js";
import type { Arrangement } from "../stretch.js";
import type { Listed, WiringRules } from "../wiring.js";
import { directCurrentDrop, threePhaseDrop, twoConductorDrop } from "./drop.js";
import { routeDrop, voltageChangeShare } from "./share.js";

/** Kinds of circuit, by their loaded conductors. */
export const circuitKinds = [
  { key: "d.c.", label: "direct current, two conductors", edition: "none", grade: "common-practice" },
  { key: "single-phase", label: "single phase, line and neutral", edition: "none", grade: "common-practice" },
  { key: "split-phase", label: "split phase, line to line, balanced", edition: "none", grade: "common-practice" },
  { key: "three-phase", label: "three phases, balanced", edition: "none", grade: "common-practice" },
] as const satisfies readonly Listed[];
/** A kind of circuit: direct current, single-phase or three-phase. */
export type CircuitKind = (typeof circuitKinds)[number]["key"];

/** Loaded conductors of a circuit. */
export function loadedConductors(circuit: CircuitKind): 2 | 3 {
  return circuit === "three-phase" ? 3 : 2;
}

/** One part of a route: a stretch of one cable with one current. */
export interface RoutePart {
  readonly length: Input<"length">;
  readonly cable: Cable;
  readonly size: string | number | Quantity<"area">;
  readonly current: Known<Input<"current">>;
  /** Temperature of the conductor: its limit for the safe value, its temperature at the load for the real one. */
  readonly temperature: Known<Input<"temperature">>;
  readonly arrangement?: Arrangement;
  /** NFPA 70: what the raceway is made of; steel where it is left out. */
  readonly raceway?: Raceway;
  /** Alternating current only. */
  readonly powerFactor?: Known<Input<"ratio">>;
  /** Alternating current only; positive where reactive power flows the same way as active power. */
  readonly reactiveFactor?: Known<Input<"ratio">>;
}

/** Voltage change of one part of a route. */
export interface PartChange {
  readonly change: Known<Quantity<"voltage">>;
  readonly loss: Known<Quantity<"activePower">>;
  readonly properties: Known<ConductorProperties>;
}

/** Voltage change and loss along a route of parts in series. */
export interface RouteVoltageChange {
  /** Between the two conductors; line to line for three phases. */
  readonly change: Known<Quantity<"voltage">>;
  /** Of the nominal voltage. */
  readonly share: Known<Quantity<"ratio">>;
  readonly loss: Known<Quantity<"activePower">>;
  readonly parts: readonly PartChange[];
}

/** A route of parts whose voltage changes add up. */
export interface RouteRequest {
  readonly circuit: CircuitKind;
  /** Between the two conductors; line to line for three phases. */
  readonly nominalVoltage: Known<Input<"voltage">>;
  readonly frequency?: "50 Hz" | "60 Hz";
  readonly wiring: WiringRules;
  readonly parts: readonly RoutePart[];
}

/**
 * Voltage change and loss along a route, in the direction in which active power flows: the fall towards a load, the rise from the
 * far end back to an inverter that feeds in.
 *
 * @throws InputError where an input is outside its domain or the resistance of a size is not tabulated
 */
export function routeVoltageChange({
  circuit,
  nominalVoltage,
  wiring,
  parts,
  frequency,
}: RouteRequest): RouteVoltageChange {
  const each = parts.map((part) => partChange(part, circuit, wiring, frequency));
  const change = together(
    each.map((part) => part.change),
    (drops) => routeDrop({ drops }),
  );
  const share = whenKnown({ change, nominalVoltage }, (known) =>
    voltageChangeShare({ voltageChange: known.change, nominalVoltage: known.nominalVoltage }),
  );
  const loss = together(
    each.map((part) => part.loss),
    (losses) => totalLoss({ losses }),
  );
  return Object.freeze({ change, share, loss, parts: Object.freeze(each) });
}

function together<Q extends Quantity, R>(each: readonly Known<Q>[], use: (all: readonly Q[]) => R): Known<R> {
  const open = each.filter(isMissing).flatMap((one) => one.missing);
  return open.length > 0 ? missing(...new Set(open)) : use(each as readonly Q[]);
}

function partChange(
  part: RoutePart,
  circuit: CircuitKind,
  wiring: WiringRules,
  frequency: RouteRequest["frequency"],
): PartChange {
  const { length, cable, size, current, temperature, arrangement, raceway } = part;
  const direct = circuit === "d.c.";
  const properties = whenKnown({ temperature }, (known) =>
    conductorProperties({
      cable,
      size,
      temperature: known.temperature,
      wiring,
      direct,
      loaded: loadedConductors(circuit),
      ...(arrangement && { arrangement }),
      ...(raceway && { raceway }),
      ...(frequency && { frequency }),
    }),
  );
  const powerFactor = direct ? 1 : (part.powerFactor ?? missing("powerFactor"));
  const reactiveFactor = direct ? 0 : (part.reactiveFactor ?? missing("reactiveFactor"));
  const change = whenKnown({ properties, current, powerFactor, reactiveFactor }, (known) => {
    const { resistancePerLength, reactancePerLength } = known.properties;
    const common = { length, current: known.current, resistancePerLength };
    if (reactancePerLength === null) return directCurrentDrop(common);
    const factors = { reactancePerLength, powerFactor: known.powerFactor, reactiveFactor: known.reactiveFactor };
    return circuit === "three-phase"
      ? threePhaseDrop({ ...common, ...factors })
      : twoConductorDrop({ ...common, ...factors });
  });
  const loss = whenKnown({ properties, current }, (known) =>
    conductorLoss({
      length,
      current: known.current,
      resistancePerLength: known.properties.resistancePerLength,
      loadedConductors: loadedConductors(circuit),
    }),
  );
  return Object.freeze({ change, loss, properties });
}
