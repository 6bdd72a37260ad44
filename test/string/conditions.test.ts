import { describe, expect, it } from "vitest";
import * as string from "../../src/string/index.js";

type Numbers = (sides: { value: string; limit: string }) => { verdict: string };

// Each relation on its limit and one last digit on either side: below, on, above.
const below = ["met", "not met", "not met"];
const atMost = ["met", "met", "not met"];
const atLeast = ["not met", "met", "met"];
const above = ["not met", "not met", "met"];
const equal = ["not met", "met", "not met"];

const numeric: readonly (readonly [string, unknown, string, readonly string[]])[] = [
  ["inverter voltage", string.coldVoltageWithinInverter, "V", atMost],
  ["module voltage", string.coldVoltageWithinModule, "V", atMost],
  ["connector voltage", string.coldVoltageWithinConnector, "V", atMost],
  ["cable voltage", string.coldVoltageWithinCable, "V", atMost],
  ["switch voltage", string.coldVoltageWithinSwitch, "V", atMost],
  ["fuse voltage", string.coldVoltageWithinFuse, "V", atMost],
  ["surge device voltage", string.coldVoltageWithinSurgeDevice, "V", atMost],
  ["legal ceiling", string.coldVoltageWithinLegalCeiling, "V", atMost],
  ["junction voltage", string.coldVoltageWithinJunction, "V", atMost],
  ["upper end of the range", string.coldMppVoltageWithinRange, "V", atMost],
  ["lower end of the range", string.hotMppVoltageWithinRange, "V", atLeast],
  ["lower end, old", string.endOfLifeMppVoltageWithinRange, "V", atLeast],
  ["start voltage", string.hotVoltageReachesStart, "V", atLeast],
  ["tracker current", string.mppCurrentWithinTracker, "A", atMost],
  ["tracker short circuit", string.shortCircuitCurrentWithinTracker, "A", atMost],
  ["input", string.currentWithinInput, "A", atMost],
  ["inputs", string.stringsWithinInputs, "", atMost],
  ["joint", string.currentWithinJoint, "A", atMost],
  ["declared sum", string.declaredCurrentPlausible, "A", atMost],
  ["one length", string.stringsOfOneLength, "", equal],
  ["parallel voltages", string.parallelVoltagesAgree, "V", atLeast],
  ["terminal ampacity", string.terminalAmpacitySuffices, "A", atMost],
  ["corrected ampacity", string.correctedAmpacitySuffices, "A", atMost],
  ["device protects", string.deviceProtectsConductor, "A", atMost],
  ["small conductor", string.deviceWithinSmallConductorLimit, "A", atMost],
  ["standard rating", string.ampacityWithinStandardRating, "A", atMost],
  ["reverse current, module", string.reverseCurrentWithinModule, "A", atMost],
  ["reverse current, part", string.reverseCurrentWithinPart, "A", atMost],
  ["fuse above lower bound", string.fuseAboveLowerBound, "A", above],
  ["device reaches lower bound", string.deviceReachesLowerBound, "A", atLeast],
  ["fuse below upper bound", string.fuseBelowUpperBound, "A", below],
  ["fuse within module", string.fuseWithinModuleRating, "A", atMost],
  ["fuse in summer", string.fuseCarriesSummer, "A", atLeast],
  ["hot fuse", string.fuseCarriesWhenHot, "A", atLeast],
  ["fuse ambient", string.fuseAmbientWithinReference, "°C", atMost],
  ["group device", string.groupDeviceAboveLowerBound, "A", above],
  ["switch current", string.switchCarriesCurrent, "A", atMost],
  ["switch reverse", string.switchBreaksReverseCurrent, "A", atMost],
  ["switch poles", string.switchOpensAllPoles, "", atLeast],
  ["engineering size", string.largeEnoughForEngineering, "kW", atLeast],
  ["shutdown voltage", string.shutdownVoltageWithinLimit, "V", atMost],
  ["arc-fault voltage", string.belowArcFaultVoltage, "V", below],
  ["altitude", string.altitudeWithinRating, "m", atMost],
  ["junction inputs", string.junctionHasInputs, "", atMost],
  ["junction current", string.junctionCarriesCurrent, "A", atMost],
  ["unit voltage", string.unitBearsVoltage, "V", atMost],
  ["unit current", string.unitBearsCurrent, "A", atMost],
  ["unit power", string.unitTakesPower, "W", atMost],
  ["units reach the voltage", string.unitsReachStringVoltage, "V", atLeast],
  ["regulated power", string.regulatedPowerWithinLimit, "W", atMost],
  ["unit count", string.unitCountWithinMaker, "", atMost],
  ["regulated voltage", string.regulatedVoltageWithinCeiling, "V", atMost],
  ["array power", string.arrayPowerWithinInverter, "W", atMost],
  ["ground-fault voltage", string.withinGroundFaultVoltage, "V", atMost],
  ["ground-fault current", string.withinGroundFaultCurrent, "A", atMost],
];

describe("conditions, one last digit below the limit, on it and above it", () => {
  it.each(numeric)("%s", (_, condition, unit, verdicts) => {
    const check = condition as Numbers;
    expect(
      ["49.9", "50", "50.1"].map((value) => check({ value: `${value} ${unit}`, limit: `50 ${unit}` }).verdict),
    ).toEqual(verdicts);
  });
});

const named = [
  string.joiningAllowed,
  string.stringsOfOneType,
  string.oneOrientationOnTracker,
  string.oneOrientationInString,
  string.oneOrientationRequired,
  string.dcSwitchPresent,
  string.switchCategoryFits,
  string.engineeredDesignStamped,
  string.rapidShutdownPresent,
  string.arcFaultProtectionPresent,
  string.moduleOfClassTwo,
  string.isolatedForFunctionalEarth,
  string.combinerHasLoadBreakSwitch,
  string.insulationMeasured,
  string.groundFaultProtectionPresent,
];

describe("conditions on a closed list", () => {
  it.each(named.map((condition) => [condition.id, condition] as const))("%s", (_, condition) => {
    expect(condition({ value: "a", limit: ["a", "b"] }).verdict).toBe("met");
    expect(condition({ value: "c", limit: ["a", "b"] }).verdict).toBe("not met");
    expect(condition({ missing: ["somewhere"] })).toMatchObject({ verdict: "open", missing: ["somewhere"] });
  });
});

it("every condition of the subject is tried here", () => {
  const all = Object.values(string).flatMap((value) =>
    "kind" in Object(value) && (value as { kind: string }).kind === "condition" ? [(value as { id: string }).id] : [],
  );
  const tried = [...numeric.map(([, condition]) => (condition as { id: string }).id), ...named.map(({ id }) => id)];
  expect(all.filter((id) => !tried.includes(id))).toEqual([]);
});
