import { model } from "../../../formula/index.js";
import { diodeCurrent } from "../diode-current.js";
import { diodeOf } from "./from-quantities.js";

/**
 * Current of a one-diode model at a voltage.
 *
 * @function
 * @example
 * ```ts
 * import { oneDiodeCurrent } from "pv-to-grid/module";
 * const cell = { photocurrent: "0.760776 A", saturationCurrent: "3.23021e-7 A", diodeFactor: "1.481184", cellsInSeries: 1, seriesResistance: "0.036377 ohm", shuntResistance: "53.718526 ohm", cellTemperature: "33 °C" };
 * oneDiodeCurrent({ ...cell, voltage: "0.45 V" }).show(); // "0.6903 A"
 * ```
 */
export const oneDiodeCurrent = /* @__PURE__ */ model(
  {
    id: "module/one-diode-current",
    about: "current of a one-diode model at a voltage",
    takes: {
      photocurrent: { unit: "A", symbol: "I_L", about: "photocurrent", from: 0, to: 100000 },
      saturationCurrent: { unit: "A", symbol: "I_0", about: "saturation current", above: 0, to: 1 },
      diodeFactor: { unit: "1", symbol: "n", about: "diode factor of one cell", from: 0.5, to: 5 },
      cellsInSeries: { unit: "1", symbol: "N_s", about: "cells in series", from: 1, to: 100000 },
      seriesResistance: { unit: "Ω", symbol: "R_s", about: "series resistance", from: 0, to: 1000 },
      shuntResistance: { unit: "Ω", symbol: "R_sh", about: "shunt resistance", above: 0, to: 1000000000000 },
      cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", from: -100, to: 150, usual: [-50, 95] },
      voltage: { unit: "V", symbol: "U", about: "voltage at the terminals", from: -10000, to: 10000 },
    },
    gives: { unit: "A", symbol: "I" },
    digits: 9,
    method: "one-diode model in double precision, solved in a bracket",
    source: [
      { in: "Easwarakhanthan:1986", clause: "one-diode equation", grade: "copied", seen: "Benchmark arrays file:undated" },
      { in: "De Soto:2006", clause: "one-diode equation", grade: "copied", seen: "Solar engineering functions:undated" },
    ],
  },
  (printed) => diodeCurrent(diodeOf(printed), printed.voltage),
);
