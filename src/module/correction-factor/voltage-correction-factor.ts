import { type Input, InputError, type Quantity } from "../../quantity/index.js";
import type { Grade, SourceKey } from "../../source/index.js";
import { iec62548_2016_voltageFactor } from "./iec-62548-2016-voltage-factor.js";
import { nfpa70_2005_690_7 } from "./nfpa70-2005-690-7.js";
import { nfpa70_2008_690_7 } from "./nfpa70-2008-690-7.js";
import { nfpa70_2017_690_7_a } from "./nfpa70-2017-690-7-a.js";
import { nfpa70_2020_690_7_a } from "./nfpa70-2020-690-7-a.js";
import { nfpa70_2023_690_7_a } from "./nfpa70-2023-690-7-a.js";
import { uteC15VoltageFactor } from "./ute-c15-voltage-factor.js";

/** A document that tabulates voltage correction factors of crystalline silicon. */
export interface VoltageFactorDocument {
  readonly key: string;
  readonly label: string;
  readonly edition: SourceKey;
  readonly grade: Grade;
}

/** The documents with a table of voltage correction factors, by edition. */
export const voltageFactorDocuments: readonly VoltageFactorDocument[] = [
  { key: "NFPA 70:2023", label: "NFPA 70 (2023), table 690.7(A)", edition: "NFPA 70:2023", grade: "memory" },
  { key: "NFPA 70:2020", label: "NFPA 70 (2020), table 690.7(A)", edition: "NFPA 70:2020", grade: "copied" },
  { key: "NFPA 70:2017", label: "NFPA 70 (2017), table 690.7(A)", edition: "NFPA 70:2017", grade: "memory" },
  { key: "NFPA 70:2008", label: "NFPA 70 (2008 to 2014), table 690.7", edition: "NFPA 70:2008", grade: "memory" },
  { key: "NFPA 70:2005", label: "NFPA 70 (1999 to 2005), table 690.7", edition: "NFPA 70:2005", grade: "memory" },
  { key: "UTE C15-712-1:undated", label: "UTE C15-712-1", edition: "UTE C15-712-1:undated", grade: "reproduced" },
  { key: "IEC 62548:2016", label: "IEC 62548 (2016)", edition: "IEC 62548:2016", grade: "memory" },
];

type FactorTable = (headings: { readonly coldest: Input<"temperature"> }) => Quantity<"ratio">;

function tableOf(document: string): FactorTable | undefined {
  switch (document) {
    case "NFPA 70:2023":
      return nfpa70_2023_690_7_a;
    case "NFPA 70:2020":
      return nfpa70_2020_690_7_a;
    case "NFPA 70:2017":
      return nfpa70_2017_690_7_a;
    case "NFPA 70:2008":
      return nfpa70_2008_690_7;
    case "NFPA 70:2005":
      return nfpa70_2005_690_7;
    case "UTE C15-712-1:undated":
      return uteC15VoltageFactor;
    case "IEC 62548:2016":
      return iec62548_2016_voltageFactor;
    default:
      return undefined;
  }
}

/**
 * Voltage correction factor of a crystalline silicon module without a coefficient, from the table of one document.
 * Between two rows the colder one holds; outside the table it is refused.
 *
 * @throws InputError where the document has no table, or the temperature lies outside it
 * @example
 * ```ts
 * import { voltageCorrectionFactor } from "pv-to-grid/module";
 * voltageCorrectionFactor({ document: "UTE C15-712-1:undated", coldest: "-5.4 °C" }).text; // "1.14"
 * ```
 */
export function voltageCorrectionFactor(of: {
  readonly document: string;
  readonly coldest: Input<"temperature">;
}): Quantity<"ratio"> {
  const table = tableOf(of.document);
  if (table) return table({ coldest: of.coldest });
  const expected = `one of ${voltageFactorDocuments.map(({ key }) => key).join(", ")}`;
  const message =
    "no table of voltage correction factors is held of this document; use the coefficient of the datasheet";
  throw new InputError("module/voltage-correction-factor", [
    { path: "document", code: "not-in-list", message, expected, received: of.document },
  ]);
}
