import { formula } from "../../formula/index.js";

/**
 * Power lost in the conductors of a circuit.
 *
 * @function
 * @example
 * ```ts
 * import { conductorLoss } from "pv-to-grid/conductor";
 * conductorLoss({ length: "20 m", current: "10 A", resistancePerLength: "5 Ω/km", loadedConductors: 2 }).show(); // "20 W"
 * ```
 */
export const conductorLoss = /* @__PURE__ */ formula({
  id: "conductor/conductor-loss", about: "power lost in the conductors of a circuit",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", from: 0, usual: [0, 5000] },
    current: { unit: "A", symbol: "I", about: "current in each loaded conductor", from: 0, usual: [0, 5000] },
    resistancePerLength: { unit: "Ω/m", symbol: "R", about: "resistance per length of one conductor at its temperature", from: 0, usual: [0.00001, 0.1] },
    loadedConductors: { unit: "1", symbol: "n", about: "conductors that carry the current: two, or three for three phases", from: 1, to: 4 },
  },
  gives: { unit: "W", symbol: "P_loss" },
  expression: "loadedConductors * current ^ 2 * resistancePerLength * length",
  source: [{ in: "PVPMC d.c. wiring losses:undated", clause: "wiring losses", grade: "original" }],
  unproven: { because: "no publication found", sought: "losses with their current, length and resistance" },
});

/**
 * Power lost along a route of parts in series.
 *
 * @function
 * @example
 * ```ts
 * import { totalLoss } from "pv-to-grid/conductor";
 * totalLoss({ losses: ["20 W", "5 W"] }).show(); // "25 W"
 * ```
 */
export const totalLoss = /* @__PURE__ */ formula({
  id: "conductor/total-loss", about: "power lost along a route of parts in series",
  takes: { losses: { each: "W", symbol: "P_i", about: "power lost in each part" } },
  gives: { unit: "W", symbol: "P_loss" },
  expression: "sum(losses)",
  source: [{ in: "common practice", clause: "losses in series add", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Lost power as a share of the power that enters the circuit.
 *
 * @function
 * @example
 * ```ts
 * import { lossShare } from "pv-to-grid/conductor";
 * lossShare({ loss: "25 W", power: "5 kW" }).in("%").text; // "0.5"
 * ```
 */
export const lossShare = /* @__PURE__ */ formula({
  id: "conductor/loss-share", about: "lost power as a share of the power that enters the circuit",
  takes: {
    loss: { unit: "W", symbol: "P_loss", about: "power lost", from: 0, usual: [0, 1000000] },
    power: { unit: "W", symbol: "P", about: "power that enters", above: 0, usual: [1, 100000000] },
  },
  gives: { unit: "1", symbol: "p" },
  expression: "loss / power",
  source: [{ in: "PVPMC d.c. wiring losses:undated", clause: "wiring losses", grade: "original" }],
  unproven: { because: "no publication found", sought: "loss shares with both powers" },
});
