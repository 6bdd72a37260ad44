import { isMissing, type Known, missing } from "../../formula/index.js";
import { given, type Quantity } from "../../quantity/index.js";
import {
  arcFault,
  arrayPowerWithinInverter,
  dcAcRatio,
  dcSwitchChecks,
  earthFaultLimits,
  junctionChecks,
  moduleWithInverter,
  parallelCurrent,
  rapidShutdown,
  stringVoltage,
  summedCurrent,
} from "../../string/index.js";
import type { RecordedFinding } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { highestVoltage, powerOfArray, powerOfStrings } from "./array-formulas.js";
import { maximumCurrentOf } from "./currents.js";
import { arrayPlaceOf } from "./place.js";
import { finding, remind, type Sizing } from "./sizing.js";
import type { StringGroup } from "./strings.js";
import type { SizedTracker } from "./trackers.js";

type Inverter = StringGroup["inverter"];

/** U_OC at the coldest cell of one group's strings. */
export function coldVoltageOf({ array, modules }: StringGroup): Known<Quantity<"voltage">> {
  const moduleVoltage = array.voltages.coldOpenCircuitVoltage;
  return isMissing(moduleVoltage) ? moduleVoltage : stringVoltage({ modules, moduleVoltage });
}

function all<Q extends Quantity>(each: readonly Known<Q>[]): Known<readonly Q[]> {
  const lacks = each.flatMap((item) => (isMissing(item) ? item.missing : []));
  return lacks.length > 0 ? missing(...new Set(lacks)) : (each as readonly Q[]);
}

/** Highest voltage among several groups of strings. */
export function highestColdVoltage(groups: readonly StringGroup[]): Known<Quantity<"voltage">> {
  const voltages = all(groups.map(coldVoltageOf));
  return isMissing(voltages) ? voltages : highestVoltage({ voltages });
}

/** Maximum current of several groups together. */
export function maximumArrayCurrent({ plant }: Sizing, groups: readonly StringGroup[]): Known<Quantity<"current">> {
  const currents = all(
    groups.map(({ array, count }) => {
      const current = maximumCurrentOf(plant, array);
      return isMissing(current) || count === 1 ? current : parallelCurrent({ strings: count, current });
    }),
  );
  return isMissing(currents) ? currents : summedCurrent({ currents });
}

/** Power of the array of one inverter. */
export function arrayPowerOf(groups: readonly StringGroup[]): Quantity<"activePower"> {
  return powerOfArray({
    stringPowers: groups.map(({ array, modules, count }) =>
      powerOfStrings({ modules, strings: count, maximumPower: array.module.maximumPower }),
    ),
  });
}

/** Judges what the array of one inverter needs beside its strings: power, switch, earth faults, arcs, shutdown, class and height. */
export function sizeArraySafety(
  sizing: Sizing,
  inverter: Inverter,
  inverterPath: string,
  groups: readonly StringGroup[],
  trackers: readonly SizedTracker[],
  recorder: Recorder,
): readonly RecordedFinding[] {
  if (groups.length === 0) return [];
  const { plant, rules, checks } = sizing;
  const at = inverter.name;
  const arrayPower = arrayPowerOf(groups);
  const coldVoltage = highestColdVoltage(groups);
  const maximumCurrent = maximumArrayCurrent(sizing, groups);
  const place = arrayPlaceOf(plant);
  const functionalEarthing = inverter.functionalEarthing ?? missing(`${inverterPath}.functionalEarthing`);
  const ratedPower =
    inverter.activePower ??
    given(inverter.apparentPower.in("VA").text, "W", "rated apparent power at unity power factor");

  checks.push(
    arrayPowerWithinInverter({
      value: arrayPower,
      limit: finding(inverter.maximumDcPower, `${inverterPath}.maximumDcPower`),
      at,
    }),
  );
  const earth = earthFaultLimits({
    at,
    rules: rules.pv,
    arrayPower,
    coldVoltage,
    maximumCurrent,
    apparentPower: inverter.apparentPower,
    insulationMonitoring: inverter.insulationMonitoring ?? missing(`${inverterPath}.insulationMonitoring`),
    functionalEarthing,
  });
  checks.push(...earth.checks);
  checks.push(
    ...arcFault({ at, rules: rules.pv, place, coldVoltage, protection: arcProtection(inverter, inverterPath) }).checks,
  );
  checks.push(...switchChecks(sizing, inverter, inverterPath, groups, trackers, coldVoltage));
  checks.push(...shutdownChecks(sizing, inverter, inverterPath, groups));
  for (const group of oneOfEachType(groups)) {
    const type = plant.moduleTypes[group.array.roof.moduleType]!;
    checks.push(
      ...moduleWithInverter({
        at: `${at}/${group.array.roof.moduleType}`,
        protectionClass: finding(type.protectionClass, `${group.array.module.path}.protectionClass`),
        functionalEarthing,
        isolated: inverter.isolated ?? missing(`${inverterPath}.isolated`),
        altitude: finding(plant.site.altitude, "site.altitude"),
        maximumAltitude: finding(inverter.maximumAltitude, `${inverterPath}.maximumAltitude`),
      }),
    );
  }
  checks.push(...junctionsOf(sizing, groups));
  const row = (what: string, value: Known<Quantity> | null): RecordedFinding => ({
    subject: "protection",
    what,
    at,
    value: recorder.perhaps(value),
    checks: [],
  });
  return [
    row("array power at standard test conditions", arrayPower),
    row("array power to rated power", dcAcRatio({ arrayPower, ratedPower })),
    row("maximum array voltage", coldVoltage),
    row("array insulation resistance, at least", earth.insulationByPower),
    row("insulation resistance before connection, at least", earth.insulationBeforeConnection),
    row("continuous residual current, at most", earth.residualCurrent),
  ];
}

