import type { Input, Quantity } from "../../quantity/index.js";
import { given, InputError } from "../../quantity/index.js";
import { bestAllocation, type PhaseNumber } from "./best-allocation.js";
import { phaseLoad, phaseUnbalance } from "./phase-load.js";

/** A single-phase inverter that is to be put on a phase. */
export interface SinglePhaseInverter {
  readonly name: string;
  readonly apparentPower: Input<"apparentPower">;
}

/** The phases of a three-phase supply, or its pairs of lines. */
export const phaseNames = ["L1", "L2", "L3"] as const;
/** A phase by its name. */
export type PhaseName = (typeof phaseNames)[number];

/** Which inverter stands on which phase. */
export interface PhaseAllocation {
  readonly phases: Readonly<Record<PhaseName, readonly string[]>>;
  readonly loads: Readonly<Record<PhaseName, Quantity<"apparentPower">>>;
  readonly unbalance: Quantity<"apparentPower">;
}

/**
 * The allocation of single-phase inverters to three phases with the least unbalance; three-phase inverters do not change it.
 *
 * Exact for up to nine different ratings.
 *
 * @throws InputError where there are more than nine different ratings, or two inverters bear one name
 * @example
 * ```ts
 * import { allocatePhases } from "pv-to-grid/grid";
 * const inverters = ["4 kVA", "3 kVA", "3 kVA", "2 kVA", "2 kVA"].map((apparentPower, index) => ({ name: `INV${index + 1}`, apparentPower }));
 * allocatePhases(inverters).unbalance.text; // "1000"
 * ```
 */
export function allocatePhases(inverters: readonly SinglePhaseInverter[]): PhaseAllocation {
  refuseSameNames(inverters);
  const powers = inverters.map(({ apparentPower }) => given(apparentPower, "VA"));
  return allocationOf(inverters, powers, bestAllocation(powers));
}

/** The loads and the unbalance of an allocation that is already made. */
export function allocatedPhases(
  inverters: readonly (SinglePhaseInverter & { readonly phase: PhaseName })[],
): PhaseAllocation {
  refuseSameNames(inverters);
  const powers = inverters.map(({ apparentPower }) => given(apparentPower, "VA"));
  return allocationOf(
    inverters,
    powers,
    inverters.map(({ phase }) => phaseNames.indexOf(phase) as PhaseNumber),
  );
}

function allocationOf(
  inverters: readonly SinglePhaseInverter[],
  powers: readonly Quantity<"apparentPower">[],
  on: readonly PhaseNumber[],
): PhaseAllocation {
  const of = <T>(items: readonly T[], phase: number): readonly T[] => items.filter((_, index) => on[index] === phase);
  const load = (phase: number): Quantity<"apparentPower"> => {
    const here = of(powers, phase);
    return phaseLoad({ apparentPowers: here.length === 0 ? ["0 VA"] : here });
  };
  const names = (phase: number): readonly string[] => Object.freeze(of(inverters, phase).map(({ name }) => name));
  const loads = { L1: load(0), L2: load(1), L3: load(2) };
  return Object.freeze({
    phases: Object.freeze({ L1: names(0), L2: names(1), L3: names(2) }),
    loads: Object.freeze(loads),
    unbalance: phaseUnbalance({ phaseLoads: Object.values(loads) }),
  });
}

function refuseSameNames(inverters: readonly { readonly name: string }[]): void {
  const names = inverters.map(({ name }) => name);
  const twice = names.findIndex((name, index) => names.indexOf(name) !== index);
  if (twice < 0) return;
  const path = `inverters[${twice}].name`;
  throw new InputError("allocate phases", [
    {
      path,
      code: "contradiction",
      message: `two inverters are called ${names[twice]}`,
      expected: "one name each",
      received: names[twice]!,
    },
  ]);
}
