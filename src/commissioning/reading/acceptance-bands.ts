import type { Grade } from "../../source/index.js";

/** A practice by which readings are accepted: what is compared with what, and where it is from. */
export interface AcceptanceBand {
  readonly key: string;
  readonly label: string;
  /** The publication, with its edition. */
  readonly edition: string;
  readonly grade: Grade;
}

/** The bands by which readings are judged. The standard compares strings with each other; 5 % of the expected value is contract practice. */
export const acceptanceBands: readonly AcceptanceBand[] = [
  {
    key: "expected voltage",
    label: "open-circuit voltage within 5 % of what the datasheet expects at the cell temperature: contract practice",
    edition: "contract clause, undated",
    grade: "copied",
  },
  {
    key: "expected current",
    label: "currents, operating voltage and power within 5 % of what the datasheet expects: practice of the trade",
    edition: "none",
    grade: "common-practice",
  },
  {
    key: "identical strings",
    label: "identical strings within 5 % of each other under steady light: the standard",
    edition: "IEC 62446:2009",
    grade: "reproduced",
  },
  {
    key: "average current",
    label: "operating current of each string within 5 % of the average: contract practice",
    edition: "contract clause, undated",
    grade: "copied",
  },
];
