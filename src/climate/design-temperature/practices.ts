import type { Grade, SourceKey } from "../../source/index.js";

/** A practice by which the design temperatures of a site are chosen. */
export interface DesignTemperaturePractice {
  readonly key: "record" | "mean annual extreme" | "return period" | "guide";
  readonly label: string;
  readonly edition: SourceKey;
  readonly grade: Grade;
}

/**
 * The practices, the most cautious first. They differ by 20 K at one site: a record low of −51 °C stands against a mean
 * annual minimum of −31 °C, which is 6 % of the voltage of a string.
 */
export const designTemperaturePractices: readonly DesignTemperaturePractice[] = [
  {
    key: "record",
    label: "Lowest and highest temperature on record",
    edition: "Home Power record lows:undated",
    grade: "original",
  },
  {
    key: "return period",
    label: "Extremes that recur once in a return period",
    edition: "ASHRAE Fundamentals:2013",
    grade: "copied",
  },
  {
    key: "mean annual extreme",
    label: "Mean of the lowest and of the highest temperatures of the years",
    edition: "ASHRAE Fundamentals:2013",
    grade: "copied",
  },
  {
    key: "guide",
    label: "Fixed cell temperatures of a regional guide",
    edition: "GSES handout:2011",
    grade: "original",
  },
];
