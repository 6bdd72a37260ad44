import { type Check, isMissing, type Known, missing } from "../../formula/index.js";
import {
  loadedConductors,
  type RouteAmpacity,
  routeVoltageChange,
  type RouteVoltageChange,
  sizeConductor,
  type SizedConductor,
  smallConductorLimit,
  stretchTemperature,
} from "../../conductor/index.js";
import { chooseProtectiveConductor } from "../../earthing/index.js";
import { nominalVoltageOf } from "../../grid/index.js";
import {
  type BreakerChoice,
  type BreakerQuestion,
  chooseBreaker,
  continuousCurrentWithinRating,
  designCurrentWithinCorrectedRating,
  designCurrentWithinRating,
  inverterOutputCurrent,
  ratingWithinLargestDevice,
} from "../../protection/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { RecordedRoute } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";
import { combinedCurrent } from "./ac-formulas.js";
import { type AcRoute, connectionOf, type PlantInverter } from "./ac-path.js";
import { cableName, cableOf, stretchesOf, terminalsOf } from "./cables.js";
import { totalLength } from "./lengths.js";
import { isNecWiring, sizeEquipmentGrounding } from "./nec.js";
import { acRiseWithinOwnersLimit } from "./owners-limits.js";
import type { FeedFactor } from "./power-factor.js";
import { finding, noteChoice, type Sizing } from "./sizing.js";

/** A sized a.c. route, with what the voltage profile and the fault loop need of it. */
export interface SizedAcRoute extends AcRoute {
  readonly sized: SizedConductor;
  readonly change: RouteVoltageChange | null;
  readonly designCurrent: Quantity<"current">;
  readonly breaker: BreakerChoice;
  readonly protectiveConductor: Quantity<"area"> | null;
  readonly recorded: RecordedRoute;
}

/** Largest output current of one inverter. */
export function outputCurrentOf({ plant }: Sizing, inverter: PlantInverter): Quantity<"current"> {
  const path = `inverters[${plant.inverters.indexOf(inverter)}]`;
  const { phases, apparentPower, acVoltage } = inverter;
  const maximumAcCurrent = finding(inverter.maximumAcCurrent, `${path}.maximumAcCurrent`);
  return inverterOutputCurrent({ phases: phases === 3 ? 3 : 1, apparentPower, acVoltage, maximumAcCurrent });
}

// Conditions on the device itself; a larger cable does not change them, so they do not choose it.
function isOfTheDevice({ rule }: Check): boolean {
  const own = [
    designCurrentWithinRating,
    designCurrentWithinCorrectedRating,
    continuousCurrentWithinRating,
    ratingWithinLargestDevice,
  ];
  return own.some(({ id }) => id === rule.id);
}

/** Sizes one a.c. route: its device, cable, protective conductor and voltage change, to the smallest set that fits together. */
export function sizeAcRoute(sizing: Sizing, acRoute: AcRoute, feed: FeedFactor, recorder: Recorder): SizedAcRoute {
  const { plant, rules, checks } = sizing;
  const { route, index, inverters } = acRoute;
  const path = `routes[${index}]`;
  const at = `${route.from}-${route.to}`;
  const cable = cableOf(route);
  const stretches = stretchesOf(route, path, 0);
  const connection = connectionOf(inverters[0]!);
  const loaded = loadedConductors(connection);
  const currents = inverters.map((inverter) => outputCurrentOf(sizing, inverter));
  const designCurrent = currents.length === 1 ? currents[0]! : combinedCurrent({ currents });
  const stated = route.cable.size;
  const size = stated === undefined || stated === "choose" ? {} : { size: stated };
  const laid = { at, cable, stretches, loaded, wiring: rules.wiring, ...size };

  const question = questionOf(sizing, acRoute, designCurrent);
  // A stated cable bounds the device from above; a cable still to be chosen follows the device.
  const first = "size" in size ? sizeConductor({ ...laid, carries: [] }).ampacity?.ampacity : undefined;
  const chosen = deviceFor(question, first);
  noteChoice(sizing, `${path}.breaker.rating`, route.breaker?.rating);
  noteChoice(sizing, `${path}.cable.size`, stated);

  const changeFor = (area: Quantity<"area">, ampacity: RouteAmpacity): RouteVoltageChange =>
    routeVoltageChange({
      circuit: connection,
      nominalVoltage: nominalVoltageOf(rules.supply, connection),
      wiring: rules.wiring,
      ...(rules.supply.includes("60 Hz") ? { frequency: "60 Hz" as const } : { frequency: "50 Hz" as const }),
      parts: stretches.map((stretch, part) => ({
        length: stretch.length,
        cable,
        size: area,
        current: designCurrent,
        temperature: stretchTemperature(ampacity.stretches[part]!, designCurrent),
        ...feed,
      })),
    });
  const smallLimit = (area: Quantity<"area">) => {
    const limit = isNecWiring(sizing) ? smallConductorLimit(area, cable.conductor ?? "copper") : null;
    return limit === null ? {} : { smallConductorLimit: limit };
  };
  const further = (area: Quantity<"area">, ampacity: RouteAmpacity): readonly Check[] => {
    const device = chosen.rating
      ? chooseBreaker({
          ...question,
          rating: chosen.rating,
          ampacity: ampacity.ampacity,
          ...smallLimit(area),
        }).checks.filter((check) => !isOfTheDevice(check))
      : [];
    const limit = plant.limits?.acRise;
    return limit ? [...device, acRiseWithinOwnersLimit({ value: changeFor(area, ampacity).share, limit, at })] : device;
  };
  const sized = sizeConductor({
    ...laid,
    carries: [{ what: "design current", current: designCurrent }],
    designCurrent,
    continuousCurrent: designCurrent,
    terminals: inverters
      .filter(({ name }) => name === route.from)
      .map((inverter) => terminalsOf(inverter, `inverters[${plant.inverters.indexOf(inverter)}]`, "ac", at)),
    further,
  });
  checks.push(...chosen.checks.filter(isOfTheDevice), ...sized.checks);

  const protectiveConductor = protectiveConductorOf(sizing, acRoute, sized, chosen.rating);
  const change = sized.size && sized.ampacity ? changeFor(sized.size, sized.ampacity) : null;
  const lengths = route.stretches.map(({ length }) => length);
  return {
    ...acRoute,
    sized,
    change,
    designCurrent,
    breaker: chosen,
    protectiveConductor,
    recorded: {
      path,
      from: route.from,
      to: route.to,
      kind: "a.c.",
      cable: cableName(route),
      size: recorder.perhaps(sized.size),
      sizeName: sized.name,
      protectiveConductor: recorder.perhaps(protectiveConductor),
      fixedBy: sized.fixedBy.map(({ id }) => id),
      length: recorder.number(totalLength({ lengths })),
      circuits: 1,
      current: recorder.number(designCurrent),
      ampacity: recorder.perhaps(sized.ampacity?.ampacity),
      voltageChange: recorder.perhaps(change?.change),
      voltageChangeShare: recorder.perhaps(change?.share),
      loss: recorder.perhaps(change?.loss),
      breaker: recorder.perhaps(chosen.rating),
      breakerCharacteristic: route.breaker?.characteristic ?? null,
      stretches: route.stretches.map(({ place, length }, part) => ({
        place,
        length: recorder.number(length),
        ampacity: recorder.perhaps(sized.ampacity?.stretches[part]?.ampacity),
        change: recorder.perhaps(change?.parts[part]?.change),
      })),
    },
  };
}

