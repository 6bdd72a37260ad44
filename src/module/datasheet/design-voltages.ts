import { isMissing, type Known, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { coldCellTemperature } from "../cell-temperature/cold-cell-temperature.js";
import { moduleAt } from "./module-at.js";
import type { Module, MppVoltageCoefficientBasis } from "./read-module.js";

/** The values of one module that strings are designed with. */
export interface DesignVoltages {
  /** Coldest cells, equal to the coldest ambient. */
  readonly coldCellTemperature: Known<Quantity<"temperature">>;
  readonly hotCellTemperature: Known<Quantity<"temperature">>;
  /** Highest voltage that a module can reach: decides the longest string. */
  readonly coldOpenCircuitVoltage: Known<Quantity<"voltage">>;
  /** Highest voltage at the maximum power point. */
  readonly coldMppVoltage: Known<Quantity<"voltage">>;
  /** Lowest open-circuit voltage: decides whether the inverter starts. */
  readonly hotOpenCircuitVoltage: Known<Quantity<"voltage">>;
  /** Lowest voltage at the maximum power point: decides the shortest string. */
  readonly hotMppVoltage: Known<Quantity<"voltage">>;
  readonly hotShortCircuitCurrent: Known<Quantity<"current">>;
  readonly mppVoltageCoefficient: Known<Quantity<"relativeTemperatureCoefficient">>;
  readonly mppVoltageCoefficientBasis: MppVoltageCoefficientBasis;
}

/** The temperatures that a design stands on. */
export interface DesignTemperatures {
  /** Coldest ambient of the site. */
  readonly coldest: Known<Input<"temperature">>;
  /** Hottest cells, such as `hotCellTemperature` gives. */
  readonly hottestCell: Known<Input<"temperature">>;
}

/**
 * The voltages and the current of one module at the coldest ambient and at the hottest cells.
 *
 * @example
 * ```ts
 * import { designVoltages, readModule } from "pv-to-grid/module";
 * const type = readModule({
 *   maximumPower: "440 W", openCircuitVoltage: "39.2 V", shortCircuitCurrent: "14.1 A", mppVoltage: "32.8 V", mppCurrent: "13.42 A",
 *   openCircuitVoltageCoefficient: "-0.26 %/K", shortCircuitCurrentCoefficient: "0.05 %/K", maximumPowerCoefficient: "-0.31 %/K",
 * });
 * const voltages = designVoltages(type, { coldest: "-14 °C", hottestCell: "71 °C" });
 * voltages.coldOpenCircuitVoltage; // 43.17488 V
 * voltages.hotMppVoltage; // 27.36832 V, by a coefficient "from power and short-circuit current"
 * ```
 */
export function designVoltages(module: Module, { coldest, hottestCell }: DesignTemperatures): DesignVoltages {
  const cold = moduleAt(module, whenKnown({ ambient: coldest }, coldCellTemperature));
  const hot = moduleAt(module, isMissing(hottestCell) ? hottestCell : given(hottestCell, "°C"));
  return Object.freeze({
    coldCellTemperature: cold.cellTemperature,
    hotCellTemperature: hot.cellTemperature,
    coldOpenCircuitVoltage: cold.openCircuitVoltage,
    coldMppVoltage: cold.mppVoltage,
    hotOpenCircuitVoltage: hot.openCircuitVoltage,
    hotMppVoltage: hot.mppVoltage,
    hotShortCircuitCurrent: hot.shortCircuitCurrent,
    mppVoltageCoefficient: module.mppVoltageCoefficient,
    mppVoltageCoefficientBasis: module.mppVoltageCoefficientBasis,
  });
}
