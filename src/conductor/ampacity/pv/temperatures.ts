import { table } from "../../../formula/index.js";

/**
 * Temperatures that a photovoltaic cable is made for.
 *
 * @function
 * @example
 * ```ts
 * import { pvCableTemperatures } from "pv-to-grid/conductor";
 * pvCableTemperatures({ state: "permanent" }).show(); // "90 °C"
 * ```
 */
export const pvCableTemperatures = /* @__PURE__ */ table({
  id: "conductor/pv-cable-temperatures", about: "temperatures that a photovoltaic cable is made for",
  rows: { name: "state", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "°C", symbol: "θ" },
  source: [{ in: "EN 50618:2014", clause: "thermal parameters", grade: "reproduced", seen: "RR Kabel EN 50618 page:undated, thermal parameters" }],
  note: "a cable to 2 PfG 1169 (PV1-F) stands 200 °C in a short circuit",
  cells: `
    permanent           90
    20,000 h in all     120
    short circuit, 5 s  250
    lowest ambient      -40
  `,
});
