import { type Check, type Choice, chooseAmong, type Known } from "../../formula/index.js";
import { InputError, type Input, type Quantity } from "../../quantity/index.js";
import { type RouteAmpacity, routeAmpacity } from "../ampacity/route-ampacity.js";
import { conductorOf } from "../ampacity/iec/ampacity.js";
import { parallelOf } from "../ampacity/parallel.js";
import { type LaidCable, sizesTabulated } from "../ampacity/sizes-tabulated.js";
import { iec60228_2004_sections } from "../size/iec-sections.js";
import { nfpa70_2017_sizes } from "../size/nfpa-sizes.js";
import { readSize, sizeName } from "../size/size.js";
import { isNfpa70 } from "../wiring.js";
import { sectionAtLeastMinimum, sizeTabulated, withinAmpacity } from "./conditions.js";
import { minimumSections } from "./minimum-sections.js";
import { parallelCheck } from "./nfpa-parallel.js";
import { nfpaTerminalChecks } from "./nfpa-terminal.js";
import { type Terminal, terminalChecks } from "./terminal.js";

/** What a cable must be able to do. */
export interface SizingRequest extends LaidCable {
  /** The route, which becomes part of the ids of its checks. */
  readonly at?: string;
  /** Currents that the cable must carry: design current, rated current of its device, and so on. */
  readonly carries: readonly { readonly what?: string; readonly current: Known<Input<"current">> }[];
  /** The current that heats the terminals. */
  readonly designCurrent?: Known<Input<"current">>;
  /** NFPA 70: maximum current of the circuit, before the margin for continuous current. */
  readonly continuousCurrent?: Known<Input<"current">>;
  readonly terminals?: readonly Terminal[];
  /** A stated size is verified; without one, the smallest is chosen that meets every check. */
  readonly size?: string | number | Quantity<"area">;
  /** Checks of other subjects for a size, such as voltage drop, fault loop and withstand. */
  readonly further?: (size: Quantity<"area">, ampacity: RouteAmpacity) => readonly Check[];
}

/** The size of a conductor, chosen or verified. */
export interface SizedConductor {
  /** `null` where no size meets every requirement. */
  readonly size: Quantity<"area"> | null;
  readonly name: string | null;
  /** `null` where the size was stated. */
  readonly choice: Choice | null;
  readonly checks: readonly Check[];
  /** What the next smaller size fails. */
  readonly fixedBy: readonly Check[];
  readonly ampacity: RouteAmpacity | null;
}

/**
 * Chooses the smallest conductor that meets every requirement of its route, or verifies a stated one.
 *
 * @throws InputError where the rules tabulate nothing for the cable on a stretch, or know no such size
 */
export function sizeConductor(request: SizingRequest): SizedConductor {
  const tabulated = sizesTabulated(request);
  const laid = remembering((size) => routeAmpacity({ ...request, size }));
  if (request.size !== undefined) return verified(request, readSize(request.size, request.wiring), tabulated, laid);
  refuseStated(request);
  if (tabulated.length === 0) throw nothingTabulated(request);
  const rule = (isNfpa70(request.wiring) ? nfpa70_2017_sizes : iec60228_2004_sections).declaration;
  const choice = chooseAmong(rule, tabulated, (size) => checksOf(request, size, laid(size)));
  const { chosen, checks, fixedBy } = choice;
  if (chosen === null) return Object.freeze({ size: null, name: null, choice, checks, fixedBy, ampacity: null });
  const size = chosen as Quantity<"area">;
  return Object.freeze({ size, name: sizeName(size), choice, checks, fixedBy, ampacity: laid(size) });
}

function verified(
  request: SizingRequest,
  size: Quantity<"area">,
  tabulated: readonly Quantity<"area">[],
  laid: (size: Quantity<"area">) => RouteAmpacity,
): SizedConductor {
  const name = sizeName(size);
  const base = { size, name, choice: null, fixedBy: [] };
  const names = tabulated.map(sizeName);
  const known = sizeTabulated({ value: name, limit: names, at: request.at ?? "" });
  if (known.verdict !== "met") return Object.freeze({ ...base, checks: [known], ampacity: null });
  const ampacity = laid(size);
  return Object.freeze({ ...base, checks: [known, ...checksOf(request, size, ampacity)], ampacity });
}

/** Works an ampacity out once a size, so that checks and result show the same working. */
function remembering(work: (size: Quantity<"area">) => RouteAmpacity): (size: Quantity<"area">) => RouteAmpacity {
  const known = new Map<string, RouteAmpacity>();
  return (size) => {
    const found = known.get(size.text) ?? work(size);
    known.set(size.text, found);
    return found;
  };
}

function checksOf(request: SizingRequest, size: Quantity<"area">, route: RouteAmpacity): readonly Check[] {
  const { at = "", cable, carries, terminals = [], wiring, designCurrent, further } = request;
  const metal = cable.kind === "PV" ? "copper" : conductorOf(cable);
  const governed = route.governedBy === null ? null : request.stretches[route.governedBy];
  const because =
    governed === undefined || governed === null ? {} : { because: `the stretch “${governed.place}” governs` };
  const checks = carries.map(({ what, current }) =>
    withinAmpacity({ value: current, limit: route.ampacity, at: [at, what].filter(Boolean).join("/"), ...because }),
  );
  if (isNfpa70(wiring)) {
    const { continuousCurrent } = request;
    if (parallelOf(cable).text !== "1") checks.push(parallelCheck(size, readSize("1/0 AWG", wiring), at));
    if (continuousCurrent !== undefined)
      checks.push(...nfpaTerminalChecks(at, cable, size, terminals, continuousCurrent));
  } else {
    const least = minimumSections({ conductor: metal, use: "power" });
    checks.push(sectionAtLeastMinimum({ value: size, limit: least, at }));
  }
  for (const terminal of terminals) checks.push(...terminalChecks(terminal, size, metal, route, designCurrent));
  if (further) checks.push(...further(size, route));
  return checks;
}

function refuseStated({ stretches }: SizingRequest): void {
  const at = stretches.findIndex(({ statedAmpacity }) => statedAmpacity !== undefined);
  if (at < 0) return;
  throw new InputError("conductor/size", [
    {
      path: `stretches[${at}].statedAmpacity`,
      code: "contradiction",
      message: "a stated ampacity holds for one size; state the size of the cable too",
      expected: "a stated size",
      received: "a size to choose",
    },
  ]);
}

function nothingTabulated({ at = "", wiring }: SizingRequest): InputError {
  return new InputError("conductor/size", [
    {
      path: at,
      code: "not-tabulated",
      message: `the tables of ${wiring} hold no size for the cable on all of its stretches`,
      expected: "a tabulated combination",
      received: at,
    },
  ]);
}
