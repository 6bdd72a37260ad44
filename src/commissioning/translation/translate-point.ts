import {
  openCircuitVoltageRatio,
  procedure1Current,
  procedure1Voltage,
  procedure2Current2009,
  procedure2Current2021,
  procedure2Voltage2009,
  procedure2Voltage2021,
  seriesResistanceAt,
} from "../../module/index.js";
import type { Grade } from "../../source/index.js";
import type { Quantity } from "../../quantity/index.js";
import { pointByPointCurrent, pointByPointVoltage } from "./point-by-point.js";

/** The procedures by which a measured point is brought to another irradiance and temperature. */
export const translationProcedures = [
  {
    key: "procedure 1",
    label: "IEC 60891 procedure 1: absolute coefficients of the measured object",
    edition: "IEC 60891:2021",
    grade: "memory",
  },
  {
    key: "procedure 2 of 2009",
    label: "IEC 60891 procedure 2 of the second edition: relative coefficients, logarithm of the irradiance",
    edition: "IEC 60891:2009",
    grade: "memory",
  },
  {
    key: "procedure 2 of 2021",
    label: "IEC 60891 procedure 2 of the third edition: ratio of open-circuit voltages",
    edition: "IEC 60891:2021",
    grade: "memory",
  },
  {
    key: "point by point",
    label: "ratios of I_SC and U_OC applied to each point, the practice of ASTM E1036",
    edition: "Anderson:1996",
    grade: "memory",
  },
] as const satisfies readonly { key: string; label: string; edition: string; grade: Grade }[];

type CurrentOf1 = Parameters<typeof procedure1Current>[0];
type VoltageOf1 = Omit<Parameters<typeof procedure1Voltage>[0], "correctedCurrent">;
type CurrentOf2009 = Parameters<typeof procedure2Current2009>[0];
type VoltageOf2009 = Omit<Parameters<typeof procedure2Voltage2009>[0], "correctedCurrent">;
type CurrentOf2021 = Parameters<typeof procedure2Current2021>[0];
type VoltageOf2021 = Omit<
  Parameters<typeof procedure2Voltage2021>[0],
  "correctedCurrent" | "measuredVoltageRatio" | "targetVoltageRatio" | "measuredSeriesResistance"
>;
type RatioOf2021 = Omit<Parameters<typeof openCircuitVoltageRatio>[0], "irradiance">;
type ResistanceOf2021 = Omit<Parameters<typeof seriesResistanceAt>[0], "cellTemperature">;
type CurrentByPoint = Parameters<typeof pointByPointCurrent>[0];
type VoltageByPoint = Parameters<typeof pointByPointVoltage>[0];

/** A measured point, where it is to be brought, and the parameters of the measured object: of the string, not of one module. */
export type PointToTranslate =
  | ({ readonly procedure: "procedure 1" } & CurrentOf1 & VoltageOf1)
  | ({ readonly procedure: "procedure 2 of 2009" } & CurrentOf2009 & VoltageOf2009)
  | ({ readonly procedure: "procedure 2 of 2021" } & CurrentOf2021 & VoltageOf2021 & RatioOf2021 & ResistanceOf2021)
  | ({ readonly procedure: "point by point" } & CurrentByPoint & VoltageByPoint);

/** A point of a curve. */
export interface TranslatedPoint {
  readonly voltage: Quantity<"voltage">;
  readonly current: Quantity<"current">;
}

/**
 * A measured point of a curve at another irradiance and cell temperature.
 *
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { translatePoint } from "pv-to-grid/commissioning";
 * translatePoint({
 *   procedure: "point by point", measuredVoltage: "30 V", measuredCurrent: "7 A", measuredIrradiance: "800 W/m2", targetIrradiance: "1000 W/m2",
 *   measuredTemperature: "45 °C", targetTemperature: "25 °C", shortCircuitCurrentCoefficient: "0.05 %/K", openCircuitVoltageCoefficient: "-0.3 %/K", irradianceFactor: "0.06",
 * }).current.text; // "8.6625"
 * ```
 */
