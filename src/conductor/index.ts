/**
 * Sizes, resistance, ampacity, voltage change and losses of conductors.
 *
 * @packageDocumentation
 */
export { cableKinds, conductorMetals, insulations, conductorClasses, type CableKind, type ConductorMetal, type Insulation, type ConductorClass, type Cable } from "./cable.js";
export { places, referenceMethods, arrangements, trayKinds, clearances, type Place, type ReferenceMethod, type Arrangement, type TrayKind, type Clearance, type Stretch } from "./stretch.js";
export { wiringRules, isNfpa70, type Listed, type WiringRules } from "./wiring.js";
export { ampacityOf, routeAmpacity, type AmpacityRequest, type RouteAmpacity } from "./ampacity/ampacity-of.js";
export { ampacityInAir, ampacityInGround, ampacityWithHarmonics, circuitsTogether, circuitsOfLayer, unequalGroupFactor } from "./ampacity/compose.js";
export { routeMinimum } from "./ampacity/route-minimum.js";
export { sizesTabulated, type LaidCable } from "./ampacity/sizes-tabulated.js";
export { type AppliedFactor, type StretchAmpacity } from "./ampacity/stretch-ampacity.js";
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
export { conductorLimits } from "./ampacity/iec/table-52-1.js";
export { ambientBehindModules, conductorLimitFactor, pvAmbientFactor } from "./ampacity/pv/ambient.js";
export { usualConductorLimit } from "./ampacity/pv/ampacity.js";
export { en50618_2014_a_3 } from "./ampacity/pv/en-50618-a-3.js";
export { en50618_2014_a_4 } from "./ampacity/pv/en-50618-a-4.js";
export { conductorLoss, totalLoss, lossShare } from "./loss/loss.js";
export { temperatureCoefficientsAt20, resistivitiesAt20 } from "./resistance/metals.js";
export { inParallel } from "./resistance/parallel.js";
export { conductorProperties, type ConductorProperties, type PropertiesRequest } from "./resistance/properties.js";
export { usualReactance } from "./resistance/reactance.js";
export { resistanceAtTemperature, resistanceAt20, conductorTemperatureAtLoad } from "./resistance/temperature.js";
export { iec60228_2004_class1 } from "./resistance/iec/class-1.js";
export { iec60228_2004_class2 } from "./resistance/iec/class-2.js";
export { iec60228_2004_class5 } from "./resistance/iec/class-5.js";
export { awgArea } from "./size/awg-area.js";
export { iec60228_2004_sections } from "./size/iec-sections.js";
export { nfpa70_2017_sizes } from "./size/nfpa-sizes.js";
export { sizesFor, readSize, sizeName } from "./size/size.js";
export { withinAmpacity, sizeTabulated, sectionAtLeastMinimum, terminalHoldsSmall, terminalHoldsLarge, terminalTakesMetal, conductorCoolAtTerminal } from "./sizing/conditions.js";
export { hottestStretch } from "./sizing/hottest.js";
export { minimumSections } from "./sizing/minimum-sections.js";
export { stretchTemperature, routeTemperature } from "./sizing/route-temperature.js";
export { sizeConductor, type SizingRequest, type SizedConductor } from "./sizing/size-conductor.js";
export { type Terminal } from "./sizing/terminal.js";
export { directCurrentDrop, twoConductorDrop, threePhaseDrop } from "./voltage/drop.js";
export { circuitKinds, loadedConductors, routeVoltageChange, type CircuitKind, type RoutePart, type PartChange, type RouteVoltageChange, type RouteRequest } from "./voltage/route.js";
export { routeDrop, voltageChangeShare } from "./voltage/share.js";
