import { formula } from "../../formula/index.js";

/**
 * Active power where a volt-watt ceiling and a frequency droop act together.
 *
 * @function
 * @example
 * ```ts
 * import { combinedActivePower } from "pv-to-grid/grid";
 * combinedActivePower({ voltWattShare: "0.4", frequencyDroopShare: "0.302" }).text; // "0.302"
 * ```
 */
export const combinedActivePower = /* @__PURE__ */ formula({
  id: "grid/combined-active-power",
  about: "active power where a volt-watt ceiling and a frequency droop act together",
  takes: {
    voltWattShare: { unit: "1", symbol: "p_vw", about: "ceiling of the volt-watt curve", from: 0, to: 1, usual: [0, 1] },
    frequencyDroopShare: { unit: "1", symbol: "p_f", about: "active power after the frequency droop", from: 0, to: 1, usual: [0, 1] },
  },
  gives: { unit: "1", symbol: "p" },
  expression: "min(voltWattShare, frequencyDroopShare)",
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 38 and 39", grade: "copied", seen: "UL1741SB test scripts:2026, RespPri" }],
  note: "the lower of the two",
  unproven: { because: "no publication found", sought: "tables 38 and 39 of IEEE 1547.1 in an edited publication; they were seen in copies only" },
});

/**
 * Active power left where the reactive power has priority.
 *
 * @function
 * @example
 * ```ts
 * import { activeShareUnderReactivePriority } from "pv-to-grid/grid";
 * activeShareUnderReactivePriority({ activeShare: "0.7", reactiveShare: "-0.44" }).show(); // "0.7"
 * ```
 */
export const activeShareUnderReactivePriority = /* @__PURE__ */ formula({
  id: "grid/active-share-under-reactive-priority",
  about: "active power left where the reactive power has priority",
  takes: {
    activeShare: { unit: "1", symbol: "p", about: "active power that is wanted, as a share of the rated apparent power", from: 0, to: 1, usual: [0, 1] },
    reactiveShare: { unit: "1", symbol: "q", about: "reactive power, as a share of the rated apparent power", from: -1, to: 1, usual: [-1, 1] },
  },
  gives: { unit: "1", symbol: "p_q" },
  expression: "min(activeShare, sqrt(1 - reactiveShare ^ 2))",
  source: [{ in: "IEEE 1547:2018", clause: "5.3, priority of reactive power", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked point at full apparent power with reactive priority" },
});
