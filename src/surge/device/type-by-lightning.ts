import { table } from "../../formula/index.js";

/**
 * Type of surge protective device by the lightning protection and the place. @function
 *
 * @example
 * ```ts
 * import { dehn2014_types } from "pv-to-grid/surge";
 * dehn2014_types({ situation: "separation distance kept", place: "inverter, d.c. side" }).name; // "type 2"
 * ```
 */
export const dehn2014_types = /* @__PURE__ */ table({
  id: "surge/dehn2014-types",
  about: "type of surge protective device by the lightning protection and the place",
  rows: { name: "situation", names: "in the first column" },
  rowRule: "exact",
  columns: { place: ["service entrance", "inverter, a.c. side", "inverter, d.c. side"] },
  gives: { names: "type of device", symbol: "type" },
  source: [{ in: "DEHN training slides:2014", clause: "table 1 of VDE 0185-305-3 supplement 5", grade: "original" }],
  note: "at the service entrance without lightning protection and at the inverter's a.c. side without separation distance only if a device is necessary there",
  cells: `
    no lightning protection       type 2  type 2  type 2
    separation distance kept      type 1  type 2  type 2
    separation distance not kept  type 1  type 1  type 1
  `,
});

/**
 * Smallest earth conductor of a surge protective device, of copper. @function
 *
 * @example
 * ```ts
 * import { surgeEarthMinimum } from "pv-to-grid/surge";
 * surgeEarthMinimum({ type: "type 1" }).text; // "16"
 * ```
 */
export const surgeEarthMinimum = /* @__PURE__ */ table({
  id: "surge/surge-earth-minimum",
  about: "smallest earth conductor of a surge protective device, of copper",
  rows: { name: "type", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "mm²", symbol: "S_min" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.10", grade: "memory" }],
  cells: `
    type 2  6
    type 1  16
  `,
});
