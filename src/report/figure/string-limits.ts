import type { RecordedLimit, RecordedNumber, RecordedString } from "../../plant/index.js";

/** Limits of one voltage, drawn as one rung. */
export interface Rung {
  readonly volts: number;
  readonly voltage: RecordedNumber;
  readonly names: readonly string[];
  readonly end: RecordedLimit["end"];
  /** Whether safety stands behind it, not only the yield. */
  readonly required: boolean;
}

const NAMES: Readonly<Record<string, string>> = {
  inverter: "inverter, largest",
  module: "module, system",
  "upper end of the tracking range": "MPP range, upper end",
  "lower end of the tracking range": "MPP range, lower end",
  "lower end of the tracking range, old": "MPP range, aged",
  "legal ceiling": "rules, ceiling",
};

/** Limits as rungs, highest first; limits of equal voltage share one. */
export function rungsOf({ limits }: RecordedString): readonly Rung[] {
  const rungs = new Map<string, Rung>();
  for (const { name, end, force, voltage } of limits) {
    const key = `${voltage.value} ${end}`;
    const known = rungs.get(key);
    const named = NAMES[name] ?? name.replace(/^connector .*/, "connectors");
    const names = known ? (known.names.includes(named) ? known.names : [...known.names, named]) : [named];
    rungs.set(key, {
      volts: Number(voltage.value),
      voltage,
      names,
      end,
      required: force === "requirement" || known?.required === true,
    });
  }
  return [...rungs.values()].sort((a, b) => b.volts - a.volts);
}

export interface StringVoltages {
  /** Open circuit at the coldest cell. */
  readonly cold: RecordedNumber;
  /** Maximum power at the hottest cell. */
  readonly hot: RecordedNumber;
}

/** Highest and lowest voltage of a string, where both are known. */
export function extremes({ coldVoltage, hotVoltage }: RecordedString): StringVoltages | null {
  return coldVoltage && hotVoltage ? { cold: coldVoltage, hot: hotVoltage } : null;
}

/** Room above the limit that comes first, as a share of it; a limit farther up is named at the edge. */
const ROOM_ABOVE = 1.15;

/** Top of the voltage scale of a string: a little above its highest voltage and the first limit that it would meet. */
export function topVolts(string: RecordedString): number {
  const ceilings = rungsOf(string).filter(({ end, required }) => end === "longest" && required);
  const first = Math.min(...ceilings.map(({ volts }) => volts));
  const yields = rungsOf(string)
    .filter(({ required }) => !required)
    .map(({ volts }) => volts);
  const drawn = [Number(string.coldVoltage?.value ?? 0), ...yields, ...(ceilings.length > 0 ? [first] : [])];
  return Math.max(...drawn, 1) * ROOM_ABOVE;
}

export function temperatureOf({ voltages }: RecordedString, at: string): RecordedNumber | null {
  return voltages.find((found) => found.at === at)?.cellTemperature ?? null;
}
