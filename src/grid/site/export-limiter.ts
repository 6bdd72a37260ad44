import { type Check, condition, type Known, table } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";

/**
 * Longest time within which an export limiter must have acted.
 *
 * @function
 * @example
 * ```ts
 * import { exportLimiterTimes } from "pv-to-grid/grid";
 * exportLimiterTimes({ document: "EREC G100:2022" }).text; // "5"
 * ```
 */
export const exportLimiterTimes = /* @__PURE__ */ table({
  id: "grid/export-limiter-times",
  about: "longest time within which an export limiter must have acted",
  rows: { name: "document", names: "in the first column", about: "document" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "t_lim" },
  source: [{ in: "EREC G100:2022", clause: "response time", grade: "memory" }],
  cells: `
    EREC G100:2022   5
  `,
});

/**
 * Does the export limiter act in time?
 *
 * @function
 * @example
 * ```ts
 * import { exportLimiterActsInTime } from "pv-to-grid/grid";
 * exportLimiterActsInTime({ value: "3 s", limit: "5 s" }).verdict; // "met"
 * ```
 */
export const exportLimiterActsInTime = /* @__PURE__ */ condition({
  id: "grid/export-limiter-acts-in-time",
  asks: "Does the export limiter act in time?",
  force: "requirement",
  value: { unit: "s", symbol: "t", about: "time from too much export, or from a failure of the limiter, to the reduced power" },
  relation: "≤",
  limit: { unit: "s", symbol: "t_lim", about: "longest time of the document" },
  source: [{ in: "EREC G100:2022", clause: "response time", grade: "memory" }],
});

/**
 * Does the export limiter hold the agreed export?
 *
 * @function
 * @example
 * ```ts
 * import { exportWithinAgreement } from "pv-to-grid/grid";
 * exportWithinAgreement({ value: "5 kW", limit: "5 kW" }).verdict; // "met"
 * ```
 */
export const exportWithinAgreement = /* @__PURE__ */ condition({
  id: "grid/export-within-agreement",
  asks: "Does the export limiter hold the agreed export?",
  force: "requirement",
  value: { unit: "W", symbol: "P_exp", about: "export setting, or the power of the plant where nothing limits it" },
  relation: "≤",
  limit: { unit: "W", symbol: "P_lim", about: "export that the network operator has agreed to" },
  source: [{ in: "EKS notice:undated", clause: "example, 70 % of the installed power", grade: "original" }],
});

/**
 * Does the plant go to the agreed export when the limiter fails?
 *
 * @function
 * @example
 * ```ts
 * import { exportLimiterFailsSafe } from "pv-to-grid/grid";
 * exportLimiterFailsSafe({ value: "goes on", limit: ["stops", "falls to a power within the agreement"] }).verdict; // "not met"
 * ```
 */
export const exportLimiterFailsSafe = /* @__PURE__ */ condition({
  id: "grid/export-limiter-fails-safe",
  asks: "Does the plant go to the agreed export when the limiter fails?",
  force: "requirement",
  value: { named: true, about: "what the plant does when the limiter or its link fails" },
  relation: "one of",
  limit: { named: true, about: "what keeps the export within the agreement" },
  source: [{ in: "EREC G100:2022", clause: "fail-safe", grade: "memory" }],
});

/** What a plant may do when its export limiter, or the link to it, fails. */
export const limiterFailures = ["stops", "falls to a power within the agreement", "goes on"] as const;

/** An export limiter. */
export interface ExportLimiter {
  readonly agreedExport: Known<Input<"activePower">>;
  /** Setting of the limiter, or the power of the plant where there is none. */
  readonly exportSetting: Known<Input<"activePower">>;
  readonly actingTime: Known<Input<"time">>;
  readonly onFailure: Known<(typeof limiterFailures)[number]>;
  readonly at: string;
}

/** An export limiter against the agreed export, its time and its failure. */
export function exportLimiterChecks({
  agreedExport,
  exportSetting,
  actingTime,
  onFailure,
  at,
}: ExportLimiter): readonly Check[] {
  return Object.freeze([
    exportWithinAgreement({ value: exportSetting, limit: agreedExport, at }),
    exportLimiterActsInTime({ value: actingTime, limit: exportLimiterTimes({ document: "EREC G100:2022" }), at }),
    exportLimiterFailsSafe({ value: onFailure, limit: limiterFailures.slice(0, 2), at }),
  ]);
}
