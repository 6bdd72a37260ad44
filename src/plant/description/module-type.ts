import * as z from "zod/mini";
import { choice, fact, finding, note, perhaps, perhapsOneOf, statedIn } from "./fields.js";

/** A module type as its datasheet gives it, at standard test conditions. */
export const moduleTypeSchema = z.strictObject({
  statedIn,
  maximumPower: fact("W", "maximum power P_max", { above: 0, usual: [5, 1000] }),
  openCircuitVoltage: fact("V", "open-circuit voltage U_OC", { above: 0, usual: [0.5, 200] }),
  shortCircuitCurrent: fact("A", "short-circuit current I_SC", { above: 0, usual: [0.1, 30] }),
  mppVoltage: fact("V", "voltage at maximum power U_MPP", { above: 0, usual: [0.4, 180] }),
  mppCurrent: fact("A", "current at maximum power I_MPP", { above: 0, usual: [0.1, 30] }),
  openCircuitVoltageCoefficient: fact(["1/K", "V/K"], "temperature coefficient of U_OC", { usual: [-0.006, -0.001] }),
  shortCircuitCurrentCoefficient: finding(["1/K", "A/K"], "temperature coefficient of I_SC", {
    usual: [-0.001, 0.002],
  }),
  mppCurrentCoefficient: finding(["1/K", "A/K"], "temperature coefficient of I_MPP", { usual: [-0.002, 0.002] }),
  maximumPowerCoefficient: finding(["1/K"], "temperature coefficient of P_max", { usual: [-0.007, -0.001] }),
  mppVoltageCoefficient: finding(["1/K", "V/K"], "temperature coefficient of U_MPP", { usual: [-0.007, -0.001] }),
  maximumSystemVoltage: finding("V", "largest system voltage", { above: 0, usual: [50, 2000] }),
  maximumSeriesFuse: finding("A", "largest overcurrent protection rating", { above: 0, usual: [1, 60] }),
  cellsInSeries: finding("1", "cells in series", { from: 1, to: 1000 }),
  technology: perhapsOneOf(["crystalline silicon", "thin film"], "cell technology"),
  nominalOperatingCellTemperature: finding("°C", "cell temperature at 800 W/m², 20 °C and 1 m/s", {
    above: 20,
    to: 80,
  }),
  protectionClass: perhapsOneOf(["0", "II", "III"], "class of protection against electric shock"),
  bifacial: perhaps("whether the rear yields as well"),
  bifacialityOfCurrent: finding("1", "bifaciality of the short-circuit current", { above: 0, to: 1 }),
  bifacialityOfPower: finding("1", "bifaciality of the maximum power", { above: 0, to: 1 }),
  rearIrradiance: finding("W/m²", "irradiance on the rear to design for", { from: 0, to: 1000 }),
  powerToleranceLow: finding("1", "lower tolerance of P_max, as a share", { from: -0.2, to: 0.2 }),
  powerToleranceHigh: finding("1", "upper tolerance of P_max, as a share", { from: -0.2, to: 0.2 }),
  connector: note("make and type of the connectors"),
  connectorRating: finding("A", "rated current of the connectors", { above: 0, usual: [5, 100] }),
  connectorVoltage: finding("V", "rated voltage of the connectors", { above: 0, usual: [50, 2000] }),
});

/** A roof or rack: equal modules in one plane. */
export const roofSchema = z.strictObject({
  name: z.string().check(z.minLength(1), z.meta({ description: "name of the roof", role: "fact" })),
  moduleType: z.string().check(z.minLength(1), z.meta({ description: "key of its module type", role: "fact" })),
  modules: z.int().check(z.gte(1), z.lte(1_000_000), z.meta({ description: "number of modules", role: "fact" })),
  tilt: finding("deg", "tilt against the horizontal", { from: 0, to: 90 }),
  azimuth: finding("deg", "direction that it faces, clockwise from north", { from: 0, below: 360 }),
  mounting: perhapsOneOf(
    ["open rack", "close roof mount", "insulated back"],
    "how the modules are cooled: open rack, close to a roof, or built in",
  ),
  hottestCell: finding("°C", "hottest cell temperature to design for, where it is known better than by the mounting", {
    from: 0,
    to: 120,
  }),
  bondingConductor: choice("mm²", "bonding conductor of the modules' metalwork, copper", { above: 0, usual: [1, 100] }),
  lightningDistance: finding("m", "distance of the metalwork from the lightning protection system", {
    from: 0,
    usual: [0, 100],
  }),
  wind: finding("m/s", "wind speed of the hot design case", { from: 0, to: 30 }),
  statedIn,
});
