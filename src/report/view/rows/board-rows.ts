import type { PlantRecord } from "../../../plant/index.js";
import { type Cell, filled, numbers, percent, type Row, words } from "../cell.js";
import { fact } from "../description.js";

/** A board: its busbar and what feeds and loads it. */
export function boardRows(record: PlantRecord, index: number): readonly Row[] {
  const own = (key: string): readonly Cell[] => fact(record, "boards", index, key);
  return filled([
    { label: "busbar", cells: own("busbarRating") },
    { label: "main switch", cells: own("mainSwitch") },
    { label: "device on the supply side", cells: own("supplyDevice") },
    { label: "devices of the loads, sum", cells: own("loadDevices") },
  ]);
}

/** The connection point: the supply as it arrives, and the voltage from there to each inverter. */
export function connectionRows(record: PlantRecord): readonly Row[] {
  const own = (...keys: readonly string[]): readonly Cell[] => fact(record, "supply", ...keys);
  const { voltageProfile } = record.grid;
  return filled([
    { label: "arrives at", cells: own("at") },
    { label: "earthing system", cells: own("earthing") },
    { label: "line to neutral", symbol: "U_0", cells: own("lineToNeutral") },
    { label: "frequency", symbol: "f", cells: own("frequency") },
    { label: "largest fault current", symbol: "I_k,max", cells: own("largestFaultCurrent") },
    { label: "service device", cells: own("serviceDevice") },
    ...voltageProfile.map(({ inverter, name, total, totalShare, voltage }) => ({
      label: `voltage at ${name}, made by ${inverter}`,
      symbol: "U",
      cells: [...numbers(voltage), ...riseOf(numbers(total), percent(totalShare))],
    })),
  ]);
}

function riseOf(total: readonly Cell[], share: readonly Cell[]): readonly Cell[] {
  if (total.length === 0) return [];
  return [words("– rise"), ...total, ...(share.length > 0 ? [words("="), ...share] : [])];
}
