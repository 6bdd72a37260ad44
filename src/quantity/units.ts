/**
 * The units, each with its kind of quantity, its exact ratio to the first unit of that kind, and its ASCII spellings.
 * A ratio is a rational number as text. `pi` marks one that is a rational number times π.
 * Kinds that share a physical dimension but never convert (active, reactive and apparent power; tabulated drop and
 * resistance) are kinds of their own.
 */
export const units = {
  V: ["voltage", "1"],
  kV: ["voltage", "1000"],
  mV: ["voltage", "1/1000"],
  A: ["current", "1"],
  kA: ["current", "1000"],
  mA: ["current", "1/1000"],
  W: ["activePower", "1"],
  kW: ["activePower", "1000"],
  MW: ["activePower", "1000000"],
  VA: ["apparentPower", "1"],
  kVA: ["apparentPower", "1000"],
  MVA: ["apparentPower", "1000000"],
  var: ["reactivePower", "1"],
  kvar: ["reactivePower", "1000"],
  Wh: ["energy", "1"],
  kWh: ["energy", "1000"],
  Ω: ["resistance", "1", "ohm"],
  mΩ: ["resistance", "1/1000", "mohm"],
  kΩ: ["resistance", "1000", "kohm"],
  MΩ: ["resistance", "1000000", "Mohm"],
  "Ω/m": ["resistancePerLength", "1", "ohm/m"],
  "Ω/km": ["resistancePerLength", "1/1000", "ohm/km"],
  "mΩ/m": ["resistancePerLength", "1/1000", "mohm/m"],
  "Ω/kft": ["resistancePerLength", "10/3048", "ohm/kft"],
  "Ω·m": ["resistivity", "1", "ohm*m"],
  "Ω·mm²/m": ["resistivity", "1/1000000", "ohm*mm2/m"],
  "Ω·cm": ["resistivity", "1/100", "ohm*cm"],
  "Ω·mm": ["resistivity", "1/1000", "ohm*mm"],
  "μΩ·cm": ["resistivity", "1/100000000", "uohm*cm"],
  "m/(Ω·mm²)": ["conductivity", "1", "m/(ohm*mm2)"],
  "mV/(A·m)": ["tabulatedDrop", "1", "mV/(A*m)", "mV/A/m"],
  m: ["length", "1"],
  km: ["length", "1000"],
  mm: ["length", "1/1000"],
  ft: ["length", "3048/10000"],
  in: ["length", "254/10000"],
  "mm²": ["area", "1", "mm2"],
  "m²": ["area", "1000000", "m2"],
  cmil: ["area", "64516/400000000", "circular mil", "pi"],
  kcmil: ["area", "64516/400000", "pi"],
  s: ["time", "1"],
  min: ["time", "60"],
  h: ["time", "3600"],
  a: ["years", "1"],
  Hz: ["frequency", "1"],
  "Hz/s": ["frequencyRate", "1"],
  "1": ["ratio", "1"],
  "%": ["ratio", "1/100"],
  "p.u.": ["ratio", "1"],
  "°C": ["temperature", "1", "degC"],
  "°F": ["temperature", "5/9", "degF"],
  K: ["temperatureDifference", "1"],
  "1/K": ["relativeTemperatureCoefficient", "1"],
  "%/K": ["relativeTemperatureCoefficient", "1/100"],
  "1/°C": ["relativeTemperatureCoefficient", "1", "1/degC"],
  "%/°C": ["relativeTemperatureCoefficient", "1/100", "%/degC"],
  "V/K": ["voltageTemperatureCoefficient", "1"],
  "mV/K": ["voltageTemperatureCoefficient", "1/1000"],
  "V/°C": ["voltageTemperatureCoefficient", "1", "V/degC"],
  "mV/°C": ["voltageTemperatureCoefficient", "1/1000", "mV/degC"],
  "A/K": ["currentTemperatureCoefficient", "1"],
  "mA/K": ["currentTemperatureCoefficient", "1/1000"],
  "A/°C": ["currentTemperatureCoefficient", "1", "A/degC"],
  "mA/°C": ["currentTemperatureCoefficient", "1/1000", "mA/degC"],
  "W/K": ["powerTemperatureCoefficient", "1"],
  "W/°C": ["powerTemperatureCoefficient", "1", "W/degC"],
  "W/m²": ["irradiance", "1", "W/m2"],
  "kW/m²": ["irradiance", "1000", "kW/m2"],
  "kWh/m²": ["irradiation", "1", "kWh/m2"],
  "m/s": ["speed", "1"],
  "A²s": ["jouleIntegral", "1", "A2s"],
  "K·m/W": ["thermalResistivity", "1", "K*m/W"],
  "W/(m²·K)": ["heatTransfer", "1", "W/(m2*K)"],
  "W·s/(m³·K)": ["windHeatTransfer", "1", "W*s/(m3*K)"],
  "J/(K·mm³)": ["volumetricHeatCapacity", "1", "J/(K*mm3)"],
  "J/(K·cm³)": ["volumetricHeatCapacity", "1/1000", "J/(K*cm3)"],
  "A·√s/mm²": ["adiabaticFactor", "1", "A*sqrt(s)/mm2"],
  "mm²/(A·√s)": ["fusingFactor", "1", "mm2/(A*sqrt(s))"],
  "kcmil/(kA·√s)": ["fusingFactor", "64516/400000000", "kcmil/(kA*sqrt(s))", "pi"],
  "cmil/(A·√s)": ["fusingFactor", "64516/400000000", "cmil/(A*sqrt(s))", "pi"],
  "A/m²": ["currentDensity", "1", "A/m2"],
  deg: ["angle", "1", "°"],
  rad: ["angle", "180", "pi-below"],
  "1/(km²·a)": ["flashDensity", "1", "1/(km2*a)"],
  "%/min": ["ramp", "1"],
  "%/Hz": ["droop", "1"],
  "%/m": ["relativeLengthRate", "1"],
  money: ["money", "1"],
  "money/kWh": ["energyPrice", "1"],
  "money/m": ["lengthPrice", "1"],
} as const;

type Units = typeof units;

/** Every unit symbol that the library knows. */
export type Unit = keyof Units;

/** Every kind of quantity: units of one kind convert to each other, units of two kinds never do. */
export type Dimension = Units[Unit][0];

/** The kind of quantity that a unit measures. */
export type DimensionOf<U extends Unit> = Units[U][0];

/** The units of one kind of quantity. */
export type UnitOf<D extends Dimension> = UnitsByDimension[D];

// A lookup by key lets the compiler see that a quantity of one kind is a quantity.
type UnitsByDimension = { readonly [D in Dimension]: { [U in Unit]: Units[U][0] extends D ? U : never }[Unit] };

/** Zero points, in the unit itself, of the two units that have one apart from their kind's first unit. */
export const zeroPoints: { readonly [U in Unit]?: string } = { "°F": "32" };
