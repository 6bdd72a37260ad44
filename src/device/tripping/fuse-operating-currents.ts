import { table } from "../../formula/index.js";

/**
 * Current at which a gG fuse-link disconnects within the time asked for. @function
 *
 * @example
 * ```ts
 * import { iec60269_1_2006_gg_operating_currents } from "pv-to-grid/device";
 * iec60269_1_2006_gg_operating_currents({ ratedCurrent: "32 A", disconnectionTime: "0.4 s" }).text; // "275"
 * ```
 */
export const iec60269_1_2006_gg_operating_currents = /* @__PURE__ */ table({
  id: "device/iec-60269-1-2006-gg-operating-currents",
  about: "current at which a gG fuse-link disconnects within the time asked for",
  rows: { name: "ratedCurrent", unit: "A", symbol: "I_n" },
  rowRule: "exact",
  columns: { disconnectionTime: ["5 s", "0.4 s"] },
  gives: { unit: "A", symbol: "I_a" },
  source: [
    {
      in: "IEC 60269-1:2006",
      clause: "time-current zones of class gG",
      grade: "copied",
      seen: "Kewtech KT64 manual:undated, p. 25",
    },
  ],
  note: "other times and ratings need the maker's curve; fuse-links of the British series BS 88-2 have other zones",
  cells: `
    6    28   47
    10   46   82
    16   65   110
    20   85   147
    25   110  183
    32   150  275
    40   190  320
    50   250  470
    63   320  550
    80   425  840
    100  580  1020
  `,
});
