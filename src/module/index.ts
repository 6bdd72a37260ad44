/**
 * What a module gives: its datasheet, temperature coefficients, cell temperature and translation of values.
 *
 * @packageDocumentation
 */
export { coldCellTemperature } from "./cell-temperature/cold-cell-temperature.js";
export { faimanConstantHeatLoss } from "./cell-temperature/faiman-constant-heat-loss.js";
export { faimanModuleTemperature } from "./cell-temperature/faiman-module-temperature.js";
export { faimanWindHeatLoss } from "./cell-temperature/faiman-wind-heat-loss.js";
export { type HotCell, hotCellTemperature } from "./cell-temperature/hot-cell-temperature.js";
export { type Mounting, mountings } from "./cell-temperature/mountings.js";
export { noctCellTemperature } from "./cell-temperature/noct-cell-temperature.js";
export { risenCellTemperature } from "./cell-temperature/risen-cell-temperature.js";
export { sandiaCellRise } from "./cell-temperature/sandia-cell-rise.js";
export { sandiaCellTemperature } from "./cell-temperature/sandia-cell-temperature.js";
export { sandiaExponents } from "./cell-temperature/sandia-exponents.js";
export { sandiaModuleTemperature } from "./cell-temperature/sandia-module-temperature.js";
export { temperatureRiseByMounting } from "./cell-temperature/temperature-rise-by-mounting.js";
export { absoluteCurrentCoefficient } from "./coefficient/absolute-current-coefficient.js";
export { absoluteVoltageCoefficient } from "./coefficient/absolute-voltage-coefficient.js";
export { moduleVoltageCoefficient } from "./coefficient/module-voltage-coefficient.js";
export { mppVoltageCoefficientFromPower } from "./coefficient/mpp-voltage-coefficient-from-power.js";
export { mppVoltageCoefficientFromShortCircuit } from "./coefficient/mpp-voltage-coefficient-from-short-circuit.js";
export { relativeCurrentCoefficient } from "./coefficient/relative-current-coefficient.js";
export { relativeVoltageCoefficient } from "./coefficient/relative-voltage-coefficient.js";
export { type DesignTemperatures, type DesignVoltages, designVoltages } from "./datasheet/design-voltages.js";
export { type ModuleAt, moduleAt } from "./datasheet/module-at.js";
export type { CurrentCoefficient, ModuleDatasheet, VoltageCoefficient } from "./datasheet/module-datasheet.js";
export { type Module, type MppVoltageCoefficientBasis, readModule } from "./datasheet/read-module.js";
export { maximumPowerAt } from "./translation/maximum-power-at.js";
export { maximumPowerUnder } from "./translation/maximum-power-under.js";
export { mppCurrentAt } from "./translation/mpp-current-at.js";
export { mppCurrentUnder } from "./translation/mpp-current-under.js";
export { mppVoltageAt } from "./translation/mpp-voltage-at.js";
export { openCircuitVoltageAt } from "./translation/open-circuit-voltage-at.js";
export { shortCircuitCurrentAt } from "./translation/short-circuit-current-at.js";
export { shortCircuitCurrentUnder } from "./translation/short-circuit-current-under.js";
export { voltageAt } from "./translation/voltage-at.js";
