import { table } from "../../../formula/index.js";

/**
 * Bands of frequency in which a connection is to stay connected, Regulation (EU) 2016/1388.
 *
 * @function
 * @example
 * ```ts
 * import { eu2016_1388_frequencyBand } from "pv-to-grid/grid";
 * eu2016_1388_frequencyBand({ band: "Continental Europe 1", bound: "from" }).text; // "47.5"
 * ```
 */
export const eu2016_1388_frequencyBand = /* @__PURE__ */ table({
  id: "grid/eu-2016-1388-frequency-band",
  about: "bands of frequency in which a connection is to stay connected, Regulation (EU) 2016/1388",
  rows: { name: "band", names: "in the first column", about: "synchronous area and number of the band" },
  rowRule: "exact",
  columns: { bound: ["from", "to"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "EU 2016/1388:2016", clause: "annex I", grade: "original" }],
  cells: `
    Continental Europe 1            47.5  48.5
    Continental Europe 2            48.5  49.0
    Continental Europe 3            49.0  51.0
    Continental Europe 4            51.0  51.5
    Nordic 1                        47.5  48.5
    Nordic 2                        48.5  49.0
    Nordic 3                        49.0  51.0
    Nordic 4                        51.0  51.5
    Great Britain 1                 47.0  47.5
    Great Britain 2                 47.5  48.5
    Great Britain 3                 48.5  49.0
    Great Britain 4                 49.0  51.0
    Great Britain 5                 51.0  51.5
    Great Britain 6                 51.5  52.0
    Ireland and Northern Ireland 1  47.5  48.5
    Ireland and Northern Ireland 2  48.5  49.0
    Ireland and Northern Ireland 3  49.0  51.0
    Ireland and Northern Ireland 4  51.0  51.5
    Baltic 1                        47.5  48.5
    Baltic 2                        48.5  49.0
    Baltic 3                        49.0  51.0
    Baltic 4                        51.0  51.5
  `,
  note: "the band from 49 to 51 Hz has no end of time; generators: Regulation (EU) 2016/631, recalled as the same",
});

/**
 * Least time that a connection is to stay connected in a band of frequency, Regulation (EU) 2016/1388.
 *
 * @function
 * @example
 * ```ts
 * import { eu2016_1388_frequencyTime } from "pv-to-grid/grid";
 * eu2016_1388_frequencyTime({ band: "Continental Europe 1" }).text; // "1800"
 * ```
 */
export const eu2016_1388_frequencyTime = /* @__PURE__ */ table({
  id: "grid/eu-2016-1388-frequency-time",
  about: "least time that a connection is to stay connected in a band of frequency, Regulation (EU) 2016/1388",
  rows: { name: "band", names: "in the first column", about: "synchronous area and number of the band" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "EU 2016/1388:2016", clause: "annex I", grade: "original" }],
  cells: `
    Continental Europe 1            1800
    Continental Europe 2            1800
    Continental Europe 4            1800
    Nordic 1                        1800
    Nordic 2                        1800
    Nordic 4                        1800
    Great Britain 1                 20
    Great Britain 2                 5400
    Great Britain 3                 5400
    Great Britain 5                 5400
    Great Britain 6                 900
    Ireland and Northern Ireland 1  5400
    Ireland and Northern Ireland 2  5400
    Ireland and Northern Ireland 4  5400
    Baltic 1                        1800
    Baltic 2                        1800
    Baltic 4                        1800
  `,
  note: "where the system operator sets the time, the least that it may set; bands without a time are without end",
});
