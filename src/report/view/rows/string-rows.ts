import type { PlantRecord, RecordedString } from "../../../plant/index.js";
import { type Cell, filled, numbers, type Row, words } from "../cell.js";
import { countedFact, wasChosen } from "../description.js";

/** A string: its length between its limits, its voltages and its current. */
export function stringRows(record: PlantRecord, string: RecordedString): readonly Row[] {
  const { modules, count, shortest, longest, limitedBy, coldVoltage, hotVoltage, maximumCurrent, voltages } = string;
  const chosen = wasChosen(record, "strings");
  const path = string.path ?? "strings";
  const standard = voltages.find(({ at }) => at === "standard test conditions");
  const limiting = [limitedBy.shortest, limitedBy.longest].filter((id) => id !== null);
  return filled([
    { label: "modules in series", cells: [countedFact(modules, `${path}.modules`)], chosen },
    { label: "equal strings", cells: count > 1 ? [countedFact(count, `${path}.count`)] : [], chosen },
    { label: "length allowed, modules", cells: fromTo(numbers(shortest), numbers(longest)), fixedBy: limiting },
    { label: "open circuit, coldest cell", symbol: "U_OC", cells: numbers(coldVoltage) },
    { label: "open circuit, 25 °C cell", symbol: "U_OC", cells: numbers(standard?.openCircuit) },
    { label: "maximum power, 25 °C cell", symbol: "U_MPP", cells: numbers(standard?.mpp) },
    { label: "maximum power, hottest cell", symbol: "U_MPP", cells: numbers(hotVoltage) },
    { label: "largest current", symbol: "I_SC,max", cells: numbers(maximumCurrent) },
  ]);
}

function fromTo(low: readonly Cell[], high: readonly Cell[]): readonly Cell[] {
  if (low.length > 0 && high.length > 0) return [...low, words("to"), ...high];
  if (low.length > 0) return [words("from"), ...low];
  return high.length > 0 ? [words("up to"), ...high] : [];
}