function questionOf(
  { plant, rules }: Sizing,
  { route, index, inverters }: AcRoute,
  designCurrent: Quantity<"current">,
): BreakerQuestion {
  const path = `routes[${index}].breaker`;
  const { breaker } = route;
  const [inverter] = inverters as readonly [PlantInverter, ...PlantInverter[]];
  const inverterPath = `inverters[${plant.inverters.indexOf(inverter)}]`;
  return {
    at: `${route.from}-${route.to}`,
    wiring: rules.wiring,
    kind: breaker?.kind ?? (rules.wiring.startsWith("NFPA 70") ? "NEC breaker" : "miniature breaker"),
    rating: breaker?.rating ?? "choose",
    designCurrent,
    largestDevice: finding(inverter.maximumAcDevice, `${inverterPath}.maximumAcDevice`),
    ambientFactor: finding(breaker?.ambientFactor, `${path}.ambientFactor`),
    neighboursLoaded: finding(breaker?.neighboursLoaded, `${path}.neighboursLoaded`),
  };
}

/** The device; beyond the ratings of miniature breakers, a moulded-case one where the kind was left open. */
function deviceFor(question: BreakerQuestion, ampacity: Known<Quantity<"current">> | undefined): BreakerChoice {
  const bounded = ampacity === undefined || isMissing(ampacity) ? question : { ...question, ampacity };
  const choice = chooseBreaker(bounded);
  if (choice.rating || question.kind !== "miniature breaker") return choice;
  const larger = chooseBreaker({ ...bounded, kind: "moulded-case breaker" });
  return larger.rating ? larger : choice;
}

function protectiveConductorOf(
  sizing: Sizing,
  { route, index }: AcRoute,
  sized: SizedConductor,
  device: Quantity<"current"> | null,
): Quantity<"area"> | null {
  const { checks } = sizing;
  const stated = route.cable.protectiveConductor;
  if (!sized.size) return null;
  if (isNecWiring(sizing))
    return sizeEquipmentGrounding(
      sizing,
      `${route.from}-${route.to}`,
      device ?? missing(`routes[${index}].breaker.rating`),
      sized.size,
    ).size;
  noteChoice(sizing, `routes[${index}].cable.protectiveConductor`, stated);
  const choice = chooseProtectiveConductor({
    at: `${route.from}-${route.to}`,
    section: stated === undefined || typeof stated === "string" ? "choose" : stated,
    placing: route.cable.kind === "multi-core" ? "in cable" : "separate, unprotected",
    material: route.cable.conductor ?? "copper",
    method: "by table",
    lineSection: sized.size,
    factors: null,
    fault: { missing: ["supply.loop"] },
  });
  checks.push(...choice.checks);
  return choice.section;
}
