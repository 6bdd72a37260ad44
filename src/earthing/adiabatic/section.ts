import { formula } from "../../formula/index.js";

/**
 * Smallest conductor that withstands a fault of a current and a duration. @function
 *
 * @example
 * ```ts
 * import { adiabaticSection } from "pv-to-grid/earthing";
 * adiabaticSection({ faultCurrent: "200 A", disconnectionTime: "0.4 s", adiabaticFactor: "115" }).show({ digits: 3 }); // "1.1 mm²"
 * ```
 */
export const adiabaticSection = /* @__PURE__ */ formula({
  id: "earthing/adiabatic-section",
  about: "smallest conductor that withstands a fault of a current and a duration",
  takes: {
    faultCurrent: { unit: "A", symbol: "I", about: "fault current of negligible fault impedance", above: 0, usual: [1, 200000] },
    disconnectionTime: { unit: "s", symbol: "t", about: "time until the device has disconnected", above: 0, to: 5 },
    adiabaticFactor: { unit: "A·√s/mm²", symbol: "k", about: "factor of material and insulation", above: 0, usual: [20, 250] },
  },
  gives: { unit: "mm²", symbol: "S" },
  expression: "faultCurrent * sqrt(disconnectionTime) / adiabaticFactor",
  source: [{ in: "IEC 60364-5-54:2011", clause: "543.1.2", grade: "reproduced", seen: "NICEIC Pocket Guide 15:2018, p. 26" }],
  note: "up to 5 s; below 0.1 s the let-through of the device takes the place of I²t",
});
