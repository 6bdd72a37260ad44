import { type Known, missing } from "../../formula/index.js";
import { equipmentGroundingConductor } from "../../earthing/index.js";
import { busbarConnection, type InterconnectionEdition } from "../../grid/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { SizedAcRoute } from "./ac-routes.js";
import { finding, type Sizing } from "./sizing.js";

/** Whether the wiring rules of a plant are an edition of NFPA 70. */
export function isNecWiring({ rules }: Sizing): boolean {
  return rules.wiring.startsWith("NFPA 70");
}

/** Equipment grounding conductor of an a.c. route by its device; the checks are those of 250.122. */
export function sizeEquipmentGrounding(
  sizing: Sizing,
  at: string,
  ratedCurrent: Known<Quantity<"current">>,
  circuitArea: Known<Quantity<"area">>,
) {
  const choice = equipmentGroundingConductor({
    at,
    size: "choose",
    ratedCurrent,
    material: "copper",
    circuitArea,
    enlarged: null,
  });
  sizing.checks.push(...choice.checks);
  return choice;
}

/** The busbar that the plant feeds, by the ways of 705.12: the first way that is met is taken. */
export function proveBusbar(sizing: Sizing, routes: readonly SizedAcRoute[]): void {
  const { plant, rules, checks } = sizing;
  const index = (plant.boards ?? []).findIndex(({ name }) => name === plant.supply.at);
  const board = plant.boards?.[index];
  const path = index < 0 ? `boards (${plant.supply.at})` : `boards[${index}]`;
  const feeding = routes.filter(({ route }) => route.to === plant.supply.at);
  const devices = feeding.map(({ breaker }) => breaker.rating);
  const result = busbarConnection({
    at: plant.supply.at,
    edition: rules.wiring as InterconnectionEdition,
    busbarRating: finding(board?.busbarRating, `${path}.busbarRating`),
    mainDevice: finding(board?.supplyDevice?.ratedCurrent, `${path}.supplyDevice`),
    sourceCurrents: feeding.map(({ designCurrent }) => designCurrent),
    sourceDevices: devices.every((device) => device !== null)
      ? devices
      : missing(`routes[${feeding[0]?.index ?? 0}].breaker.rating`),
    loadDevices: board?.loadDevices ? [board.loadDevices] : missing(`${path}.loadDevices`),
    sourcePlace: finding(board?.sourcePlace, `${path}.sourcePlace`),
  });
  checks.push(...result.checks);
}
