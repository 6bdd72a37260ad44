import { type Check, isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import {
  activePowerAtPowerFactor,
  type GridRules,
  gridRuleSet,
  gridVoltageChecks,
  gridVoltageProfile,
  interfaceSettings,
  sustainedOvervoltageOf,
  type NetworkStretch,
  reactivePowerOfShare,
  type VoltageProfile,
} from "../../grid/index.js";
import { isQuantity, type Quantity } from "../../quantity/index.js";
import type { RecordedVoltageLimit, RecordedVoltagePoint } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { combinedApparentPower, impedanceInSeries, impedanceOfStretch, impedanceThereAndBack } from "./ac-formulas.js";
import { connectionOf, pathToSupply, type PlantInverter } from "./ac-path.js";
import type { SizedAcRoute } from "./ac-routes.js";
import type { FeedFactor } from "./power-factor.js";
import { finding, type Sizing } from "./sizing.js";

type Ohms = Known<Quantity<"resistance">>;

/** The connection rules of the plant; throws an error that lists the known where the name is another. */
export function gridRulesOf({ rules }: Sizing): GridRules {
  return gridRuleSet(rules.grid, "rules.grid").key;
}

/** What the voltage of one inverter's connection came to. */
export interface SizedGridVoltage {
  readonly nominalVoltage: Quantity<"voltage">;
  readonly points: readonly RecordedVoltagePoint[];
  readonly limits: readonly RecordedVoltageLimit[];
}

/** Voltage from the source of the grid to one inverter, judged against the connection rules. */
export function sizeGridVoltage(
  sizing: Sizing,
  inverter: PlantInverter,
  routes: readonly SizedAcRoute[],
  feed: FeedFactor,
  recorder: Recorder,
): SizedGridVoltage {
  const { plant, rules } = sizing;
  const path = pathToSupply(plant, inverter)
    .map((index) => routes.find((route) => route.index === index)!)
    .reverse();
  const powers = plant.inverters
    .filter((other) => connectionOf(other) === connectionOf(inverter))
    .map(({ apparentPower }) => apparentPower);
  const { network } = plant.supply;
  const profile = gridVoltageProfile({
    supply: rules.supply,
    connection: connectionOf(inverter),
    voltageWithoutPlant: finding(network?.voltageWithoutPlant, "supply.network.voltageWithoutPlant"),
    stretches: [
      {
        name: plant.supply.at,
        part: "network",
        resistance: thereAndBack(finding(network?.r, "supply.network.r"), inverter),
        reactance: thereAndBack(finding(network?.x, "supply.network.x"), inverter),
        ...infeed(powers, feed),
        otherPlants: othersOf(network?.otherPlants, feed),
      },
      ...path.map((route) => stretchOf(route, inverter, feed)),
    ],
  });
  const gridRules = gridRulesOf(sizing);
  const sustainedOvervoltage = sustainedOvervoltageOf(
    interfaceSettings(gridRules, rules.supply),
    connectionOf(inverter),
  );
  const checks = gridVoltageChecks({
    rules: gridRules,
    supply: rules.supply,
    profile,
    at: inverter.name,
    // Where the rules leave the setting to the operator there is nothing to judge.
    ...(isMissing(sustainedOvervoltage) ? {} : { sustainedOvervoltage }),
  });
  sizing.checks.push(...checks);
  return {
    nominalVoltage: profile.nominalVoltage,
    points: recordedPoints(inverter, profile, path, recorder),
    limits: checks.flatMap((check) => limitOf(inverter, check, recorder)),
  };
}

function infeed(powers: readonly Quantity<"apparentPower">[], { powerFactor, reactiveFactor }: FeedFactor) {
  const apparentPower = powers.length === 1 ? powers[0]! : combinedApparentPower({ apparentPowers: powers });
  return {
    activePower: activePowerAtPowerFactor({ apparentPower, powerFactor }),
    reactivePower: reactivePowerOfShare({ apparentPower, reactiveShare: reactiveFactor }),
  };
}

function othersOf(
  otherPlants: Quantity<"apparentPower"> | undefined,
  feed: FeedFactor,
): NonNullable<NetworkStretch["otherPlants"]> {
  return otherPlants ? infeed([otherPlants], feed) : missing("supply.network.otherPlants");
}

function thereAndBack(impedance: Ohms, inverter: PlantInverter): Ohms {
  return connectionOf(inverter) === "three-phase"
    ? impedance
    : whenKnown({ impedance }, (known) => impedanceThereAndBack(known));
}

function stretchOf(
  { route, inverters, change }: SizedAcRoute,
  inverter: PlantInverter,
  feed: FeedFactor,
): NetworkStretch {
  const series = (of: "resistancePerLength" | "reactancePerLength"): Ohms => {
    if (!change) return missing(`routes from ${route.from}`);
    const parts = change.parts.map(({ properties }, index): Ohms => {
      if (isMissing(properties)) return properties;
      const impedancePerLength = properties[of];
      return impedancePerLength === null
        ? missing(`routes from ${route.from}`)
        : impedanceOfStretch({ impedancePerLength, length: route.stretches[index]!.length });
    });
    const lacks = parts.flatMap((part) => (isMissing(part) ? part.missing : []));
    return lacks.length > 0
      ? missing(...lacks)
      : impedanceInSeries({ impedances: parts as readonly Quantity<"resistance">[] });
  };
  const alike = inverters.filter((other) => connectionOf(other) === connectionOf(inverter));
  return {
    name: route.from,
    part: "installation",
    resistance: thereAndBack(series("resistancePerLength"), inverter),
    reactance: thereAndBack(series("reactancePerLength"), inverter),
    ...infeed(
      alike.map(({ apparentPower }) => apparentPower),
      feed,
    ),
    otherPlants: { activePower: "0 W", reactivePower: "0 var" },
  };
}

// Limits of a voltage belong into the profile; limits of a change of voltage do not.
function limitOf(inverter: PlantInverter, { id, rule, limit }: Check, recorder: Recorder): RecordedVoltageLimit[] {
  const isVoltage = "unit" in rule.limit && rule.limit.unit === "V" && !rule.id.includes("change");
  if (!isVoltage || !isQuantity(limit)) return [];
  return [{ inverter: inverter.name, check: id, name: rule.limit.about, voltage: recorder.number(limit) }];
}

function recordedPoints(
  inverter: PlantInverter,
  { points }: VoltageProfile,
  path: readonly SizedAcRoute[],
  recorder: Recorder,
): readonly RecordedVoltagePoint[] {
  return points.map(({ name, part, change, total, totalShare, voltage }, index) => ({
    inverter: inverter.name,
    name,
    part,
    change: recorder.perhaps(change),
    length: path[index - 1]?.recorded.length ?? null,
    total: recorder.perhaps(total),
    totalShare: recorder.perhaps(totalShare),
    voltage: recorder.perhaps(voltage),
  }));
}