export function translatePoint(point: PointToTranslate): TranslatedPoint {
  const {
    measuredVoltage,
    measuredCurrent,
    measuredIrradiance,
    targetIrradiance,
    measuredTemperature,
    targetTemperature,
  } = point;
  const measured = { measuredCurrent, measuredIrradiance, targetIrradiance, measuredTemperature, targetTemperature };
  switch (point.procedure) {
    case "procedure 1": {
      const {
        measuredShortCircuitCurrent,
        absoluteCurrentCoefficient,
        absoluteVoltageCoefficient,
        seriesResistance,
        curveCorrection,
      } = point;
      const current = procedure1Current({ ...measured, measuredShortCircuitCurrent, absoluteCurrentCoefficient });
      const voltage = procedure1Voltage({
        measuredVoltage,
        measuredCurrent,
        correctedCurrent: current,
        measuredTemperature,
        targetTemperature,
        absoluteVoltageCoefficient,
        seriesResistance,
        curveCorrection,
      });
      return Object.freeze({ voltage, current });
    }
    case "procedure 2 of 2009": {
      const {
        measuredOpenCircuitVoltage,
        shortCircuitCurrentCoefficient,
        openCircuitVoltageCoefficient,
        irradianceFactor,
        seriesResistance,
        curveCorrection,
      } = point;
      const current = procedure2Current2009({ ...measured, shortCircuitCurrentCoefficient });
      const voltage = procedure2Voltage2009({
        ...measured,
        measuredVoltage,
        correctedCurrent: current,
        measuredOpenCircuitVoltage,
        openCircuitVoltageCoefficient,
        irradianceFactor,
        seriesResistance,
        curveCorrection,
      });
      return Object.freeze({ voltage, current });
    }
    case "procedure 2 of 2021":
      return by2021(point);
    case "point by point": {
      const { shortCircuitCurrentCoefficient, openCircuitVoltageCoefficient, irradianceFactor } = point;
      const current = pointByPointCurrent({ ...measured, shortCircuitCurrentCoefficient });
      const voltage = pointByPointVoltage({
        measuredIrradiance,
        targetIrradiance,
        measuredTemperature,
        targetTemperature,
        measuredVoltage,
        openCircuitVoltageCoefficient,
        irradianceFactor,
      });
      return Object.freeze({ voltage, current });
    }
  }
}

function by2021(point: Extract<PointToTranslate, { procedure: "procedure 2 of 2021" }>): TranslatedPoint {
  const {
    measuredVoltage,
    measuredCurrent,
    measuredIrradiance,
    targetIrradiance,
    measuredTemperature,
    targetTemperature,
  } = point;
  const {
    shortCircuitCurrentCoefficient,
    openCircuitVoltageCoefficient,
    openCircuitVoltage,
    curveCorrection,
    seriesResistance,
  } = point;
  const { linearIrradianceFactor, quadraticIrradianceFactor } = point;
  const factors = { linearIrradianceFactor, quadraticIrradianceFactor };
  const current = procedure2Current2021({
    measuredCurrent,
    measuredIrradiance,
    targetIrradiance,
    measuredTemperature,
    targetTemperature,
    shortCircuitCurrentCoefficient,
  });
  const voltage = procedure2Voltage2021({
    measuredVoltage,
    measuredCurrent,
    correctedCurrent: current,
    openCircuitVoltage,
    measuredVoltageRatio: openCircuitVoltageRatio({ ...factors, irradiance: measuredIrradiance }),
    targetVoltageRatio: openCircuitVoltageRatio({ ...factors, irradiance: targetIrradiance }),
    measuredTemperature,
    targetTemperature,
    openCircuitVoltageCoefficient,
    measuredSeriesResistance: seriesResistanceAt({
      seriesResistance,
      curveCorrection,
      cellTemperature: measuredTemperature,
    }),
    curveCorrection,
  });
  return Object.freeze({ voltage, current });
}
