import { fromClosedList } from "../rules/closed-list.js";

/** Nominal supply systems. */
export const supplySystems = [
  {
    key: "230/400 V 50 Hz",
    label: "230/400 V, 50 Hz, three phases and neutral",
    edition: "IEC 60038:2009",
    grade: "memory",
  },
  {
    key: "120/240 V 60 Hz split-phase",
    label: "120/240 V, 60 Hz, single phase with a neutral at its middle",
    edition: "ANSI C84.1:2020",
    grade: "memory",
  },
  {
    key: "208Y/120 V 60 Hz",
    label: "208Y/120 V, 60 Hz, three phases and neutral",
    edition: "ANSI C84.1:2020",
    grade: "memory",
  },
  {
    key: "480Y/277 V 60 Hz",
    label: "480Y/277 V, 60 Hz, three phases and neutral",
    edition: "ANSI C84.1:2020",
    grade: "memory",
  },
] as const;

/** Identity of a nominal supply system. */
export type SupplySystem = (typeof supplySystems)[number]["key"];

/**
 * The supply system of a name.
 *
 * @throws InputError that lists the known systems where the name is another
 */
export function supplySystem(name: string, path = "supply"): (typeof supplySystems)[number] {
  return fromClosedList(supplySystems, name, path, "supply system");
}

/** Ways in which a plant is connected to its supply. */
export const connections = [
  {
    key: "three-phase",
    label: "three line conductors; voltages are line to line, resistance and reactance those of one line conductor",
    edition: "IEC 60050-601:1985",
    grade: "common-practice",
  },
  {
    key: "single-phase",
    label: "line and neutral; voltage is line to neutral, resistance and reactance those of the loop",
    edition: "IEC 60050-601:1985",
    grade: "common-practice",
  },
  {
    key: "split-phase",
    label: "both lines of a split-phase supply; voltage is line to line, resistance and reactance those of the loop",
    edition: "IEC 60050-601:1985",
    grade: "common-practice",
  },
] as const;

/** Way in which a plant is connected to its supply. */
export type Connection = (typeof connections)[number]["key"];
