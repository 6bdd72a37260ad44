import type { Force } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { SourceKey } from "../../source/index.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import { ansiC84_1_2020_serviceVoltage } from "./bands/ansi-c84-1.js";
import { as60038_2012_highestVoltage, as60038_2012_lowestVoltage } from "./bands/as60038.js";
import { en50160_2010_highestVoltage, en50160_2010_lowestVoltage } from "./bands/en50160.js";
import { esqcr_2002_highestVoltage, esqcr_2002_lowestVoltage } from "./bands/esqcr.js";
import { newZealand_2010_highestVoltage, newZealand_2010_lowestVoltage } from "./bands/new-zealand-before-2025.js";
import { newZealand_2025_highestVoltage, newZealand_2025_lowestVoltage } from "./bands/new-zealand.js";
import { rd1955_2000_highestVoltage, rd1955_2000_lowestVoltage } from "./bands/spain.js";
import type { SupplySystem } from "./supply-systems.js";

/** The band that a document keeps the supply voltage in. */
export interface SupplyBand {
  readonly key: string;
  readonly document: SourceKey;
  readonly label: string;
  readonly force: Force;
  /** Lowest voltage of the band at a nominal one. */
  readonly lowest: (nominalVoltage: Quantity<"voltage">) => Quantity<"voltage">;
  /** Highest voltage of the band at a nominal one. */
  readonly highest: (nominalVoltage: Quantity<"voltage">) => Quantity<"voltage">;
}

const en50160: SupplyBand = {
  key: "EN 50160",
  document: "EN 50160:2010",
  label: "±10 %, 95 % of the 10-minute means of a week",
  force: "requirement",
  lowest: (nominalVoltage) => en50160_2010_lowestVoltage({ nominalVoltage }),
  highest: (nominalVoltage) => en50160_2010_highestVoltage({ nominalVoltage }),
};
const greatBritain: SupplyBand = {
  key: "Great Britain",
  document: "ESQCR:2002",
  label: "+10 %, −6 %",
  force: "requirement",
  lowest: (nominalVoltage) => esqcr_2002_lowestVoltage({ nominalVoltage }),
  highest: (nominalVoltage) => esqcr_2002_highestVoltage({ nominalVoltage }),
};
const australia: SupplyBand = {
  key: "Australia",
  document: "AS 60038:2012",
  label: "+10 %, −6 %",
  force: "requirement",
  lowest: (nominalVoltage) => as60038_2012_lowestVoltage({ nominalVoltage }),
  highest: (nominalVoltage) => as60038_2012_highestVoltage({ nominalVoltage }),
};
const newZealand: SupplyBand = {
  key: "New Zealand",
  document: "NZ low-voltage range:2025",
  label: "±10 %, from 13 November 2025",
  force: "requirement",
  lowest: (nominalVoltage) => newZealand_2025_lowestVoltage({ nominalVoltage }),
  highest: (nominalVoltage) => newZealand_2025_highestVoltage({ nominalVoltage }),
};
const newZealandOlder: SupplyBand = {
  key: "New Zealand before 2025",
  document: "NZ low-voltage range:2010",
  label: "±6 %, before 13 November 2025",
  force: "recommendation",
  lowest: (nominalVoltage) => newZealand_2010_lowestVoltage({ nominalVoltage }),
  highest: (nominalVoltage) => newZealand_2010_highestVoltage({ nominalVoltage }),
};
const spain: SupplyBand = {
  key: "Spain",
  document: "RD 1955/2000:2000",
  label: "±7 %, narrower than EN 50160",
  force: "requirement",
  lowest: (nominalVoltage) => rd1955_2000_lowestVoltage({ nominalVoltage }),
  highest: (nominalVoltage) => rd1955_2000_highestVoltage({ nominalVoltage }),
};
const rangeA: SupplyBand = {
  key: "ANSI C84.1 range A",
  document: "ANSI C84.1:2020",
  label: "range A, service voltage",
  force: "recommendation",
  lowest: (nominalVoltage) => ansiC84_1_2020_serviceVoltage({ nominalVoltage, range: "A", limit: "lowest" }),
  highest: (nominalVoltage) => ansiC84_1_2020_serviceVoltage({ nominalVoltage, range: "A", limit: "highest" }),
};
const rangeB: SupplyBand = {
  key: "ANSI C84.1 range B",
  document: "ANSI C84.1:2020",
  label: "range B, service voltage",
  force: "requirement",
  lowest: (nominalVoltage) => ansiC84_1_2020_serviceVoltage({ nominalVoltage, range: "B", limit: "lowest" }),
  highest: (nominalVoltage) => ansiC84_1_2020_serviceVoltage({ nominalVoltage, range: "B", limit: "highest" }),
};

/**
 * The bands that the supply voltage is to keep under a set of connection rules.
 *
 * @example
 * ```ts
 * import { nominalVoltageOf, supplyBands } from "pv-to-grid/grid";
 * const nominal = nominalVoltageOf("230/400 V 50 Hz", "single-phase");
 * supplyBands("VDE-AR-N 4105:2018", "230/400 V 50 Hz")[0]!.highest(nominal).text; // "253"
 * ```
 */
export function supplyBands(rules: GridRules, supply: SupplySystem): readonly SupplyBand[] {
  if (supply !== "230/400 V 50 Hz") return [rangeA, rangeB];
  if (rules.startsWith("EREC ")) return [greatBritain];
  if (rules === "AS/NZS 4777.2:2020 New Zealand") return [newZealand, newZealandOlder];
  if (rules.startsWith("AS/NZS ")) return [australia];
  if (rules.startsWith("RD 1699/2011") || rules.startsWith("REBT")) return [spain, en50160];
  return [en50160];
}
