// k = 1.380649e-23 J/K and q = 1.602176634e-19 C, both exact since 2019 (CODATA 2018).
/** Boltzmann constant over the elementary charge, V/K. @internal */
export const BOLTZMANN_PER_CHARGE = 1.380649 / 16021.76634;
/** @internal */
export const ABSOLUTE_ZERO = -273.15;
/** Temperature of standard test conditions, °C. @internal */
export const STC_TEMPERATURE = 25;
/** Irradiance of standard test conditions, W/m². @internal */
export const STC_IRRADIANCE = 1000;
/** Band gap of silicon at 25 °C, eV (De Soto 2006, read in copies of two origins). @internal */
export const BAND_GAP = 1.121;
/** Relative fall of the band gap of silicon, 1/K (the same). @internal */
export const BAND_GAP_SLOPE = 0.0002677;

/** Cell temperature in kelvin. @internal */
export function kelvin(celsius: number): number {
  return celsius - ABSOLUTE_ZERO;
}
