import { isMissing, type Known } from "../../formula/index.js";
import {
  type DesignVoltages,
  designVoltages,
  hotCellTemperature,
  type Module,
  type ModuleAt,
  moduleAt,
  readModule,
} from "../../module/index.js";
import type { Plant } from "../description/plant-description.js";
import { finding, type Sizing } from "./sizing.js";

/** A roof with its module type at the design temperatures. */
export interface ArrayDesign {
  readonly roof: Plant["roofs"][number];
  readonly path: string;
  readonly module: Module;
  readonly voltages: DesignVoltages;
  /** One module at the coldest, standard and hottest cell temperature. */
  readonly atCold: ModuleAt;
  readonly atStandard: ModuleAt;
  readonly atHot: ModuleAt;
}

/** Designs every roof: its module type is read, and translated to the coldest and hottest cells of the site. */
export function designArrays({ plant }: Sizing): ReadonlyMap<string, ArrayDesign> {
  const { site, moduleTypes, roofs } = plant;
  const modules = new Map<string, Module>();
  const designs = new Map<string, ArrayDesign>();
  for (const [index, roof] of roofs.entries()) {
    const path = `roofs[${index}]`;
    let module = modules.get(roof.moduleType);
    if (!module) {
      module = readModule(moduleTypes[roof.moduleType]!, `moduleTypes.${roof.moduleType}`);
      modules.set(roof.moduleType, module);
    }
    const coldest = finding(site.coldest, "site.coldest");
    const hottestCell: Known<NonNullable<typeof roof.hottestCell>> =
      roof.hottestCell ??
      hotCellTemperature({
        hottest: finding(site.hottest, "site.hottest"),
        mounting: finding(roof.mounting, `${path}.mounting`),
      });
    const voltages = designVoltages(module, { coldest, hottestCell });
    designs.set(roof.name, {
      roof,
      path,
      module,
      voltages,
      atCold: moduleAt(module, voltages.coldCellTemperature),
      atStandard: moduleAt(module, "25 °C"),
      atHot: moduleAt(module, voltages.hotCellTemperature),
    });
  }
  return designs;
}

/** A quantity that is there, or `undefined`. */
export function present<T>(value: Known<T>): T | undefined {
  return isMissing(value) ? undefined : value;
}
