import { formula } from "../../formula/index.js";

/**
 * Smallest conductor of a ground grid for a symmetrical fault current. @function
 *
 * @example
 * ```ts
 * import { groundConductorSection } from "pv-to-grid/earthing";
 * groundConductorSection({ faultCurrent: "13.45 kA", disconnectionTime: "0.5 s", heatCapacity: "3.42 J/(K·cm³)", resistivityCoefficient: "0.00381", resistivity: "1.78 μΩ·cm", inverseCoefficient: "242 K", highestTemperature: "1084 °C", groundAmbient: "40 °C" }).show(); // "34.04 mm²"
 * ```
 */
export const groundConductorSection = /* @__PURE__ */ formula({
  id: "earthing/ground-conductor-section",
  about: "smallest conductor of a ground grid for a symmetrical fault current",
  takes: {
    faultCurrent: { unit: "A", symbol: "I", about: "fault current of negligible fault impedance", above: 0, usual: [1, 200000] },
    disconnectionTime: { unit: "s", symbol: "t_c", about: "time until the device has disconnected", above: 0, to: 5 },
    heatCapacity: { unit: "J/(K·mm³)", symbol: "TCAP", about: "volumetric heat capacity of the conductor material at 20 °C", above: 0, usual: [0.001, 0.005] },
    resistivityCoefficient: { unit: "1/K", symbol: "α_r", about: "temperature coefficient of resistivity at 20 °C", above: 0, usual: [0.001, 0.005] },
    resistivity: { unit: "Ω·mm²/m", symbol: "ρ_r", about: "resistivity of the conductor material at 20 °C", above: 0, usual: [0.01, 0.3] },
    inverseCoefficient: { unit: "K", symbol: "K_0", about: "inverse of the temperature coefficient of resistivity at 0 °C", above: 0, usual: [100, 1000] },
    highestTemperature: { unit: "°C", symbol: "T_m", about: "highest temperature that conductor or joint may reach", above: 50, to: 1600, usual: [150, 1600] },
    groundAmbient: { unit: "°C", symbol: "T_a", about: "temperature of the ground before the fault", above: -50, to: 100, usual: [-20, 60] },
  },
  constants: {
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
  requires: [{ that: "highestTemperature > groundAmbient", because: "a fault heats the conductor" }],
  gives: { unit: "mm²", symbol: "A" },
  expression: "faultCurrent * sqrt(disconnectionTime) / sqrt(heatCapacity / (resistivityCoefficient * resistivity) * log((inverseCoefficient + (highestTemperature - freezingPoint)) / (inverseCoefficient + (groundAmbient - freezingPoint))) * thousandMillimetres / oneMetre)",
  source: [{ in: "IEEE 80:2000", clause: "11.3, equation 37", grade: "copied", seen: "IEEE 80 template sheet:undated, section B" }],
  unproven: { because: "no publication found", sought: "IEEE 80 equation 37 with all constants printed; only an upload without its material was found" },
  note: "the equation adds K_0 and the ambient temperature; some sheets subtract and come out too small",
});

/**
 * Section of a ground-grid conductor for one ampere during one second. @function
 *
 * @example
 * ```ts
 * import { fusingFactorOf } from "pv-to-grid/earthing";
 * fusingFactorOf({ heatCapacity: "3.42 J/(K·cm³)", resistivityCoefficient: "0.00381", resistivity: "1.78 μΩ·cm", inverseCoefficient: "242 K", highestTemperature: "1084 °C", groundAmbient: "40 °C" }).in("kcmil/(kA·√s)").show(); // "7.063 kcmil/(kA·√s)"
 * ```
 */
export const fusingFactorOf = /* @__PURE__ */ formula({
  id: "earthing/fusing-factor-of",
  about: "section of a ground-grid conductor for one ampere during one second",
  takes: {
    heatCapacity: { unit: "J/(K·mm³)", symbol: "TCAP", about: "volumetric heat capacity of the conductor material at 20 °C", above: 0, usual: [0.001, 0.005] },
    resistivityCoefficient: { unit: "1/K", symbol: "α_r", about: "temperature coefficient of resistivity at 20 °C", above: 0, usual: [0.001, 0.005] },
    resistivity: { unit: "Ω·mm²/m", symbol: "ρ_r", about: "resistivity of the conductor material at 20 °C", above: 0, usual: [0.01, 0.3] },
    inverseCoefficient: { unit: "K", symbol: "K_0", about: "inverse of the temperature coefficient of resistivity at 0 °C", above: 0, usual: [100, 1000] },
    highestTemperature: { unit: "°C", symbol: "T_m", about: "highest temperature that conductor or joint may reach", above: 50, to: 1600, usual: [150, 1600] },
    groundAmbient: { unit: "°C", symbol: "T_a", about: "temperature of the ground before the fault", above: -50, to: 100, usual: [-20, 60] },
  },
  constants: {
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
  requires: [{ that: "highestTemperature > groundAmbient", because: "a fault heats the conductor" }],
  gives: { unit: "mm²/(A·√s)", symbol: "K_f" },
  expression: "1 / sqrt(heatCapacity / (resistivityCoefficient * resistivity) * log((inverseCoefficient + (highestTemperature - freezingPoint)) / (inverseCoefficient + (groundAmbient - freezingPoint))) * thousandMillimetres / oneMetre)",
  source: [{ in: "IEEE 80:2000", clause: "11.3.1.2, equation 42", grade: "memory" }],
  unproven: { because: "no publication found", sought: "K_f worked from constants; the table of the standard follows the law" },
});

/**
 * Smallest conductor of a ground grid by the tabulated factor of its material. @function
 *
 * @example
 * ```ts
 * import { groundConductorByFactor } from "pv-to-grid/earthing";
 * groundConductorByFactor({ faultCurrent: "6.814 kA", disconnectionTime: "0.5 s", fusingFactor: "7.06 kcmil/(kA·√s)" }).show(); // "17.24 mm²"
 * ```
 */
export const groundConductorByFactor = /* @__PURE__ */ formula({
  id: "earthing/ground-conductor-by-factor",
  about: "smallest conductor of a ground grid by the tabulated factor of its material",
  takes: {
    faultCurrent: { unit: "A", symbol: "I", about: "fault current of negligible fault impedance", above: 0, usual: [1, 200000] },
    disconnectionTime: { unit: "s", symbol: "t_c", about: "time until the device has disconnected", above: 0, to: 5 },
    fusingFactor: { unit: "mm²/(A·√s)", symbol: "K_f", about: "section for one ampere during one second", above: 0, usual: [0.0001, 0.1] },
  },
  gives: { unit: "mm²", symbol: "A" },
  expression: "faultCurrent * fusingFactor * sqrt(disconnectionTime)",
  source: [
    { in: "IEEE 80:2000", clause: "11.3.1.2, equation 42", grade: "reproduced", seen: "nVent conductor selection:undated, page 115" },
  ],
});

/**
 * Section of a buried conductor with an allowance for corrosion and a safety factor. @function
 *
 * @example
 * ```ts
 * import { sectionWithAllowance } from "pv-to-grid/earthing";
 * sectionWithAllowance({ section: "625 mm²", corrosionAllowance: "0.2", safetyMargin: "1.5" }).text; // "1125"
 * ```
 */
export const sectionWithAllowance = /* @__PURE__ */ formula({
  id: "earthing/section-with-allowance",
  about: "section of a buried conductor with an allowance for corrosion and a safety factor",
  takes: {
    section: { unit: "mm²", symbol: "S", about: "cross-section of the conductor", above: 0, usual: [0.5, 2500] },
    corrosionAllowance: { unit: "1", symbol: "c", about: "share of the section that corrodes in the life of the plant", from: 0, to: 3 },
    safetyMargin: { unit: "1", symbol: "m", about: "safety factor on the section", from: 1, to: 5 },
  },
  gives: { unit: "mm²", symbol: "S" },
  expression: "section * (1 + corrosionAllowance) * safetyMargin",
  source: [{ in: "Electrical Standards blog:2014", clause: "example of the minimum earthing conductor", grade: "original" }],
});
