import { table } from "../../formula/index.js";

/**
 * Temperature coefficient of resistance of a conductor metal at 20 °C.
 *
 * @function
 * @example
 * ```ts
 * import { temperatureCoefficientsAt20 } from "pv-to-grid/conductor";
 * temperatureCoefficientsAt20({ conductor: "copper" }).show(); // "0.00393 1/K"
 * ```
 */
export const temperatureCoefficientsAt20 = /* @__PURE__ */ table({
  id: "conductor/temperature-coefficients-at-20", about: "temperature coefficient of resistance of a conductor metal at 20 °C",
  rows: { name: "conductor", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "1/K", symbol: "α_20" },
  source: [
    { in: "IEC 60287-1-1:2006", clause: "table 1", grade: "memory" },
    { in: "Agrawal handbook:undated", clause: "table 30.1", grade: "original" },
  ],
  cells: `
    copper     0.00393
    aluminium  0.00403
  `,
});

/**
 * Resistivity of a conductor metal at 20 °C.
 *
 * @function
 * @example
 * ```ts
 * import { resistivitiesAt20 } from "pv-to-grid/conductor";
 * resistivitiesAt20({ conductor: "copper" }).show({ digits: 5 }); // "0.017241 Ω·mm²/m"
 * ```
 */
export const resistivitiesAt20 = /* @__PURE__ */ table({
  id: "conductor/resistivities-at-20", about: "resistivity of a conductor metal at 20 °C",
  rows: { name: "conductor", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "Ω·mm²/m", symbol: "ρ_20" },
  source: [{ in: "IEC 60028:1925", clause: "standard annealed copper", grade: "reproduced", seen: "TN Lab IEC 60028 page:undated" }],
  cellGrades: { memory: ["aluminium"] },
  note: "aluminium after IEC 60889; a catalogue grade of 61 % conductivity has 0.02873",
  cells: `
    copper     0.017241
    aluminium  0.028264
  `,
});
