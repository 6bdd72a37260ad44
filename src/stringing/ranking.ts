/** The rule by which stringings are ranked: each line is a sum over the trackers, and a later line counts only where all before it are equal. */
export const rankingRule = [
  "fewest modules that stay unused",
  "fewest string fuses",
  "fewest trackers that join strings of several roofs",
  "balance: least sum of the squares of each tracker's current at the maximum power point over its largest input current",
  "voltage high in the window: least sum of the squares of the modules by which the strings of each tracker in use fall short of the longest that it takes",
  "nearest to the stated ratio of array to inverter power: least sum of each tracker's distance from its share, where a ratio is stated",
] as const;

/** How a stringing stands by each line of the ranking rule; less is better. */
export interface Score {
  readonly unusedModules: number;
  readonly fuses: number;
  readonly joinedRoofs: number;
  /** To six decimals for each tracker. */
  readonly balance: number;
  /** Squares of the modules short. */
  readonly shortfall: number;
  /** In W, to a tenth for each tracker; 0 where no ratio is stated. */
  readonly ratioDistance: number;
}
