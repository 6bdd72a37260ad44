import type { PlantRecord, RecordedTracker } from "../../../plant/index.js";
import { type Cell, filled, numbers, type Row, words } from "../cell.js";
import { countedFact, fact } from "../description.js";

/** An inverter: its ratings, and what each of its trackers carries. */
export function inverterRows(record: PlantRecord, index: number): readonly Row[] {
  const inverter = record.plant.inverters[index]!;
  const own = (...keys: readonly (string | number)[]): readonly Cell[] => fact(record, "inverters", index, ...keys);
  const trackers = record.trackers.filter((tracker) => tracker.inverter === inverter.name);
  return filled([
    { label: "rated apparent power", symbol: "S", cells: own("apparentPower") },
    { label: "output voltage", cells: own("acVoltage") },
    { label: "largest output current", symbol: "I_max", cells: own("maximumAcCurrent") },
    { label: "largest d.c. voltage", symbol: "U_DC,max", cells: own("maximumDcVoltage") },
    { label: "tracking range", symbol: "U_MPP", cells: own("mppVoltageRange") },
    { label: "start voltage", cells: own("startVoltage") },
    { label: "d.c. switch", cells: own("dcSwitch") },
    { label: "largest a.c. device allowed", cells: own("maximumAcDevice") },
    ...trackers.flatMap((tracker) => trackerRows(record, index, tracker)),
  ]);
}

function trackerRows(record: PlantRecord, inverter: number, tracker: RecordedTracker): readonly Row[] {
  const { inputs, inputsUsed, inputsToSeal, mppCurrent, maximumCurrent } = tracker;
  const at = record.plant.inverters[inverter]!.trackers.findIndex(({ name }) => name === tracker.tracker);
  const path = `inverters[${inverter}].trackers[${at}]`;
  const own = (key: string): readonly Cell[] => fact(record, "inverters", inverter, "trackers", at, key);
  const against = (value: readonly Cell[], limit: readonly Cell[]): readonly Cell[] =>
    value.length > 0 && limit.length > 0 ? [...value, words("of"), ...limit] : value;
  const used = [countedFact(inputsUsed, "strings"), words("of"), countedFact(inputs, `${path}.inputs`)];
  const seal = inputsToSeal > 0 ? [words(`– seal ${inputsToSeal}`)] : [];
  return [
    { label: `tracker ${tracker.tracker}: inputs used`, cells: [...used, ...seal] },
    {
      label: `tracker ${tracker.tracker}: current at maximum power`,
      symbol: "I_MPP",
      cells: against(numbers(mppCurrent), own("maximumInputCurrent")),
    },
    {
      label: `tracker ${tracker.tracker}: largest current`,
      symbol: "I_SC,max",
      cells: against(numbers(maximumCurrent), own("shortCircuitRating")),
    },
  ];
}
