import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Module } from "../datasheet/read-module.js";
import {
  coefficientNotAbovePlausible,
  coefficientNotBelowPlausible,
  mppVoltageFallsFasterThanOpenCircuit,
  powerFallsFasterThanVoltage,
} from "./coefficients.js";
import { fillFactor } from "./fill-factor.js";
import { openCircuitVoltagePerCell } from "./open-circuit-voltage-per-cell.js";
import {
  fillFactorHighEnough,
  fillFactorLowEnough,
  mppCurrentBelowShortCircuit,
  mppVoltageBelowOpenCircuit,
  powerMatchesOperatingPoint,
} from "./operating-point.js";
import { operatingCellTemperatureRange } from "./operating-cell-temperature-range.js";
import { plausibleCellVoltage } from "./plausible-cell-voltage.js";
import { plausibleCoefficient } from "./plausible-coefficient.js";
import { plausibleRatio } from "./plausible-ratio.js";
import { powerDeviation } from "./power-deviation.js";
import {
  cellVoltageHighEnough,
  cellVoltageLowEnough,
  operatingTemperatureHighEnough,
  operatingTemperatureLowEnough,
  seriesFuseNotTooLarge,
  seriesFuseNotTooSmall,
  toleranceInOrder,
  toleranceNotTooWide,
} from "./ratings.js";
import { seriesFuseRatio } from "./series-fuse-ratio.js";

/**
 * Whether the values of a datasheet fit together and lie where those of modules on the market do. What the datasheet
 * does not state is not checked.
 *
 * @param at - the name of the module type; it becomes part of each check's id
 * @example
 * ```ts
 * import { checkDatasheet, readModule } from "pv-to-grid/module";
 * const type = readModule({
 *   maximumPower: "440 W", openCircuitVoltage: "32.8 V", shortCircuitCurrent: "14.1 A", mppVoltage: "39.2 V", mppCurrent: "13.42 A",
 *   openCircuitVoltageCoefficient: "-0.26 %/K",
 * });
 * checkDatasheet(type, "M440")[0]!.verdict; // "not met"
 * ```
 */
export function checkDatasheet(module: Module, at = ""): readonly Check[] {
  return Object.freeze([...operatingPoint(module, at), ...coefficients(module, at), ...ratings(module, at)]);
}

const SWAPPED = "compare voltages and currents with the datasheet: the two may be swapped";
const COPIED = "compare the values with the datasheet, digit by digit";

function operatingPoint(module: Module, at: string): Check[] {
  const { openCircuitVoltage, shortCircuitCurrent, mppVoltage, mppCurrent, maximumPower } = module;
  const deviation = powerDeviation({ maximumPower, mppVoltage, mppCurrent });
  const factor = fillFactor({ maximumPower, openCircuitVoltage, shortCircuitCurrent });
  return [
    mppVoltageBelowOpenCircuit({ value: mppVoltage, limit: openCircuitVoltage, at, remedy: SWAPPED }),
    mppCurrentBelowShortCircuit({ value: mppCurrent, limit: shortCircuitCurrent, at, remedy: SWAPPED }),
    powerMatchesOperatingPoint({
      value: deviation,
      limit: plausibleRatio({ datasheetRatio: "power deviation", bound: "high" }),
      at,
      remedy: COPIED,
    }),
    fillFactorHighEnough({
      value: factor,
      limit: plausibleRatio({ datasheetRatio: "fill factor", bound: "low" }),
      at,
      remedy: COPIED,
    }),
    fillFactorLowEnough({
      value: factor,
      limit: plausibleRatio({ datasheetRatio: "fill factor", bound: "high" }),
      at,
      remedy: COPIED,
    }),
  ];
}

const STATED = [
  "openCircuitVoltageCoefficient",
  "mppVoltageCoefficient",
  "maximumPowerCoefficient",
  "shortCircuitCurrentCoefficient",
  "mppCurrentCoefficient",
] as const;

const SLIPS = "the usual slips: a percentage written as a fraction, millivolts as volts, or two coefficients swapped";

