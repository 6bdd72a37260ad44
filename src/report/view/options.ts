/** What a caller may add to a report; without it, the same record gives the same bytes. */
export interface ReportOptions {
  /** Date to print; the report never asks the clock. */
  readonly date?: string;
  /** Who presents the report. */
  readonly by?: string;
  /** `"open"` unfolds every working, for print. */
  readonly working?: "folded" | "open";
  /** Allowance on cable lengths for cutting, ends and detours, such as `"10 %"`. */
  readonly cableAllowance?: string;
}
