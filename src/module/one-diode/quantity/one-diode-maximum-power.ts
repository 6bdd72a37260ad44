import { model } from "../../../formula/index.js";
import { diodePoints } from "../diode-points.js";
import { diodeOf } from "./from-quantities.js";

/**
 * Maximum power of a one-diode model.
 *
 * @function
 * @example
 * ```ts
 * import { oneDiodeMaximumPower } from "pv-to-grid/module";
 * const cell = { photocurrent: "0.760776 A", saturationCurrent: "3.23021e-7 A", diodeFactor: "1.481184", cellsInSeries: 1, seriesResistance: "0.036377 ohm", shuntResistance: "53.718526 ohm", cellTemperature: "33 °C" };
 * oneDiodeMaximumPower({ ...cell }).show(); // "0.3107 W"
 * ```
 */
export const oneDiodeMaximumPower = /* @__PURE__ */ model(
  {
    id: "module/one-diode-maximum-power",
    about: "maximum power of a one-diode model",
    takes: {
      photocurrent: { unit: "A", symbol: "I_L", about: "photocurrent", from: 0, to: 100000 },
      saturationCurrent: { unit: "A", symbol: "I_0", about: "saturation current", above: 0, to: 1 },
      diodeFactor: { unit: "1", symbol: "n", about: "diode factor of one cell", from: 0.5, to: 5 },
      cellsInSeries: { unit: "1", symbol: "N_s", about: "cells in series", from: 1, to: 100000 },
      seriesResistance: { unit: "Ω", symbol: "R_s", about: "series resistance", from: 0, to: 1000 },
      shuntResistance: { unit: "Ω", symbol: "R_sh", about: "shunt resistance", above: 0, to: 1000000000000 },
      cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", from: -100, to: 150, usual: [-50, 95] },
    },
    gives: { unit: "W", symbol: "P_max" },
    digits: 9,
    method: "one-diode model in double precision, solved in a bracket",
    source: [
      { in: "Easwarakhanthan:1986", clause: "one-diode equation", grade: "copied", seen: "Benchmark arrays file:undated" },
      { in: "De Soto:2006", clause: "one-diode equation", grade: "copied", seen: "Solar engineering functions:undated" },
    ],
  },
  (printed) => diodePoints(diodeOf(printed)).maximumPower,
);
