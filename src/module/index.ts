/**
 * What a module gives: its datasheet, temperature coefficients, cell temperature, one-diode model and translation of values.
 *
 * @packageDocumentation
 */
export { bifacialEquivalentIrradiance } from "./bifacial/bifacial-equivalent-irradiance.js";
export { bifacialRearIrradiance } from "./bifacial/bifacial-rear-irradiance.js";
export { bifacialShortCircuitCurrent } from "./bifacial/bifacial-short-circuit-current.js";
export {
  bifacialCurrent,
  type BifacialEdition,
  bifacialEditions,
  bifacialityBy,
  type BifacialLight,
} from "./bifacial/bifaciality.js";
export { lesserBifaciality } from "./bifacial/lesser-bifaciality.js";
export { coldCellTemperature } from "./cell-temperature/cold-cell-temperature.js";
export { faimanConstantHeatLoss } from "./cell-temperature/faiman-constant-heat-loss.js";
export { faimanModuleTemperature } from "./cell-temperature/faiman-module-temperature.js";
export { faimanWindHeatLoss } from "./cell-temperature/faiman-wind-heat-loss.js";
export { type HotCell, hotCellTemperature } from "./cell-temperature/hot-cell-temperature.js";
export { type Mounting, mountings } from "./cell-temperature/mountings.js";
export { noctCellTemperature } from "./cell-temperature/noct-cell-temperature.js";
export { nominalModuleOperatingTemperature } from "./cell-temperature/nominal-module-operating-temperature.js";
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
export { relativePowerCoefficient } from "./coefficient/relative-power-coefficient.js";
export { relativeVoltageCoefficient } from "./coefficient/relative-voltage-coefficient.js";
export { flatVoltageFactor } from "./correction-factor/flat-voltage-factor.js";
export { iec62548_2016_voltageFactor } from "./correction-factor/iec-62548-2016-voltage-factor.js";
export { nfpa70_2005_690_7 } from "./correction-factor/nfpa70-2005-690-7.js";
export { nfpa70_2008_690_7 } from "./correction-factor/nfpa70-2008-690-7.js";
export { nfpa70_2017_690_7_a } from "./correction-factor/nfpa70-2017-690-7-a.js";
export { nfpa70_2020_690_7_a } from "./correction-factor/nfpa70-2020-690-7-a.js";
export { nfpa70_2023_690_7_a } from "./correction-factor/nfpa70-2023-690-7-a.js";
export { type ByDocument, openCircuitVoltageByDocument } from "./correction-factor/open-circuit-voltage-by-document.js";
export { openCircuitVoltageByFactor } from "./correction-factor/open-circuit-voltage-by-factor.js";
export { uteC15VoltageFactor } from "./correction-factor/ute-c15-voltage-factor.js";
export {
  voltageCorrectionFactor,
  type VoltageFactorDocument,
  voltageFactorDocuments,
} from "./correction-factor/voltage-correction-factor.js";
export { type DesignTemperatures, type DesignVoltages, designVoltages } from "./datasheet/design-voltages.js";
export { type ModuleAt, moduleAt } from "./datasheet/module-at.js";
export type {
  CurrentCoefficient,
  ModuleDatasheet,
  PowerCoefficient,
  VoltageCoefficient,
} from "./datasheet/module-datasheet.js";
export { type Module, type MppVoltageCoefficientBasis, readModule } from "./datasheet/read-module.js";
export { bandGapVoltageAt } from "./ideal-diode/band-gap-voltage-at.js";
export { currentAtJunctionVoltage } from "./ideal-diode/current-at-junction-voltage.js";
export { idealFillFactor } from "./ideal-diode/ideal-fill-factor.js";
export { idealOpenCircuitVoltage } from "./ideal-diode/ideal-open-circuit-voltage.js";
export { moduleVoltageAtJunctionVoltage } from "./ideal-diode/module-voltage-at-junction-voltage.js";
export { openCircuitVoltageSlope } from "./ideal-diode/open-circuit-voltage-slope.js";
export { photocurrentFromDatasheet } from "./ideal-diode/photocurrent-from-datasheet.js";
export { saturationCurrentFromDatasheet } from "./ideal-diode/saturation-current-from-datasheet.js";
export { thermalVoltage } from "./ideal-diode/thermal-voltage.js";
export { openCircuitVoltageRatio } from "./iec-60891/open-circuit-voltage-ratio.js";
export { procedure1Current } from "./iec-60891/procedure1-current.js";
export { procedure1Voltage } from "./iec-60891/procedure1-voltage.js";
export { procedure2Current2009 } from "./iec-60891/procedure2-current-2009.js";
export { procedure2Current2021 } from "./iec-60891/procedure2-current-2021.js";
export { procedure2Voltage2009 } from "./iec-60891/procedure2-voltage-2009.js";
export { procedure2Voltage2021 } from "./iec-60891/procedure2-voltage-2021.js";
export { seriesResistanceAt } from "./iec-60891/series-resistance-at.js";
export { type CurveResidual, curveResidual, type ResidualOf } from "./measured-curve/curve-residual.js";
export { type MeasuredCurve, type MeasuredPoints, measuredPoints } from "./measured-curve/measured-points.js";
export { moduleEfficiency } from "./measured-curve/module-efficiency.js";
export { openCircuitVoltageBetween } from "./measured-curve/open-circuit-voltage-between.js";
export { powerAtPoint } from "./measured-curve/power-at-point.js";
export { shortCircuitCurrentBetween } from "./measured-curve/short-circuit-current-between.js";
export { combineDiodes } from "./one-diode/combine-diodes.js";
export { diodeCurrent } from "./one-diode/diode-current.js";
export { type DiodeCurve, diodeCurve } from "./one-diode/diode-curve.js";
export { type DiodePoints, diodePoints } from "./one-diode/diode-points.js";
export { type DiodeConditions, diodeUnder, type StcDiode } from "./one-diode/diode-under.js";
export { diodeVoltage } from "./one-diode/diode-voltage.js";
export { type DiodeDatasheet, fitDiode } from "./one-diode/fit-diode.js";
export { type OneDiode, oneDiode } from "./one-diode/one-diode.js";
export { oneDiodeCurrent } from "./one-diode/quantity/one-diode-current.js";
export { oneDiodeFillFactor } from "./one-diode/quantity/one-diode-fill-factor.js";
export { oneDiodeMaximumPower } from "./one-diode/quantity/one-diode-maximum-power.js";
export { oneDiodeMppCurrent } from "./one-diode/quantity/one-diode-mpp-current.js";
export { oneDiodeMppVoltage } from "./one-diode/quantity/one-diode-mpp-voltage.js";
export { oneDiodeOpenCircuitVoltage } from "./one-diode/quantity/one-diode-open-circuit-voltage.js";
export { oneDiodeShortCircuitCurrent } from "./one-diode/quantity/one-diode-short-circuit-current.js";
export { oneDiodeVoltage } from "./one-diode/quantity/one-diode-voltage.js";
export type { CurvePoints } from "./one-diode/through-points.js";
export { checkDatasheet } from "./plausibility/check-datasheet.js";
export {
  coefficientNotAbovePlausible,
  coefficientNotBelowPlausible,
  mppVoltageFallsFasterThanOpenCircuit,
  powerFallsFasterThanVoltage,
} from "./plausibility/coefficients.js";
export { fillFactor } from "./plausibility/fill-factor.js";
export { openCircuitVoltagePerCell } from "./plausibility/open-circuit-voltage-per-cell.js";
export { operatingCellTemperatureRange } from "./plausibility/operating-cell-temperature-range.js";
export {
  fillFactorHighEnough,
  fillFactorLowEnough,
  mppCurrentBelowShortCircuit,
  mppVoltageBelowOpenCircuit,
  powerMatchesOperatingPoint,
} from "./plausibility/operating-point.js";
export { plausibleCellVoltage } from "./plausibility/plausible-cell-voltage.js";
export { plausibleCoefficient } from "./plausibility/plausible-coefficient.js";
export { plausibleRatio } from "./plausibility/plausible-ratio.js";
export { powerDeviation } from "./plausibility/power-deviation.js";
export {
  cellVoltageHighEnough,
  cellVoltageLowEnough,
  operatingTemperatureHighEnough,
  operatingTemperatureLowEnough,
  seriesFuseNotTooLarge,
  seriesFuseNotTooSmall,
  toleranceInOrder,
  toleranceNotTooWide,
} from "./plausibility/ratings.js";
export { seriesFuseRatio } from "./plausibility/series-fuse-ratio.js";
export { maximumPowerAt } from "./translation/maximum-power-at.js";
export { maximumPowerByAbsolute } from "./translation/maximum-power-by-absolute.js";
export { maximumPowerUnder } from "./translation/maximum-power-under.js";
export { mppCurrentAt } from "./translation/mpp-current-at.js";
export { mppCurrentUnder } from "./translation/mpp-current-under.js";
export { mppVoltageAt } from "./translation/mpp-voltage-at.js";
export { openCircuitVoltageAt } from "./translation/open-circuit-voltage-at.js";
export { openCircuitVoltageUnder } from "./translation/open-circuit-voltage-under.js";
export { shortCircuitCurrentAt } from "./translation/short-circuit-current-at.js";
export { shortCircuitCurrentUnder } from "./translation/short-circuit-current-under.js";
export { voltageAt } from "./translation/voltage-at.js";
