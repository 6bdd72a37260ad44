import { table } from "../../formula/index.js";

/**
 * Range in which temperature coefficients of modules on the market lie.
 *
 * @function
 * @example
 * ```ts
 * import { plausibleCoefficient } from "pv-to-grid/module";
 * plausibleCoefficient({ datasheetCoefficient: "openCircuitVoltageCoefficient", bound: "high" }).show(); // "-0.1 %/K"
 * ```
 */
export const plausibleCoefficient = /* @__PURE__ */ table({
  id: "module/plausible-coefficient",
  about: "range in which temperature coefficients of modules on the market lie",
  rows: { name: "datasheetCoefficient", names: "in the first column" },
  rowRule: "exact",
  columns: { bound: ["low", "high"] },
  gives: { unit: "%/K", symbol: "range" },
  source: [{ in: "common practice", clause: "coefficients of silicon and thin-film modules", grade: "common-practice" }],
  cells: `
    openCircuitVoltageCoefficient   -0.50  -0.10
    mppVoltageCoefficient           -0.75  -0.10
    maximumPowerCoefficient         -0.65  -0.10
    shortCircuitCurrentCoefficient  -0.05  0.15
    mppCurrentCoefficient           -0.15  0.15
  `,
  note: "wide on purpose: it finds a percentage written as a fraction, millivolts as volts, and swapped coefficients",
});
