import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { type GridRules, gridRuleSet } from "../rules/grid-rule-sets.js";
import { type SupplyBand, supplyBands } from "../supply/supply-bands.js";
import type { SupplySystem } from "../supply/supply-systems.js";
import { type VoltageChangeLimit, voltageChangeLimitsOf } from "./limits/voltage-change-limits.js";
import {
  terminalVoltageBelowTripSetting,
  voltageAboveLowestSupplyVoltage,
  voltageBelowHighestSupplyVoltage,
  voltageBelowUsualSupplyVoltage,
  voltageChangeWithinLimit,
  voltageChangeWithinRecommendation,
} from "./limits/within-the-limit.js";
import { furtherReactivePower } from "./power-factor-within-limit.js";
import type { VoltageProfile } from "./voltage-profile.js";

/** What the voltage of a connection is checked against. */
export interface VoltageChecksFor {
  readonly rules: GridRules;
  readonly supply: SupplySystem;
  readonly profile: VoltageProfile;
  /** Place in the plant; it becomes part of the checks' ids. */
  readonly at: string;
  /** Sustained overvoltage setting at the inverter terminals, in the kind of voltage of the connection. */
  readonly sustainedOvervoltage?: Known<Quantity<"voltage">>;
}

const REMEDY = "larger conductor, shorter path, or three phases in place of one";

function limitCheck(limit: VoltageChangeLimit, { profile, at }: VoltageChecksFor): Check {
  const { network, installation, nominalVoltage } = profile;
  const inNetwork = limit.counts === "all plants" ? network.changeOfAllPlants : network.change;
  const [value, reactance] =
    limit.place === "network" ? [inNetwork, network.reactance] : [installation.change, installation.reactance];
  const within = limit.force === "requirement" ? voltageChangeWithinLimit : voltageChangeWithinRecommendation;
  const voltageChangeLimit = limit.limit({ nominalVoltage });
  const words = {
    at: `${limit.key}/${at}`,
    because: `${limit.document}, ${limit.clause}: ${limit.place}, ${limit.counts}`,
    remedy: REMEDY,
  };
  const check = within({ value, limit: voltageChangeLimit, ...words });
  if (check.verdict !== "not met" || isMissing(value) || isMissing(reactance)) return check;
  const further = furtherReactivePower({ voltageChange: value, voltageChangeLimit, nominalVoltage, reactance });
  return further === null
    ? check
    : within({ value, limit: voltageChangeLimit, ...words, remedy: `${REMEDY}; or ${further}` });
}

function bandChecks(band: SupplyBand, { profile, at }: VoltageChecksFor): readonly Check[] {
  const { network, nominalVoltage, voltageWithoutPlant } = profile;
  const words = { at: `${band.key}/${at}`, because: `${band.document}: ${band.label}` };
  const highest = band.force === "requirement" ? voltageBelowHighestSupplyVoltage : voltageBelowUsualSupplyVoltage;
  const checks = [highest({ value: network.voltage, limit: band.highest(nominalVoltage), remedy: REMEDY, ...words })];
  if (band.force === "requirement") {
    checks.push(
      voltageAboveLowestSupplyVoltage({ value: voltageWithoutPlant, limit: band.lowest(nominalVoltage), ...words }),
    );
  }
  return checks;
}

/**
 * The voltage of a connection against the limits of its connection rules, the supply band and the trip setting.
 *
 * @throws InputError where the rules are not known
 */
export function gridVoltageChecks(request: VoltageChecksFor): readonly Check[] {
  const rules = gridRuleSet(request.rules).key;
  const { supply, profile, at, sustainedOvervoltage } = request;
  const checks = voltageChangeLimitsOf(rules).map((limit) => limitCheck(limit, request));
  checks.push(...supplyBands(rules, supply).flatMap((band) => bandChecks(band, request)));
  if (sustainedOvervoltage !== undefined) {
    checks.push(
      terminalVoltageBelowTripSetting({
        value: profile.terminalVoltage,
        limit: sustainedOvervoltage,
        at,
        remedy: REMEDY,
      }),
    );
  }
  return Object.freeze(checks);
}
