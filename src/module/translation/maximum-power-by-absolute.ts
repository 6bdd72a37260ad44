import { formula } from "../../formula/index.js";

/**
 * Maximum power of a module at a cell temperature, by an absolute coefficient.
 *
 * @function
 * @example
 * ```ts
 * import { maximumPowerByAbsolute } from "pv-to-grid/module";
 * maximumPowerByAbsolute({ maximumPower: "300 W", absolutePowerCoefficient: "-2 W/K", cellTemperature: "40 °C" }).text; // "270"
 * ```
 */
export const maximumPowerByAbsolute = /* @__PURE__ */ formula({
  id: "module/maximum-power-by-absolute",
  about: "maximum power of a module at a cell temperature, by an absolute coefficient",
  takes: {
    maximumPower: { unit: "W", symbol: "P_max,STC", about: "maximum power at standard test conditions", above: 0, usual: [1, 1000] },
    absolutePowerCoefficient: { unit: "W/K", symbol: "γ_abs", about: "absolute temperature coefficient of the maximum power", above: -20, below: 0, usual: [-5, -0.01] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
  },
  constants: {
    stcTemperature: {
      value: "25", unit: "°C", symbol: "T_STC", about: "cell temperature at standard test conditions",
      source: [
        { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
        { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" },
      ],
    },
  },
  gives: { unit: "W", symbol: "P_max" },
  expression: "maximumPower + absolutePowerCoefficient * (cellTemperature - stcTemperature)",
  source: [{ in: "TU Delft ET3034TUx:2014", clause: "power of a module at an ambient of 15 °C", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked examples in edited publications; the one found stands on a forum" },
});
