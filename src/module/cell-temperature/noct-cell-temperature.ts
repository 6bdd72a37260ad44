import { formula } from "../../formula/index.js";

/**
 * Cell temperature from the nominal operating cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { noctCellTemperature } from "pv-to-grid/module";
 * noctCellTemperature({ ambient: "40 °C", nominalOperatingCellTemperature: "48 °C", irradiance: "1000 W/m2" }).text; // "75"
 * ```
 */
export const noctCellTemperature = /* @__PURE__ */ formula({
  id: "module/noct-cell-temperature",
  about: "cell temperature from the nominal operating cell temperature",
  takes: {
    ambient: { unit: "°C", symbol: "T_a", about: "ambient air temperature", above: -100, to: 70, usual: [-50, 60] },
    nominalOperatingCellTemperature: { unit: "°C", symbol: "NOCT", about: "nominal operating cell temperature", above: 20, to: 90, usual: [30, 60] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", from: 0, to: 2000, usual: [1, 1500] },
  },
  constants: {
    noctAmbient: {
      value: "20", unit: "°C", symbol: "T_a,NOCT", about: "ambient of the nominal operating cell temperature",
      source: [{ in: "Häberlin:2012", clause: "equation 4.1", grade: "reproduced", seen: "Häberlin examples page:undated, problem 1" }],
    },
    noctIrradiance: {
      value: "800", unit: "W/m²", symbol: "G_NOCT", about: "irradiance of the nominal operating cell temperature",
      source: [{ in: "Häberlin:2012", clause: "equation 4.1", grade: "reproduced", seen: "Häberlin examples page:undated, problem 1" }],
    },
  },
  gives: { unit: "°C", symbol: "T_c" },
  expression: "ambient + (nominalOperatingCellTemperature - noctAmbient) * irradiance / noctIrradiance",
  source: [
    { in: "Häberlin:2012", clause: "equation 4.1", grade: "reproduced", seen: "Häberlin examples page:undated, problem 1" },
  ],
  note: "open rack, about 1 m/s of wind, module at open circuit, steady state",
});
