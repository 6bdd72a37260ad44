import { type Check, condition, isMissing, type Known, type Missing, table } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { largestMet, whole } from "../count.js";
import { isNec, type PvRules } from "../rules.js";
import { longestString } from "../voltage/module-counts.js";
import { stringVoltage } from "../voltage/string-voltage.js";
import type { ArrayPlace } from "../voltage/voltage-ceilings.js";

/**
 * Voltage that rapid shutdown leaves on conductors, thirty seconds after its start. @function
 *
 * @example
 * ```ts
 * import { rapidShutdownVoltages } from "pv-to-grid/string";
 * rapidShutdownVoltages({ shutdownSide: "inside the array boundary", rules: "NFPA 70:2020" }).text; // "80"
 * ```
 */
export const rapidShutdownVoltages = /* @__PURE__ */ table({
  id: "string/rapid-shutdown-voltages",
  about: "voltage that rapid shutdown leaves on conductors, thirty seconds after its start",
  rows: { name: "shutdownSide", names: "in the first column" },
  rowRule: "exact",
  columns: { rules: ["NFPA 70:2017", "NFPA 70:2020", "NFPA 70:2023"] },
  gives: { unit: "V", symbol: "U_sd" },
  source: [{ in: "NFPA 70:2020", clause: "690.12(B)", grade: "copied", seen: "California Electrical Code:2022, 690.12(A) and (B)" }],
  cells: `
    outside the array boundary  30  30  30
    inside the array boundary   80  80  80
  `,
  cellGrades: {
    memory: [
      "outside the array boundary | NFPA 70:2017", "inside the array boundary | NFPA 70:2017",
      "outside the array boundary | NFPA 70:2023", "inside the array boundary | NFPA 70:2023",
    ],
  },
  note: "the boundary is 305 mm from the array, or 1 m from the entry into the building; inside it a listed hazard control system, or no exposed wiring and no conductive parts nearby, serves too",
});

/** Does the voltage that one shutdown device leaves inside the array stay within what is allowed? @function */
export const shutdownVoltageWithinLimit = /* @__PURE__ */ condition({
  id: "string/shutdown-voltage-within-limit",
  asks: "Does the voltage that one shutdown device leaves inside the array stay within what is allowed?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage, at the lowest temperature, of the modules behind one device" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_sd", about: "voltage allowed inside the array boundary" },
  source: [{ in: "NFPA 70:2020", clause: "690.12(B)(2)", grade: "copied", seen: "California Electrical Code:2022, 690.12(A) and (B)" }],
  worse: { "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});

/** Is there a rapid shutdown where the rules ask for one? @function */
export const rapidShutdownPresent = /* @__PURE__ */ condition({
  id: "string/rapid-shutdown-present",
  asks: "Is there a rapid shutdown where the rules ask for one?",
  force: "requirement",
  value: { named: true, about: "rapid shutdown of the plant" },
  relation: "one of",
  limit: { named: true, about: "ways that serve" },
  source: [{ in: "NFPA 70:2020", clause: "690.12", grade: "copied", seen: "California Electrical Code:2022, 690.12(A) and (B)" }],
});

/** Ways of rapid shutdown. */
export const shutdownWays = [
  {
    key: "module devices",
    label: "devices at the modules that lower the voltage inside the array",
    edition: "NFPA 70:2017",
    grade: "copied",
  },
  {
    key: "listed hazard control",
    label: "a system listed for hazard control",
    edition: "NFPA 70:2017",
    grade: "copied",
  },
  {
    key: "no exposed parts",
    label: "no exposed wiring or conductive parts near the array",
    edition: "NFPA 70:2017",
    grade: "copied",
  },
] as const;

/** A way of rapid shutdown. */
export type ShutdownWay = (typeof shutdownWays)[number]["key"];

/** What rapid shutdown depends on. */
export interface RapidShutdownInput {
  readonly at?: string;
  readonly rules: PvRules;
  readonly place: Known<ArrayPlace>;
  /** Of one module at the lowest temperature. */
  readonly coldOpenCircuitVoltage: Known<Input<"voltage">>;
  readonly shutdown: Known<ShutdownWay | "none">;
  /** Modules behind one device, where it is stated. */
  readonly modulesPerDevice?: number;
  /** Whether the operator, insurer or fire service asks for a switch; left out, nobody said so. */
  readonly fireServiceSwitch?: boolean | Missing;
}

/** What rapid shutdown asks for. */
export interface RapidShutdown {
  /** `null` while it is not known where the array stands. */
  readonly required: boolean | null;
  /** Most modules behind one shutdown device; `null` where none is asked for or not even one fits. */
  readonly modulesPerDevice: Quantity<"ratio"> | null;
  readonly checks: readonly Check[];
  /** What the installer must do. */
  readonly toDo: readonly string[];
}

/**
 * Rapid shutdown by NEC 690.12: whether it is asked for, whether it is there, and how many modules one device may have.
 *
 * @example
 * ```ts
 * import { rapidShutdown } from "pv-to-grid/string";
 * const asked = rapidShutdown({ rules: "NFPA 70:2020", place: "dwelling", coldOpenCircuitVoltage: "43.2 V", shutdown: "module devices" });
 * asked.required; // true
 * asked.modulesPerDevice?.text; // "1"
 * ```
 */
export function rapidShutdown(input: RapidShutdownInput): RapidShutdown {
  const { at = "", rules, place, shutdown, fireServiceSwitch } = input;
  const fire = fireServiceSwitch === true ? ["Fit and label a switch for the fire service where it is asked for"] : [];
  if (!isNec(rules) || place === "ground")
    return Object.freeze({ required: false, modulesPerDevice: null, checks: [], toDo: Object.freeze(fire) });
  const ways = shutdownWays.map(({ key }) => key);
  if (isMissing(place)) {
    const open = rapidShutdownPresent({ missing: place.missing, at });
    return Object.freeze({
      required: null,
      modulesPerDevice: null,
      checks: Object.freeze([open]),
      toDo: Object.freeze(fire),
    });
  }
  const present = rapidShutdownPresent({ value: shutdown, limit: ways, at });
  const perDevice = shutdown === "module devices" ? deviceChecks(input, rules) : { most: null, checks: [] };
  const toDo = [...fire, "Label the rapid-shutdown switch with what it de-energises and within what limits"];
  return Object.freeze({
    required: true,
    modulesPerDevice: perDevice.most,
    checks: Object.freeze([present, ...perDevice.checks]),
    toDo: Object.freeze(toDo),
  });
}

function deviceChecks(
  { at = "", coldOpenCircuitVoltage, modulesPerDevice }: RapidShutdownInput,
  rules: "NFPA 70:2017" | "NFPA 70:2020" | "NFPA 70:2023",
): { readonly most: Quantity<"ratio"> | null; readonly checks: readonly Check[] } {
  if (isMissing(coldOpenCircuitVoltage))
    return { most: null, checks: [shutdownVoltageWithinLimit({ missing: coldOpenCircuitVoltage.missing, at })] };
  const moduleVoltage = given(coldOpenCircuitVoltage, "V");
  const limit = rapidShutdownVoltages({ shutdownSide: "inside the array boundary", rules });
  const check = (count: number): Check =>
    shutdownVoltageWithinLimit({ value: stringVoltage({ modules: whole(count), moduleVoltage }), limit, at });
  const turn = largestMet(check, limit.number / moduleVoltage.number);
  const most = turn.count === null ? null : longestString({ voltageLimit: limit, moduleVoltage });
  return { most, checks: [modulesPerDevice === undefined ? (turn.met ?? turn.beyond!) : check(modulesPerDevice)] };
}
