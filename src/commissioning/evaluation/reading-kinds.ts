import type { Unit } from "../../quantity/index.js";

/** What an installer reads or notes, with the unit that the sheet is filled in with, and what it belongs to. */
export const readingKinds = [
  { key: "irradiance", label: "irradiance in the plane of the modules", unit: "W/m²", of: "roof", signed: false },
  { key: "moduleTemperature", label: "temperature of the back of a module", unit: "°C", of: "roof", signed: true },
  {
    key: "cellTemperature",
    label: "cell temperature, where it is known otherwise",
    unit: "°C",
    of: "roof",
    signed: true,
  },
  {
    key: "openCircuitVoltage",
    label: "open-circuit voltage",
    unit: "V",
    of: "string",
    signed: true,
  },
  { key: "shortCircuitCurrent", label: "short-circuit current", unit: "A", of: "string", signed: false },
  { key: "operatingVoltage", label: "operating voltage", unit: "V", of: "string", signed: false },
  { key: "operatingCurrent", label: "operating current", unit: "A", of: "string", signed: false },
  {
    key: "insulationPositive",
    label: "insulation resistance, positive pole to earth",
    unit: "MΩ",
    of: "string",
    signed: false,
  },
  {
    key: "insulationNegative",
    label: "insulation resistance, negative pole to earth",
    unit: "MΩ",
    of: "string",
    signed: false,
  },
  {
    key: "insulationJoined",
    label: "insulation resistance, both poles joined to earth",
    unit: "MΩ",
    of: "string",
    signed: false,
  },
  { key: "acInsulation", label: "insulation resistance of the a.c. circuit", unit: "MΩ", of: "circuit", signed: false },
  {
    key: "continuity",
    label: "resistance of the protective or bonding conductor",
    unit: "Ω",
    of: "circuit",
    signed: false,
  },
  { key: "loopImpedance", label: "impedance of the fault loop", unit: "Ω", of: "circuit", signed: false },
  { key: "breakTime", label: "break time at the rated residual current", unit: "s", of: "circuit", signed: false },
  {
    key: "breakTimeAtFive",
    label: "break time at five times the rated residual current",
    unit: "s",
    of: "circuit",
    signed: false,
  },
  {
    key: "residualCurrent",
    label: "residual current at which the device opens",
    unit: "A",
    of: "circuit",
    signed: false,
  },
  { key: "voltageL1", label: "voltage L1 to N", unit: "V", of: "supply", signed: false },
  { key: "voltageL2", label: "voltage L2 to N", unit: "V", of: "supply", signed: false },
  { key: "voltageL3", label: "voltage L3 to N", unit: "V", of: "supply", signed: false },
  { key: "voltageNeutral", label: "voltage N to the protective conductor", unit: "V", of: "supply", signed: false },
  {
    key: "irradiation",
    label: "irradiation of the day in the plane of the modules",
    unit: "kWh/m²",
    of: "plant",
    signed: false,
  },
  { key: "energy", label: "energy of the day", unit: "kWh", of: "plant", signed: false },
] as const satisfies readonly ReadingKindShape[];

interface ReadingKindShape {
  readonly key: string;
  readonly label: string;
  readonly unit: Unit;
  readonly of: "roof" | "string" | "circuit" | "supply" | "plant";
  readonly signed: boolean;
}

/** One kind of reading. */
export type ReadingKind = (typeof readingKinds)[number];

/** Its key on the sheet. */
export type ReadingKey = ReadingKind["key"];

/** The kind of a reading by its key, or `undefined`. */
export function readingKind(key: string): ReadingKind | undefined {
  return readingKinds.find((kind) => kind.key === key);
}
