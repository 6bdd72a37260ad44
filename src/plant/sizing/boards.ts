import { proveBoard } from "../../protection/index.js";
import type { SizedAcRoute } from "./ac-routes.js";
import { finding, type Sizing } from "./sizing.js";

/** Proves every board that the plant feeds, with what supply and inverters bring to it together (IEC practice). */
export function proveBoards(
  sizing: Sizing,
  routes: readonly SizedAcRoute[],
  currentOf: (route: SizedAcRoute) => NonNullable<Parameters<typeof proveBoard>[0]["sourceCurrents"][number]>,
): void {
  const { plant, rules, checks } = sizing;
  if (rules.wiring.startsWith("NFPA 70")) return;
  const named = plant.boards ?? [];
  const fed = new Set(routes.map(({ route }) => route.to));
  for (const name of fed) {
    const index = named.findIndex((board) => board.name === name);
    const board = named[index];
    const path = index < 0 ? `boards (${name})` : `boards[${index}]`;
    checks.push(
      ...proveBoard({
        at: name,
        busbarRating: finding(board?.busbarRating, `${path}.busbarRating`),
        supplyDevice: finding(board?.supplyDevice?.ratedCurrent, `${path}.supplyDevice`),
        mainSwitch: finding(board?.mainSwitch, `${path}.mainSwitch`),
        sourceCurrents: routes.filter(({ route }) => route.to === name).map(currentOf),
      }),
    );
  }
}
