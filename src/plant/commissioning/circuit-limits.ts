import { acInsulation, expectedContinuity, type ReadingKey, residualTests } from "../../commissioning/index.js";
import { conductorProperties } from "../../conductor/index.js";
import { type Known, missing } from "../../formula/index.js";
import { gridRuleSet, supplyBands, supplyFacts } from "../../grid/index.js";
import { measuredLoopLimit, measuredLoopLimitOfVerification } from "../../protection/index.js";
import { given, isInputError, type Quantity, type Unit } from "../../quantity/index.js";
import type { Plant } from "../description/plant-description.js";
import type { PlantRecord, RecordedNumber, RecordedRoute } from "../record/record.js";
import { cableOf } from "../sizing/cables.js";
import { circuitPlaces } from "./string-places.js";

/** A place of the sheet on the a.c. side with its ends, before anything is read. */
export interface PlaceWithEnds {
  readonly at: string;
  readonly reading: ReadingKey;
  readonly expected?: Known<Quantity>;
  readonly low?: Known<Quantity>;
  readonly high?: Known<Quantity>;
}

/** A number of the record as a quantity; its working stays in the record. */
function fromRecord<U extends Unit>({ value, unit, step }: RecordedNumber, due: U) {
  return given(`${value} ${unit}`, due, `sizing record, step ${step}`);
}

/** What each a.c. circuit and the supply must read. */
export function circuitLimits(plant: Plant, record: PlantRecord): readonly PlaceWithEnds[] {
  const circuits = circuitPlaces(record).flatMap(({ at, route }) => [
    insulationOf(plant, at, route),
    ...continuityOf(plant, record, at, route),
    ...loopOf(record, at),
    ...residualOf(plant, at, route),
  ]);
  return [...circuits, ...supplyOf(plant, record)];
}

function insulationOf(plant: Plant, at: string, { from }: RecordedRoute): PlaceWithEnds {
  const inverter = plant.inverters.find(({ name }) => name === from) ?? plant.inverters[0]!;
  return { at, reading: "acInsulation", low: acInsulation({ circuitVoltage: inverter.acVoltage }).minimum };
}

/** The protective conductor of the route from end to end, at 20 °C. */
function continuityOf(plant: Plant, record: PlantRecord, at: string, route: RecordedRoute): readonly PlaceWithEnds[] {
  const { protectiveConductor, path, length } = route;
  if (protectiveConductor === null) return [];
  const described = plant.routes[Number(/\d+/.exec(path)![0])]!;
  const { expected, high } = expectedContinuity([
    {
      resistancePerLength: resistanceOf(
        () =>
          conductorProperties({
            cable: cableOf(described),
            size: fromRecord(protectiveConductor, "mm²"),
            temperature: "20 °C",
            wiring: record.rules.wiring,
            direct: true,
            loaded: 2,
          }).resistancePerLength,
        path,
      ),
      length: fromRecord(length, "m"),
    },
  ]);
  return [{ at, reading: "continuity", expected, high }];
}

// A size that no table of resistances holds leaves the reading open.
function resistanceOf(
  find: () => Quantity<"resistancePerLength">,
  path: string,
): Known<Quantity<"resistancePerLength">> {
  try {
    return find();
  } catch (error) {
    if (isInputError(error)) return missing(`${path}.cable.protectiveConductor`);
    throw error;
  }
}

/** A loop is measured cold, so its limit lies below that of the design. */
function loopOf({ findings, rules }: PlantRecord, at: string): readonly PlaceWithEnds[] {
  const found = findings.find((finding) => finding.at === at && finding.what === "largest loop impedance");
  if (!found) return [];
  if (found.value === null || typeof found.value === "string")
    return [{ at, reading: "loopImpedance", high: missing("supply.loop") }];
  const largestLoop = fromRecord(found.value, "Ω");
  const british = rules.wiring.startsWith("BS 7671");
  return [
    {
      at,
      reading: "loopImpedance",
      high: british ? measuredLoopLimit({ largestLoop }) : measuredLoopLimitOfVerification({ largestLoop }),
    },
  ];
}

function residualOf(plant: Plant, at: string, { path }: RecordedRoute): readonly PlaceWithEnds[] {
  const { rcd } = plant.routes[Number(/\d+/.exec(path)![0])]!;
  if (rcd === undefined || rcd === "none") return [];
  const { ratedResidualCurrent, delayed } = rcd;
  if (ratedResidualCurrent === undefined || delayed === undefined) {
    const lacking = missing(`${path}.rcd.${ratedResidualCurrent === undefined ? "ratedResidualCurrent" : "delayed"}`);
    return (["breakTime", "breakTimeAtFive"] as const).map((reading) => ({ at, reading, high: lacking }));
  }
  const [half, once, five] = residualTests({ ratedResidualCurrent, delayed });
  const ends = ({ longest, shortest }: NonNullable<typeof once>): Pick<PlaceWithEnds, "low" | "high"> => ({
    ...(shortest ? { low: shortest } : {}),
    ...(longest ? { high: longest } : {}),
  });
  return [
    { at, reading: "breakTime", ...ends(once!) },
    { at, reading: "breakTimeAtFive", ...ends(five!) },
    { at, reading: "residualCurrent", low: half!.current, high: once!.current },
  ];
}

/** The voltages at the point of supply, within the band of the network. */
function supplyOf({ supply }: Plant, { rules }: PlantRecord): readonly PlaceWithEnds[] {
  const { lineToNeutral, phases } = supplyFacts(rules.supply);
  const [band] = supplyBands(gridRuleSet(rules.grid).key, rules.supply);
  const ends = band ? { low: band.lowest(lineToNeutral), high: band.highest(lineToNeutral) } : {};
  const lines = LINES.slice(0, phases === 3 ? 3 : rules.supply.includes("split-phase") ? 2 : 1);
  return [
    ...lines.map((reading) => ({ at: supply.at, reading, expected: lineToNeutral, ...ends })),
    { at: supply.at, reading: "voltageNeutral" },
  ];
}

const LINES = ["voltageL1", "voltageL2", "voltageL3"] as const;
