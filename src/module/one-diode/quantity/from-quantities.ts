import { type OneDiode, oneDiode } from "../one-diode.js";
import { BOLTZMANN_PER_CHARGE, kelvin } from "../physics.js";

/** The parameters as datasheets and textbooks print them. @internal */
export interface PrintedDiode {
  readonly photocurrent: number;
  readonly saturationCurrent: number;
  readonly diodeFactor: number;
  readonly cellsInSeries: number;
  readonly seriesResistance: number;
  readonly shuntResistance: number;
  readonly cellTemperature: number;
}

/** The diode of printed parameters: n·N_s·k·T/q is the voltage of its exponent. @internal */
export function diodeOf(printed: PrintedDiode): OneDiode {
  const {
    photocurrent,
    saturationCurrent,
    seriesResistance,
    shuntResistance,
    diodeFactor,
    cellsInSeries,
    cellTemperature,
  } = printed;
  const exponentVoltage = diodeFactor * cellsInSeries * BOLTZMANN_PER_CHARGE * kelvin(cellTemperature);
  return oneDiode({ photocurrent, saturationCurrent, seriesResistance, shuntResistance, exponentVoltage });
}
