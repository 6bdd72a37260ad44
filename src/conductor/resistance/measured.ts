import { formula, table } from "../../formula/index.js";

/**
 * Factor that brings a measured resistance to 20 °C.
 *
 * @function
 * @example
 * ```ts
 * import { iec60228_2004_kt } from "pv-to-grid/conductor";
 * iec60228_2004_kt({ conductorTemperature: "90 °C" }).text; // "0.781"
 * ```
 */
export const iec60228_2004_kt = /* @__PURE__ */ table({
  id: "conductor/iec-60228-2004-kt", about: "factor that brings a measured resistance to 20 °C",
  rows: { name: "conductorTemperature", unit: "°C", symbol: "θ" }, rowRule: "exact",
  gives: { unit: "1", symbol: "k_t" },
  source: [{ in: "IEC 60228:2004", clause: "annex on temperature correction", grade: "reproduced", seen: "uecables conductor page:undated, factor" }],
  note: "the coefficient behind it is 0.004 1/K, not 0.00393; design formulas take the metal's own",
  cells: `
    5    1.064
    10   1.042
    15   1.02
    20   1
    25   0.98
    30   0.962
    35   0.943
    40   0.926
    45   0.909
    50   0.893
    55   0.877
    60   0.862
    65   0.847
    70   0.833
    75   0.82
    80   0.806
    85   0.794
    90   0.781
    95   0.769
    100  0.758
  `,
});

/**
 * Factor that brings a resistance measured at a temperature to 20 °C.
 *
 * @function
 * @example
 * ```ts
 * import { measuringFactor } from "pv-to-grid/conductor";
 * measuringFactor({ conductorTemperature: "90 °C" }).show(); // "0.7812"
 * ```
 */
export const measuringFactor = /* @__PURE__ */ formula({
  id: "conductor/measuring-factor", about: "factor that brings a resistance measured at a temperature to 20 °C",
  takes: {
    conductorTemperature: { unit: "°C", symbol: "θ", about: "temperature of the conductor", above: -200, to: 300, usual: [-40, 250] },
  },
  constants: {
    measuringSpan: { value: "250", unit: "K", symbol: "Δθ", about: "span from the zero to 20 °C", source: [{ in: "IEC 60228:2004", clause: "annex on temperature correction", grade: "reproduced", seen: "uecables conductor page:undated, factor" }] },
    measuringZero: { value: "-230", unit: "°C", symbol: "θ_0", about: "temperature at which the law lets resistance vanish", source: [{ in: "IEC 60228:2004", clause: "annex on temperature correction", grade: "reproduced", seen: "uecables conductor page:undated, factor" }] },
  },
  gives: { unit: "1", symbol: "k_t" },
  expression: "measuringSpan / (conductorTemperature - measuringZero)",
  source: [{ in: "IEC 60228:2004", clause: "annex on temperature correction", grade: "reproduced", seen: "uecables conductor page:undated, factor" }],
  unproven: { because: "no publication found", sought: "factors to more digits than the table, whose cells the law guards" },
});
