import { formula } from "../../formula/index.js";

/**
 * Open-circuit voltage at standard test conditions over that at an irradiance, IEC 60891 (2021).
 *
 * @function
 * @example
 * ```ts
 * import { openCircuitVoltageRatio } from "pv-to-grid/module";
 * openCircuitVoltageRatio({ irradiance: "1000 W/m2", linearIrradianceFactor: "0.06", quadraticIrradianceFactor: "0.002" }).text; // "1"
 * ```
 */
export const openCircuitVoltageRatio = /* @__PURE__ */ formula({
  id: "module/open-circuit-voltage-ratio",
  about: "open-circuit voltage at standard test conditions over that at an irradiance, IEC 60891 (2021)",
  takes: {
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [1, 1500] },
    linearIrradianceFactor: { unit: "1", symbol: "B_1", about: "linear irradiance correction factor of the open-circuit voltage", from: -1, to: 1 },
    quadraticIrradianceFactor: { unit: "1", symbol: "B_2", about: "quadratic irradiance correction factor of the open-circuit voltage", from: -1, to: 1 },
  },
  constants: {
    stcIrradiance: { value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions", source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "f(G)" },
  expression: "quadraticIrradianceFactor * log(stcIrradiance / irradiance) ^ 2 + linearIrradianceFactor * log(stcIrradiance / irradiance) + 1",
  source: [{ in: "IEC 60891:2021", clause: "correction procedure 2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked corrections of single points with all parameters printed" },
  note: "recalled, not read from the standard; read the standard before an acceptance test depends on it",
});
