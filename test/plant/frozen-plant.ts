import type { PlantDescription, PlantRecord } from "../../src/index.js";

type Loose = Record<string, unknown>;

/** A description in which every choice is replaced by what was chosen, so that a change of an input changes no choice. */
export function frozenPlant(record: PlantRecord): PlantDescription {
  const plant = structuredClone(record.plant) as unknown as { routes: Loose[]; roofs: Loose[]; electrode?: Loose };
  const nec = record.rules.wiring.startsWith("NFPA 70");
  for (const [index, route] of plant.routes.entries()) {
    const found = record.routes.find(({ path }) => path === `routes[${index}]`);
    const cable = route["cable"] as Loose;
    if (found?.sizeName) cable["size"] = nec ? found.sizeName : found.sizeName.replace("²", "2");
    if (found?.protectiveConductor && !nec) cable["protectiveConductor"] = `${found.protectiveConductor.value} mm2`;
    if (found?.breaker) route["breaker"] = { ...(route["breaker"] as Loose), rating: `${found.breaker.value} A` };
  }
  const section = (what: string, at: string): string | undefined => {
    const value = record.findings.find((finding) => finding.what.startsWith(what) && finding.at === at)?.value;
    return typeof value === "object" && value !== null ? `${value.value} mm2` : undefined;
  };
  for (const roof of plant.roofs)
    roof["bondingConductor"] = section("bonding conductor", roof["name"] as string) ?? "choose";
  if (plant.electrode) {
    const at = record.plant.supply.at;
    plant.electrode["earthingConductor"] = section("earthing conductor", at) ?? "choose";
    plant.electrode["mainBonding"] = section("main bonding", at) ?? "choose";
  }
  return plant as unknown as PlantDescription;
}
