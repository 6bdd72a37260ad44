import { table } from "../../../formula/index.js";

/**
 * Service voltage limits of ANSI C84.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ansiC84_1_2020_serviceVoltage } from "pv-to-grid/grid";
 * ansiC84_1_2020_serviceVoltage({ nominalVoltage: "120 V", range: "A", limit: "lowest" }).text; // "114"
 * ```
 */
export const ansiC84_1_2020_serviceVoltage = /* @__PURE__ */ table({
  id: "grid/ansi-c84-1-2020-service-voltage",
  about: "service voltage limits of ANSI C84.1:2020",
  rows: { name: "nominalVoltage", unit: "V", symbol: "U_n", about: "nominal voltage", above: 0 },
  rowRule: "exact",
  columns: { range: ["A", "B"], limit: ["lowest", "highest"] },
  gives: { unit: "V", symbol: "U" },
  source: [{ in: "ANSI C84.1:2020", clause: "table 1, service voltage", grade: "memory" }],
  cells: `
    120  114  126  110  127
    208  197  218  191  220
    240  228  252  220  254
    277  263  291  254  293
    480  456  504  440  508
  `,
  note: "range A is the usual state, range B a state that is to be corrected",
});