function arcProtection({ arcFaultProtection }: Inverter, path: string): Known<"in the inverter" | "none"> {
  if (arcFaultProtection === undefined) return missing(`${path}.arcFaultProtection`);
  return arcFaultProtection ? "in the inverter" : "none";
}

function switchChecks(
  sizing: Sizing,
  inverter: Inverter,
  path: string,
  groups: readonly StringGroup[],
  trackers: readonly SizedTracker[],
  coldVoltage: Known<Quantity<"voltage">>,
) {
  const { dcSwitch } = inverter;
  const strings = Math.max(...groups.map(({ count }) => count));
  const reverse = trackers.find(({ fuse }) => fuse !== null)?.fuse?.reverseCurrent;
  return dcSwitchChecks({
    at: inverter.name,
    strings,
    circuits: trackers.length,
    maximumCurrent: maximumArrayCurrent(sizing, groups.slice(0, 1)),
    ...(reverse === undefined ? {} : { reverseCurrent: reverse }),
    coldVoltage,
    dcSwitch:
      dcSwitch === undefined
        ? missing(`${path}.dcSwitch`)
        : typeof dcSwitch === "string"
          ? dcSwitch
          : {
              ratedCurrent: dcSwitch.ratedCurrent,
              ratedVoltage: dcSwitch.ratedVoltage,
              category: finding(dcSwitch.category, `${path}.dcSwitch.category`),
              poles: finding(dcSwitch.poles, `${path}.dcSwitch.poles`),
            },
  });
}

function shutdownChecks(sizing: Sizing, inverter: Inverter, path: string, groups: readonly StringGroup[]) {
  const { plant, rules } = sizing;
  const shutdown = rapidShutdown({
    at: inverter.name,
    rules: rules.pv,
    place: arrayPlaceOf(plant),
    coldOpenCircuitVoltage: groups[0]!.array.voltages.coldOpenCircuitVoltage,
    shutdown: finding(inverter.rapidShutdown, `${path}.rapidShutdown`),
    ...(inverter.modulesPerShutdownDevice === undefined ? {} : { modulesPerDevice: inverter.modulesPerShutdownDevice }),
    ...(plant.site.fireServiceSwitch === undefined ? {} : { fireServiceSwitch: plant.site.fireServiceSwitch }),
  });
  for (const text of shutdown.toDo) remind(sizing, { kind: "confirm", text: `${text}.`, about: inverter.name });
  return shutdown.checks;
}

function junctionsOf(sizing: Sizing, groups: readonly StringGroup[]) {
  const { junctions = [] } = sizing.plant;
  return junctions.flatMap((junction, index) => {
    const own = groups.filter((group) => group.junction === junction.name);
    if (own.length === 0) return [];
    const path = `junctions[${index}]`;
    const first = own[0]!;
    return junctionChecks({
      at: junction.name,
      kind: junction.kind,
      inputs: junction.inputs,
      strings: own.reduce((sum, { count }) => sum + count, 0),
      ratedCurrent: finding(junction.ratedCurrent, `${path}.ratedCurrent`),
      ratedVoltage: finding(junction.ratedVoltage, `${path}.ratedVoltage`),
      ...(junction.kind === "combiner"
        ? {
            derating: finding(junction.derating, `${path}.derating`),
            loadBreakSwitch: junction.loadBreakSwitch ?? missing(`${path}.loadBreakSwitch`),
          }
        : {}),
      maximumCurrent: maximumArrayCurrent(sizing, own),
      coldVoltage: highestColdVoltage(own),
      ...(junction.diodeVoltage
        ? {
            diodes: {
              diodeVoltage: junction.diodeVoltage,
              mppVoltage: stringVoltage({ modules: first.modules, moduleVoltage: first.array.module.mppVoltage }),
            },
          }
        : {}),
    }).checks;
  });
}

function oneOfEachType(groups: readonly StringGroup[]): readonly StringGroup[] {
  const seen = new Set<string>();
  return groups.filter(({ array: { roof } }) => !seen.has(roof.moduleType) && seen.add(roof.moduleType));
}
