import { formula } from "../../formula/index.js";

/**
 * Adiabatic factor of a conductor material before its temperatures are known. @function
 *
 * @example
 * ```ts
 * import { adiabaticPrefactor } from "pv-to-grid/earthing";
 * adiabaticPrefactor({ heatCapacity: "0.00345", reciprocalCoefficient: "234.5 K", resistivity: "0.017241" }).show({ digits: 4 }); // "225.7 A·√s/mm²"
 * ```
 */
export const adiabaticPrefactor = /* @__PURE__ */ formula({
  id: "earthing/adiabatic-prefactor",
  about: "adiabatic factor of a conductor material before its temperatures are known",
  takes: {
    heatCapacity: { unit: "J/(K·mm³)", symbol: "Q_c", about: "volumetric heat capacity of the conductor material at 20 °C", above: 0, usual: [0.001, 0.005] },
    reciprocalCoefficient: { unit: "K", symbol: "β", about: "reciprocal of the temperature coefficient of resistivity at 0 °C", above: 0, usual: [150, 300] },
    resistivity: { unit: "Ω·mm²/m", symbol: "ρ_20", about: "resistivity of the conductor material at 20 °C", above: 0, usual: [0.01, 0.3] },
  },
  constants: {
    resistivityReference: {
      value: "20", unit: "°C", symbol: "θ_20", about: "temperature at which the resistivity is stated",
      source: [{ in: "IEC 60364-5-54:2011", clause: "annex A", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
    },
    freezingPoint: {
      value: "0", unit: "°C", symbol: "0 °C", about: "temperature from which the reciprocal coefficient counts",
      source: [{ in: "IEC 60364-5-54:2011", clause: "annex A", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
    },
    thousandMillimetres: {
      value: "1000", unit: "mm", symbol: "1000 mm", about: "a metre in millimetres",
      source: [{ in: "common practice", clause: "definition of the millimetre", grade: "common-practice" }],
    },
    oneMetre: {
      value: "1", unit: "m", symbol: "1 m", about: "a metre",
      source: [{ in: "common practice", clause: "definition of the metre", grade: "common-practice" }],
    },
  },
  gives: { unit: "A·√s/mm²", symbol: "K" },
  expression: "sqrt(heatCapacity * (reciprocalCoefficient + (resistivityReference - freezingPoint)) / resistivity * thousandMillimetres / oneMetre)",
  source: [
    { in: "IEC 60364-5-54:2011", clause: "annex A, formula of k", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" },
  ],
  unproven: { because: "no publication found", sought: "prefactor worked from material constants; only uploads were found, besides the table that follows the law" },
});

/**
 * Adiabatic factor of a conductor from its material and its temperatures before and after the fault. @function
 *
 * @example
 * ```ts
 * import { adiabaticFactorOf } from "pv-to-grid/earthing";
 * adiabaticFactorOf({ heatCapacity: "0.00345", reciprocalCoefficient: "234.5 K", resistivity: "0.017241", initialTemperature: "70 °C", finalTemperature: "160 °C" }).show({ digits: 5 }); // "114.84 A·√s/mm²"
 * ```
 */
export const adiabaticFactorOf = /* @__PURE__ */ formula({
  id: "earthing/adiabatic-factor-of",
  about: "adiabatic factor of a conductor from its material and its temperatures before and after the fault",
  takes: {
    heatCapacity: { unit: "J/(K·mm³)", symbol: "Q_c", about: "volumetric heat capacity of the conductor material at 20 °C", above: 0, usual: [0.001, 0.005] },
    reciprocalCoefficient: { unit: "K", symbol: "β", about: "reciprocal of the temperature coefficient of resistivity at 0 °C", above: 0, usual: [150, 300] },
    resistivity: { unit: "Ω·mm²/m", symbol: "ρ_20", about: "resistivity of the conductor material at 20 °C", above: 0, usual: [0.01, 0.3] },
    initialTemperature: { unit: "°C", symbol: "θ_i", about: "conductor temperature before the fault", above: -100, below: 400, usual: [-20, 200] },
    finalTemperature: { unit: "°C", symbol: "θ_f", about: "conductor temperature at the end of the fault", above: -50, to: 1600, usual: [100, 1200] },
  },
  constants: {
    resistivityReference: {
      value: "20", unit: "°C", symbol: "θ_20", about: "temperature at which the resistivity is stated",
      source: [{ in: "IEC 60364-5-54:2011", clause: "annex A", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
    },
    freezingPoint: {
      value: "0", unit: "°C", symbol: "0 °C", about: "temperature from which the reciprocal coefficient counts",
      source: [{ in: "IEC 60364-5-54:2011", clause: "annex A", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
    },
    thousandMillimetres: {
      value: "1000", unit: "mm", symbol: "1000 mm", about: "a metre in millimetres",
      source: [{ in: "common practice", clause: "definition of the millimetre", grade: "common-practice" }],
    },
    oneMetre: {
      value: "1", unit: "m", symbol: "1 m", about: "a metre",
      source: [{ in: "common practice", clause: "definition of the metre", grade: "common-practice" }],
    },
  },
  requires: [{ that: "finalTemperature > initialTemperature", because: "a fault heats the conductor" }],
  gives: { unit: "A·√s/mm²", symbol: "k" },
  expression: "sqrt(heatCapacity * (reciprocalCoefficient + (resistivityReference - freezingPoint)) / resistivity * log(1 + (finalTemperature - initialTemperature) / (reciprocalCoefficient + (initialTemperature - freezingPoint))) * thousandMillimetres / oneMetre)",
  source: [
    { in: "IEC 60364-5-54:2011", clause: "annex A, formula of k", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" },
  ],
  unproven: { because: "no publication found", sought: "k worked from material constants; only an uploaded project sheet was found, besides the tables that follow the law" },
});
