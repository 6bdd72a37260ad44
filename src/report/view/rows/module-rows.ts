import type { PlantRecord } from "../../../plant/index.js";
import { filled, numbers, type Row } from "../cell.js";
import { fact } from "../description.js";

/** A roof and its module: the datasheet at standard test conditions, and the cell temperatures that the sizing designs for. */
export function moduleRows(record: PlantRecord, index: number): readonly Row[] {
  const roof = record.plant.roofs[index]!;
  const module = ["moduleTypes", roof.moduleType] as const;
  const temperatures = record.strings.find((string) => string.roof === roof.name)?.voltages ?? [];
  const cell = (at: string): Row["cells"] =>
    numbers(temperatures.find((voltages) => voltages.at === at)?.cellTemperature);
  return filled([
    { label: "module type", cells: fact(record, "roofs", index, "moduleType") },
    { label: "modules", cells: fact(record, "roofs", index, "modules") },
    { label: "mounting", cells: fact(record, "roofs", index, "mounting") },
    { label: "maximum power", symbol: "P_max", cells: fact(record, ...module, "maximumPower") },
    { label: "open-circuit voltage", symbol: "U_OC", cells: fact(record, ...module, "openCircuitVoltage") },
    { label: "short-circuit current", symbol: "I_SC", cells: fact(record, ...module, "shortCircuitCurrent") },
    { label: "voltage at maximum power", symbol: "U_MPP", cells: fact(record, ...module, "mppVoltage") },
    { label: "current at maximum power", symbol: "I_MPP", cells: fact(record, ...module, "mppCurrent") },
    { label: "coefficient of U_OC", cells: fact(record, ...module, "openCircuitVoltageCoefficient") },
    { label: "coldest cell", symbol: "T_c", cells: cell("coldest") },
    { label: "hottest cell", symbol: "T_c", cells: cell("hottest") },
  ]);
}