function coefficients(module: Module, at: string): Check[] {
  const { openCircuitVoltageCoefficient, maximumPowerCoefficient, mppVoltageCoefficient, mppVoltageCoefficientBasis } =
    module;
  const checks: Check[] = [];
  for (const coefficient of STATED) {
    const value: Known<Quantity<"relativeTemperatureCoefficient">> = module[coefficient];
    // An estimate is not the datasheet's, so it cannot be its slip.
    if (isMissing(value) || (coefficient === "mppVoltageCoefficient" && mppVoltageCoefficientBasis !== "stated"))
      continue;
    const place = { at: at === "" ? coefficient : `${at}/${coefficient}`, remedy: SLIPS };
    checks.push(
      coefficientNotBelowPlausible({
        value,
        limit: plausibleCoefficient({ datasheetCoefficient: coefficient, bound: "low" }),
        ...place,
      }),
      coefficientNotAbovePlausible({
        value,
        limit: plausibleCoefficient({ datasheetCoefficient: coefficient, bound: "high" }),
        ...place,
      }),
    );
  }
  if (!isMissing(maximumPowerCoefficient)) {
    checks.push(
      powerFallsFasterThanVoltage({
        value: maximumPowerCoefficient,
        limit: openCircuitVoltageCoefficient,
        at,
        remedy: SLIPS,
      }),
    );
  }
  if (!isMissing(mppVoltageCoefficient) && mppVoltageCoefficientBasis === "stated") {
    checks.push(
      mppVoltageFallsFasterThanOpenCircuit({
        value: mppVoltageCoefficient,
        limit: openCircuitVoltageCoefficient,
        at,
        remedy: SLIPS,
      }),
    );
  }
  return checks;
}

function ratings(module: Module, at: string): Check[] {
  const {
    shortCircuitCurrent,
    openCircuitVoltage,
    maximumSeriesFuse,
    powerToleranceLow,
    powerToleranceHigh,
    cellsInSeries,
  } = module;
  const { nominalOperatingCellTemperature: noct } = module;
  const checks: Check[] = [];
  if (!isMissing(maximumSeriesFuse)) {
    const value = seriesFuseRatio({ maximumSeriesFuse, shortCircuitCurrent });
    checks.push(
      seriesFuseNotTooSmall({
        value,
        limit: plausibleRatio({ datasheetRatio: "series fuse", bound: "low" }),
        at,
        remedy: COPIED,
      }),
      seriesFuseNotTooLarge({
        value,
        limit: plausibleRatio({ datasheetRatio: "series fuse", bound: "high" }),
        at,
        remedy: COPIED,
      }),
    );
  }
  if (!isMissing(powerToleranceLow)) {
    checks.push(
      toleranceNotTooWide({
        value: powerToleranceLow,
        limit: plausibleRatio({ datasheetRatio: "power tolerance", bound: "low" }),
        at,
        remedy: COPIED,
      }),
    );
    if (!isMissing(powerToleranceHigh))
      checks.push(toleranceInOrder({ value: powerToleranceLow, limit: powerToleranceHigh, at, remedy: COPIED }));
  }
  if (!isMissing(cellsInSeries)) {
    const value = openCircuitVoltagePerCell({ openCircuitVoltage, cellsInSeries });
    const words = { at, remedy: "count the cells in series: half cells in parallel count once" };
    checks.push(
      cellVoltageHighEnough({
        value,
        limit: plausibleCellVoltage({ technology: "any technology", bound: "low" }),
        ...words,
      }),
      cellVoltageLowEnough({
        value,
        limit: plausibleCellVoltage({ technology: "any technology", bound: "high" }),
        ...words,
      }),
    );
  }
  if (!isMissing(noct)) {
    checks.push(
      operatingTemperatureHighEnough({
        value: noct,
        limit: operatingCellTemperatureRange({ surveyedModule: "best" }),
        at,
        remedy: COPIED,
      }),
      operatingTemperatureLowEnough({
        value: noct,
        limit: operatingCellTemperatureRange({ surveyedModule: "worst" }),
        at,
        remedy: COPIED,
      }),
    );
  }
  return checks;
}
