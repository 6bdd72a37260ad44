import { formula } from "../../../formula/index.js";

/**
 * Lowest supply voltage of Real Decreto 1955/2000.
 *
 * @function
 * @example
 * ```ts
 * import { rd1955_2000_lowestVoltage } from "pv-to-grid/grid";
 * rd1955_2000_lowestVoltage({ nominalVoltage: "230 V" }).text; // "213.9"
 * ```
 */
export const rd1955_2000_lowestVoltage = /* @__PURE__ */ formula({
  id: "grid/rd-1955-2000-lowest-voltage",
  about: "lowest supply voltage of Real Decreto 1955/2000",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    rd1955Lower: {
      value: "0.07", unit: "1", symbol: "δ_lo", about: "share of the nominal voltage by which the supply may be lower",
      source: [{ in: "RD 1955/2000:2000", clause: "104.3", grade: "copied" }],
    },
  },
  gives: { unit: "V", symbol: "U_min" },
  expression: "nominalVoltage * (1 - rd1955Lower)",
  source: [{ in: "RD 1955/2000:2000", clause: "104.3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});

/**
 * Highest supply voltage of Real Decreto 1955/2000.
 *
 * @function
 * @example
 * ```ts
 * import { rd1955_2000_highestVoltage } from "pv-to-grid/grid";
 * rd1955_2000_highestVoltage({ nominalVoltage: "230 V" }).text; // "246.1"
 * ```
 */
export const rd1955_2000_highestVoltage = /* @__PURE__ */ formula({
  id: "grid/rd-1955-2000-highest-voltage",
  about: "highest supply voltage of Real Decreto 1955/2000",
  takes: { nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] } },
  constants: {
    rd1955Upper: {
      value: "0.07", unit: "1", symbol: "δ_hi", about: "share of the nominal voltage by which the supply may be higher",
      source: [{ in: "RD 1955/2000:2000", clause: "104.3", grade: "copied" }],
    },
  },
  gives: { unit: "V", symbol: "U_max" },
  expression: "nominalVoltage * (1 + rd1955Upper)",
  source: [{ in: "RD 1955/2000:2000", clause: "104.3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "band in volts at a printed nominal voltage" },
});
