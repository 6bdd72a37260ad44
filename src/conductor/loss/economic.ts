import { formula } from "../../formula/index.js";

/**
 * Growth of the cost of losses from year to year, discounted.
 *
 * @function
 * @example
 * ```ts
 * import { lossGrowth } from "pv-to-grid/conductor";
 * lossGrowth({ loadGrowth: 0, priceGrowth: "2 %", discountRate: "5 %" }).show(); // "0.9714"
 * ```
 */
export const lossGrowth = /* @__PURE__ */ formula({
  id: "conductor/loss-growth", about: "growth of the cost of losses from year to year, discounted",
  takes: {
    loadGrowth: { unit: "1", symbol: "a", about: "growth of the current a year", above: -0.5, to: 0.5 },
    priceGrowth: { unit: "1", symbol: "b", about: "growth of the energy price a year, without inflation", above: -0.5, to: 0.5 },
    discountRate: { unit: "1", symbol: "i", about: "discount rate a year, without inflation", from: 0, to: 0.5 },
  },
  gives: { unit: "1", symbol: "r" },
  expression: "(1 + loadGrowth) ^ 2 * (1 + priceGrowth) / (1 + discountRate)",
  source: [{ in: "IEC 60287-3-2:2012", clause: "clause 5", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked examples of IEC 60287-3-2" },
});

/**
 * Sum of yearly costs over a life, discounted.
 *
 * @function
 * @example
 * ```ts
 * import { presentWorth } from "pv-to-grid/conductor";
 * presentWorth({ lossGrowth: "0.95", yearsOfLife: 20 }).show(); // "12.83"
 * ```
 */
export const presentWorth = /* @__PURE__ */ formula({
  id: "conductor/present-worth", about: "sum of yearly costs over a life, discounted",
  takes: {
    lossGrowth: { unit: "1", symbol: "r", about: "growth from year to year, discounted", above: 0, to: 2 },
    yearsOfLife: { unit: "1", symbol: "N", about: "years of life", from: 1, to: 100 },
  },
  requires: [{ that: "lossGrowth != 1", because: "without growth and discount the sum is the number of years" }],
  gives: { unit: "1", symbol: "Q" },
  expression: "(1 - lossGrowth ^ yearsOfLife) / (1 - lossGrowth)",
  source: [{ in: "IEC 60287-3-2:2012", clause: "clause 5", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked examples of IEC 60287-3-2" },
});

/**
 * Cost of losses over a life at present value.
 *
 * @function
 * @example
 * ```ts
 * import { lossCostOverLife } from "pv-to-grid/conductor";
 * lossCostOverLife({ loss: "50 W", lossHours: "1000 h", energyPrice: "0.1 money/kWh", presentWorth: "12.83", discountRate: "5 %" }).show(); // "61.1 money"
 * ```
 */
export const lossCostOverLife = /* @__PURE__ */ formula({
  id: "conductor/loss-cost-over-life", about: "cost of losses over a life at present value",
  takes: {
    loss: { unit: "kW", symbol: "P_loss", about: "power lost at the maximum current", from: 0, usual: [0, 1000] },
    lossHours: { unit: "h", symbol: "T", about: "hours a year at the maximum current that lose as much as the year does", from: 0, to: 8784 },
    energyPrice: { unit: "money/kWh", symbol: "p", about: "price of energy", from: 0, usual: [0, 2] },
    presentWorth: { unit: "1", symbol: "Q", about: "sum of yearly costs, discounted", above: 0, usual: [1, 60] },
    discountRate: { unit: "1", symbol: "i", about: "discount rate a year", from: 0, to: 0.5 },
  },
  gives: { unit: "money", symbol: "C_J" },
  expression: "loss * lossHours * energyPrice * presentWorth / (1 + discountRate)",
  source: [{ in: "IEC 60287-3-2:2012", clause: "clause 5", grade: "memory" }],
  note: "the first cost falls at the end of the first year",
  unproven: { because: "no publication found", sought: "worked examples of IEC 60287-3-2" },
});

/**
 * Purchase cost of a run of cable.
 *
 * @function
 * @example
 * ```ts
 * import { purchaseCost } from "pv-to-grid/conductor";
 * purchaseCost({ lengthPrice: "2.5 money/m", cableLength: "40 m" }).show(); // "100 money"
 * ```
 */
export const purchaseCost = /* @__PURE__ */ formula({
  id: "conductor/purchase-cost", about: "purchase cost of a run of cable",
  takes: {
    lengthPrice: { unit: "money/m", symbol: "p_c", about: "price of the cable with its laying", from: 0, usual: [0, 1000] },
    cableLength: { unit: "m", symbol: "L_c", about: "length of all cable of the run", from: 0, usual: [0, 10000] },
  },
  gives: { unit: "money", symbol: "C_I" },
  expression: "lengthPrice * cableLength",
  source: [{ in: "common practice", clause: "arithmetic of loss and price", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Cost of a cable over its life.
 *
 * @function
 * @example
 * ```ts
 * import { totalCost } from "pv-to-grid/conductor";
 * totalCost({ purchaseCost: "100 money", lossCost: "61 money" }).show(); // "161 money"
 * ```
 */
export const totalCost = /* @__PURE__ */ formula({
  id: "conductor/total-cost", about: "cost of a cable over its life",
  takes: {
    purchaseCost: { unit: "money", symbol: "C_I", about: "purchase cost", from: 0, usual: [0, 10000000] },
    lossCost: { unit: "money", symbol: "C_J", about: "cost of losses over the life", from: 0, usual: [0, 10000000] },
  },
  gives: { unit: "money", symbol: "C_T" },
  expression: "purchaseCost + lossCost",
  source: [{ in: "IEC 60287-3-2:2012", clause: "clause 5", grade: "memory" }],
  unproven: { because: "definition" },
});
