/**
 * Sizes, resistance, ampacity, voltage change and losses of conductors.
 *
 * @packageDocumentation
 */
export {
  cableKinds,
  conductorMetals,
  insulations,
  conductorClasses,
  type CableKind,
  type ConductorMetal,
  type Insulation,
  type ConductorClass,
  type Cable,
} from "./cable.js";
export {
  places,
  referenceMethods,
  arrangements,
  trayKinds,
  clearances,
  type Place,
  type ReferenceMethod,
  type Arrangement,
  type TrayKind,
  type Clearance,
  type Loaded,
  type Stretch,
} from "./stretch.js";
export { wiringRules, isNfpa70, type Listed, type WiringRules } from "./wiring.js";
export { ampacityOf, type AmpacityRequest } from "./ampacity/ampacity-of.js";
export {
  ampacityInAir,
  ampacityInGround,
  ampacityOfParallel,
  ampacityWithHarmonics,
  circuitsTogether,
  circuitsOfLayer,
  unequalGroupFactor,
} from "./ampacity/compose.js";
export { lightLoad, lightlyLoaded } from "./ampacity/lightly-loaded.js";
export { tabulatedAmpacityNeeded } from "./ampacity/needed.js";
export { routeAmpacity, type RouteAmpacity, type RouteAmpacityRequest } from "./ampacity/route-ampacity.js";
export { routeMinimum } from "./ampacity/route-minimum.js";
export { sizesTabulated, type LaidCable } from "./ampacity/sizes-tabulated.js";
export { type AppliedFactor, type StretchAmpacity } from "./ampacity/stretch-ampacity.js";
export { bs7671_2018_4b1 } from "./ampacity/bs/table-4b1.js";
export { bs7671_2018_4e1a } from "./ampacity/bs/table-4e1a.js";
export { bs7671_2018_4e4a } from "./ampacity/bs/table-4e4a.js";
export { capacityByAnnexD } from "./ampacity/iec/annex-d.js";
export { iec60364_5_52_2009_b_52_10 } from "./ampacity/iec/b-52-10.js";
export { iec60364_5_52_2009_b_52_11 } from "./ampacity/iec/b-52-11.js";
export { iec60364_5_52_2009_b_52_12 } from "./ampacity/iec/b-52-12.js";
export { iec60364_5_52_2009_b_52_13 } from "./ampacity/iec/b-52-13.js";
export { iec60364_5_52_2009_b_52_14 } from "./ampacity/iec/b-52-14.js";
export { iec60364_5_52_2009_b_52_15 } from "./ampacity/iec/b-52-15.js";
export { iec60364_5_52_2009_b_52_16 } from "./ampacity/iec/b-52-16.js";
export { iec60364_5_52_2009_b_52_17 } from "./ampacity/iec/b-52-17.js";
export { iec60364_5_52_2009_b_52_18 } from "./ampacity/iec/b-52-18.js";
export { iec60364_5_52_2009_b_52_19_a } from "./ampacity/iec/b-52-19-a.js";
export { iec60364_5_52_2009_b_52_19_b } from "./ampacity/iec/b-52-19-b.js";
export { iec60364_5_52_2009_b_52_2 } from "./ampacity/iec/b-52-2.js";
export { iec60364_5_52_2009_b_52_20 } from "./ampacity/iec/b-52-20.js";
export { iec60364_5_52_2009_b_52_21 } from "./ampacity/iec/b-52-21.js";
export { iec60364_5_52_2009_b_52_3 } from "./ampacity/iec/b-52-3.js";
export { iec60364_5_52_2009_b_52_4 } from "./ampacity/iec/b-52-4.js";
export { iec60364_5_52_2009_b_52_5 } from "./ampacity/iec/b-52-5.js";
export { iec60364_5_52_2001_method_d } from "./ampacity/iec/method-d-2001.js";
export { conductorLimits } from "./ampacity/iec/table-52-1.js";
export {
  ampacityInUse,
  ambientFactorByEquation,
  continuousCurrentWithMargin,
  unmarkedTerminalColumn,
  terminalColumnAmpacity,
} from "./ampacity/nfpa/compose.js";
export { currentCarryingConductors, conductorsThatCount, racewayIsShort } from "./ampacity/nfpa/count.js";
export { type Section } from "./ampacity/nfpa/disregarded.js";
export { nfpaInsulations, type NfpaInsulation } from "./ampacity/nfpa/insulations.js";
export { nfpa70_2014_rooftop_adders } from "./ampacity/nfpa/rooftop-adders-2014.js";
export { nfpa70_2017_rooftopAmbient, nfpa70_2023_rooftopAmbient, rooftopAmbient } from "./ampacity/nfpa/rooftop.js";
export { shortSectionAllowance, sectionMayBeDisregarded, totalLength } from "./ampacity/nfpa/short-section.js";
export { nfpa70_2023_240_4_d } from "./ampacity/nfpa/small-conductors.js";
export { nfpa70_2023_310_15_b_1_1 } from "./ampacity/nfpa/table-310-15-b-1-1.js";
export { nfpa70_2023_310_15_b_1_2 } from "./ampacity/nfpa/table-310-15-b-1-2.js";
export { nfpa70_2023_310_15_c_1 } from "./ampacity/nfpa/table-310-15-c-1.js";
export { nfpa70_2023_310_16 } from "./ampacity/nfpa/table-310-16.js";
export { nfpa70_2023_310_17 } from "./ampacity/nfpa/table-310-17.js";
export { nfpa70_2017_690_31_a } from "./ampacity/nfpa/table-690-31-a-2017.js";
export { nfpa70_2020_690_31_a_a } from "./ampacity/nfpa/table-690-31-a-a-2020.js";
export { nfpa70_2020_690_31_a_b } from "./ampacity/nfpa/table-690-31-a-b-2020.js";
export { ambientBehindModules, conductorLimitFactor, pvAmbientFactor } from "./ampacity/pv/ambient.js";
export { usualConductorLimit } from "./ampacity/pv/ampacity.js";
export { en50618_2014_a_3 } from "./ampacity/pv/en-50618-a-3.js";
export { en50618_2014_a_4 } from "./ampacity/pv/en-50618-a-4.js";
export { pvCableTemperatures } from "./ampacity/pv/temperatures.js";
export {
  lossHoursOf,
  economicSizes,
  type LoadStep,
  type EconomicRequest,
  type EconomicSize,
} from "./loss/economic-size.js";
export { lossGrowth, presentWorth, lossCostOverLife, purchaseCost, totalCost } from "./loss/economic.js";
export { energyLost, lossHoursOfBin, lossHours, energyCost } from "./loss/energy.js";
export { conductorLoss, totalLoss, lossShare } from "./loss/loss.js";
export {
  type ConductorProperties,
  type Raceway,
  type PropertiesRequest,
  type SizedRequest,
} from "./resistance/conductor-properties.js";
export { iec60228_2004_kt, measuringFactor } from "./resistance/measured.js";
export { temperatureCoefficientsAt20, resistivitiesAt20 } from "./resistance/metals.js";
export { inParallel } from "./resistance/parallel.js";
export { conductorProperties } from "./resistance/properties.js";
export { reactanceBySpacing, reactanceAtFrequency } from "./resistance/reactance-laws.js";
export {
  skinEffectArgument,
  skinEffectFactor,
  proximityEffectOfThree,
  proximityEffectOfTwo,
  alternatingResistance,
} from "./resistance/skin-effect.js";
export { resistanceAtTemperature, resistanceAt20, conductorTemperatureAtLoad } from "./resistance/temperature.js";
export { usualReactances } from "./resistance/usual-reactances.js";
export { iec60228_2004_class1 } from "./resistance/iec/class-1.js";
export { iec60228_2004_class2 } from "./resistance/iec/class-2.js";
export { iec60228_2004_class5 } from "./resistance/iec/class-5.js";
export { nfpa70_2017_table_8_diameters } from "./resistance/nfpa/table-8-diameters.js";
export { nfpa70_2017_table_8 } from "./resistance/nfpa/table-8.js";
export { nfpa70_2017_table_9_impedance } from "./resistance/nfpa/table-9-impedance.js";
export { nfpa70_2017_table_9_reactance } from "./resistance/nfpa/table-9-reactance.js";
export { nfpa70_2017_table_9_resistance } from "./resistance/nfpa/table-9-resistance.js";
export { resistanceFrom75, temperatureCoefficientsAt75 } from "./resistance/nfpa/temperature.js";
export { awgArea } from "./size/awg-area.js";
export { awgDiameter, circularMils } from "./size/awg-definition.js";
export { awgSections } from "./size/awg-sections.js";
export { iec60228_2004_sections } from "./size/iec-sections.js";
export { nfpa70_2017_sizes } from "./size/nfpa-sizes.js";
export { sizesFor, readSize, sizeName } from "./size/size.js";
export {
  withinAmpacity,
  sizeTabulated,
  sectionAtLeastMinimum,
  terminalHoldsSmall,
  terminalHoldsLarge,
  terminalTakesMetal,
  conductorCoolAtTerminal,
} from "./sizing/conditions.js";
export { changeWithinLimit, longestRun, smallestSizeForRun, type Run } from "./sizing/for-drop.js";
export { hottestStretch } from "./sizing/hottest.js";
export { minimumSections } from "./sizing/minimum-sections.js";
export { parallelLargeEnough } from "./sizing/nfpa-parallel.js";
export { withinTerminalAmpacity, smallConductorLimit } from "./sizing/nfpa-terminal.js";
export { cableFitsPlace, cablePlaceChecks } from "./sizing/place-checks.js";
export { stretchTemperature, routeTemperature } from "./sizing/route-temperature.js";
export { sizeConductor, type SizingRequest, type SizedConductor } from "./sizing/size-conductor.js";
export { type Terminal } from "./sizing/terminal.js";
export {
  twoConductorDropByImpedance,
  threePhaseDropByImpedance,
  longestRunByImpedance,
  effectiveImpedancePerLength,
} from "./voltage/by-impedance.js";
export { threePhaseChangeByPower, twoConductorChangeByPower } from "./voltage/by-power.js";
export { directCurrentDrop, twoConductorDrop, threePhaseDrop } from "./voltage/drop.js";
export { exactDropFromSending, exactDropFromReceiving } from "./voltage/exact.js";
export { iec60364_5_52_2009_annexG, serviceResistivity, sectionForDrop } from "./voltage/iec-annex-g.js";
export {
  dropWithinAnnexG,
  dropWithinBs7671,
  dropWithinAsNzs3000,
  riseWithinAsNzs4777,
  riseWithinVde4105,
  changeWithinRebt,
  dropWithinRebt,
  dropWithinNfpa70,
  directDropWithinPractice,
  alternatingDropWithinPractice,
  directDropWithinMcs,
} from "./voltage/limit-conditions.js";
export { voltageLimits, type VoltageLimit, type VoltageLimitKey } from "./voltage/limit-list.js";
export { voltageLimitShares, supplementOfAnnexG, limitOfAnnexG } from "./voltage/limit-shares.js";
export { voltageLimitCheck, type VoltageLimitRequest } from "./voltage/limits.js";
export { lineToNeutral, lineToLine } from "./voltage/line-to-neutral.js";
export { longestDirectRun, longestTwoConductorRun, longestThreePhaseRun } from "./voltage/longest-run.js";
export { dropByK, reactiveFactorOf } from "./voltage/nfpa-k.js";
export {
  circuitKinds,
  loadedConductors,
  routeVoltageChange,
  type CircuitKind,
  type RoutePart,
  type PartChange,
  type RouteVoltageChange,
  type RouteRequest,
} from "./voltage/route.js";
export { routeDrop, voltageChangeShare } from "./voltage/share.js";
export { conductivityAtTemperature, resistivityAtTemperature, sectionByConductivity } from "./voltage/spanish.js";
export { tabulatedDirectDrop, tabulatedImpedance } from "./voltage/tabulated-laws.js";
export {
  dropByTable,
  tabulatedDropAllowed,
  tabulatedDropByParts,
  bs7671_2018_temperatureCorrection,
} from "./voltage/tabulated.js";
export {
  threePhaseChangeShare,
  voltageChangeAllowed,
  farEndVoltage,
  sectionForDirectDrop,
} from "./voltage/whole-run.js";
export { asnzs3008_2017_42, asnzs3008_2017_singlePhase } from "./voltage/tables/asnzs-3008.js";
export { bs7671_2018_4d1b } from "./voltage/tables/bs-4d1b.js";
export { bs7671_2018_4d2b } from "./voltage/tables/bs-4d2b.js";
export { bs7671_2018_4e1b } from "./voltage/tables/bs-4e1b.js";
export { bs7671_2018_4e4b } from "./voltage/tables/bs-4e4b.js";
export { bs7671_2018_4f2b } from "./voltage/tables/bs-4f2b.js";
export { bs7671_2018_4f3b } from "./voltage/tables/bs-4f3b.js";
export { rebt_guide_conductivities } from "./voltage/tables/rebt.js";
export { unel35023_1970_single_core } from "./voltage/tables/unel-35023.js";
