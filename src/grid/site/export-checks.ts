import { type Check, type Known, whenKnown } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { apparentPowerThresholds } from "../phases/connection-thresholds.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import {
  exportCurrent,
  exportWithinServiceCable,
  exportWithinServiceDevice,
  halfOfCapacity,
  plantWithinHalfOfCapacity,
  plantWithinLargestPower,
} from "./export.js";

/** A site that feeds in with its loads at zero. */
export interface SiteUnderExport {
  readonly rules: GridRules;
  /** Largest output current of each inverter on the most loaded conductor. */
  readonly inverterCurrents: Known<readonly Input<"current">[]>;
  readonly serviceDevice: Known<Input<"current">>;
  readonly serviceAmpacity: Known<Input<"current">>;
  readonly plantPower: Known<Input<"apparentPower">>;
  /** Capacity of the network operator's line or transformer, and what is already connected to it; asked for in Spain. */
  readonly capacity?: Known<Input<"apparentPower">>;
  readonly connectedPower?: Known<Input<"apparentPower">>;
  readonly at: string;
}

/** The whole site with its loads at zero: service device, service cable, and the capacity that national rules leave. */
export function exportChecks(site: SiteUnderExport): readonly Check[] {
  const { rules, inverterCurrents, serviceDevice, serviceAmpacity, plantPower, at } = site;
  const value = whenKnown({ inverterCurrents }, exportCurrent);
  const remedy = "limit the export, or ask the network operator for a larger service";
  const checks = [
    exportWithinServiceDevice({ value, limit: serviceDevice, at, remedy }),
    exportWithinServiceCable({ value, limit: serviceAmpacity, at, remedy }),
  ];
  if (rules.startsWith("RD 1699/2011")) {
    const { capacity = { missing: ["supply.capacity"] }, connectedPower = { missing: ["supply.connectedPower"] } } =
      site;
    checks.push(
      plantWithinHalfOfCapacity({
        value: plantPower,
        limit: whenKnown({ capacity, connectedPower }, halfOfCapacity),
        at,
      }),
    );
  }
  if (rules.startsWith("RD 1699/2011") || rules.startsWith("REBT")) {
    checks.push(
      plantWithinLargestPower({
        value: plantPower,
        limit: apparentPowerThresholds({ threshold: "REBT ITC-BT-40 interconnected plant" }),
        at,
      }),
    );
  }
  return Object.freeze(checks);
}
