import { all, type BigNumber, create, type Unit as MathUnit } from "mathjs";
import { type Dimension, type Unit, units } from "../../src/quantity/index.js";

const PRECISION = 64;
const EQUAL = 1e-40;

export const math = create(all!, { number: "BigNumber", precision: PRECISION, relTol: EQUAL, absTol: EQUAL });
// Kinds that physics does not know, or that must not mix with what it does.
math.createUnit("yearOfPlant");
math.createUnit("coin");
math.createUnit("degreeOfArc");

/** A value of a physical kind, or a plain number where the kind is a ratio. */
export type Value = MathUnit | BigNumber;

/**
 * The first unit of each kind as a number of units that mathjs knows. Active, reactive and apparent power are all V·A here:
 * rules of the trade turn one into another, and that they do not convert is the business of inputs.
 */
const kinds: { readonly [D in Dimension]: readonly [string, string] } = {
  voltage: ["1", "V"],
  current: ["1", "A"],
  activePower: ["1", "V A"],
  apparentPower: ["1", "V A"],
  reactivePower: ["1", "V A"],
  energy: ["3600", "V A s"],
  resistance: ["1", "V/A"],
  resistancePerLength: ["1", "V/A/m"],
  resistivity: ["1", "V m/A"],
  conductivity: ["1e6", "A/(V m)"],
  tabulatedDrop: ["1e-3", "V/A/m"],
  length: ["1", "m"],
  area: ["1e-6", "m^2"],
  time: ["1", "s"],
  years: ["1", "yearOfPlant"],
  frequency: ["1", "s^-1"],
  frequencyRate: ["1", "s^-2"],
  ratio: ["1", ""],
  temperature: ["1", "K"],
  temperatureDifference: ["1", "K"],
  relativeTemperatureCoefficient: ["1", "K^-1"],
  voltageTemperatureCoefficient: ["1", "V/K"],
  powerTemperatureCoefficient: ["1", "V A/K"],
  currentTemperatureCoefficient: ["1", "A/K"],
  irradiance: ["1", "V A/m^2"],
  irradiation: ["3.6e6", "V A s/m^2"],
  speed: ["1", "m/s"],
  jouleIntegral: ["1", "A^2 s"],
  thermalResistivity: ["1", "K m/(V A)"],
  heatTransfer: ["1", "V A/(m^2 K)"],
  windHeatTransfer: ["1", "V A s/(m^3 K)"],
  volumetricHeatCapacity: ["1e9", "V A s/(K m^3)"],
  adiabaticFactor: ["1e6", "A s^0.5/m^2"],
  currentDensity: ["1", "A/m^2"],
  fusingFactor: ["1e-6", "m^2/(A s^0.5)"],
  angle: ["1", "degreeOfArc"],
  flashDensity: ["1e-6", "m^-2 yearOfPlant^-1"],
  ramp: ["0.01 / 60", "s^-1"],
  droop: ["0.01", "s"],
  relativeLengthRate: ["0.01", "m^-1"],
  money: ["1", "coin"],
  energyPrice: ["1 / 3.6e6", "coin/(V A s)"],
  lengthPrice: ["1", "coin/m"],
};

/** Zero points of temperatures in kelvin. */
const zeroPoints: { readonly [U in Unit]?: string } = { "°C": "273.15", "°F": "273.15 - 32 * 5 / 9" };

const number = (expression: string): BigNumber => math.evaluate(expression) as BigNumber;

function measureOf(unit: Unit): { readonly scale: BigNumber; readonly zero: BigNumber; readonly name: string } {
  const [kind, ratio, ...marks] = units[unit] as readonly [Dimension, string, ...string[]];
  const turns = marks.includes("pi") ? "* pi" : marks.includes("pi-below") ? "/ pi" : "";
  const [scale, name] = kinds[kind];
  return { scale: number(`${scale} * (${ratio}) ${turns}`), zero: number(zeroPoints[unit] ?? "0"), name };
}

/** A bare number in a unit as a value; a temperature enters as kelvin from absolute zero. */
export function valueOf(bare: string, unit: Unit): Value {
  const { scale, zero, name } = measureOf(unit);
  const size = math.bignumber(bare).times(scale).plus(zero);
  return name === "" ? size : math.unit(size, name);
}

/** The bare number of a value in a unit; throws where the value is of another kind. */
export function bareIn(value: Value, unit: Unit): BigNumber {
  const { scale, zero, name } = measureOf(unit);
  if (name === "") {
    if (!math.isBigNumber(value)) throw new TypeError(`${value.toString()} is no plain number`);
    return value.div(scale);
  }
  if (math.isBigNumber(value)) throw new TypeError(`a plain number is no value in ${unit}`);
  return math
    .bignumber(value.toNumeric(name) as BigNumber)
    .minus(zero)
    .div(scale);
}
