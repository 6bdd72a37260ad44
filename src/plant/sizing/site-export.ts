import { exportChecks, interfaceRelayChecks } from "../../grid/index.js";
import type { SizedAcRoute } from "./ac-routes.js";
import { combinedApparentPower } from "./ac-formulas.js";
import { gridRulesOf } from "./grid-connection.js";
import { isNecWiring } from "./nec.js";
import { finding, type Sizing } from "./sizing.js";

/** The service under full export with all loads off, and whether the inverters' own interface protection suffices. */
export function proveSiteExport(sizing: Sizing, routes: readonly SizedAcRoute[]): void {
  const { plant, checks } = sizing;
  // The service of NEC practice is judged by article 705 with its busbar.
  if (isNecWiring(sizing)) return;
  const rules = gridRulesOf(sizing);
  const at = plant.supply.at;
  const apparentPowers = plant.inverters.map(({ apparentPower }) => apparentPower);
  const plantPower = apparentPowers.length === 1 ? apparentPowers[0]! : combinedApparentPower({ apparentPowers });
  checks.push(
    ...exportChecks({
      rules,
      inverterCurrents: routes.filter(({ route }) => route.to === at).map(({ designCurrent }) => designCurrent),
      serviceDevice: finding(plant.supply.serviceDevice?.ratedCurrent, "supply.serviceDevice"),
      serviceAmpacity: finding(plant.supply.serviceAmpacity, "supply.serviceAmpacity"),
      plantPower,
      at,
    }),
    ...interfaceRelayChecks({ rules, plantPower, at }),
  );
}
