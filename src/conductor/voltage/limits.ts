import { type Check, type Force, type Known, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { Listed } from "../wiring.js";
import {
  alternatingDropWithinPractice,
  changeWithinRebt,
  directDropWithinMcs,
  directDropWithinPractice,
  dropWithinAnnexG,
  dropWithinAsNzs3000,
  dropWithinBs7671,
  dropWithinNfpa70,
  dropWithinRebt,
  riseWithinAsNzs4777,
  riseWithinVde4105,
} from "./limit-conditions.js";
import { annexGLimit, annexGSupplement, voltageLimitShares } from "./limit-shares.js";

/** A limit of voltage change, with all that it holds for. */
export interface VoltageLimit extends Listed {
  readonly kind: "drop" | "rise";
  readonly force: Force;
  /** The stretch that it holds for, and no other. */
  readonly stretch: string;
  readonly current: string;
  /** Whose plants count. */
  readonly plants: string;
  readonly condition: string;
}

/** Limits of voltage change by document. */
export const voltageLimits = [
  {
    key: "IEC 60364-5-52:2009, lighting, public supply",
    label: "IEC 60364-5-52:2009, lighting, public supply",
    edition: "IEC 60364-5-52:2009",
    grade: "reproduced",
    kind: "drop",
    force: "recommendation",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinAnnexG",
  },
  {
    key: "IEC 60364-5-52:2009, other uses, public supply",
    label: "IEC 60364-5-52:2009, other uses, public supply",
    edition: "IEC 60364-5-52:2009",
    grade: "reproduced",
    kind: "drop",
    force: "recommendation",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinAnnexG",
  },
  {
    key: "IEC 60364-5-52:2009, lighting, own supply",
    label: "IEC 60364-5-52:2009, lighting, own supply",
    edition: "IEC 60364-5-52:2009",
    grade: "reproduced",
    kind: "drop",
    force: "recommendation",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinAnnexG",
  },
  {
    key: "IEC 60364-5-52:2009, other uses, own supply",
    label: "IEC 60364-5-52:2009, other uses, own supply",
    edition: "IEC 60364-5-52:2009",
    grade: "reproduced",
    kind: "drop",
    force: "recommendation",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinAnnexG",
  },
  {
    key: "BS 7671:2018, lighting",
    label: "BS 7671:2018, lighting",
    edition: "BS 7671:2018",
    grade: "reproduced",
    kind: "drop",
    force: "recommendation",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinBs7671",
  },
  {
    key: "BS 7671:2018, other uses",
    label: "BS 7671:2018, other uses",
    edition: "BS 7671:2018",
    grade: "reproduced",
    kind: "drop",
    force: "recommendation",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinBs7671",
  },
  {
    key: "AS/NZS 3000:2018, point of supply to any point",
    label: "AS/NZS 3000:2018, point of supply to any point",
    edition: "AS/NZS 3000:2018",
    grade: "memory",
    kind: "drop",
    force: "requirement",
    stretch: "point of supply to any point",
    current: "maximum demand",
    plants: "none; loads",
    condition: "dropWithinAsNzs3000",
  },
  {
    key: "AS/NZS 4777.1:2016, inverter to point of supply",
    label: "AS/NZS 4777.1:2016, inverter to point of supply",
    edition: "AS/NZS 4777.1:2016",
    grade: "reproduced",
    kind: "rise",
    force: "requirement",
    stretch: "point of supply to the inverter terminals",
    current: "rated current of the inverters",
    plants: "all inverters of the installation",
    condition: "riseWithinAsNzs4777",
  },
  {
    key: "VDE-AR-N 4105:2018, connection point",
    label: "VDE-AR-N 4105:2018, connection point",
    edition: "VDE-AR-N 4105:2018",
    grade: "memory",
    kind: "rise",
    force: "requirement",
    stretch: "network transformer to the connection point",
    current: "largest apparent power",
    plants: "all generators of the low-voltage network",
    condition: "riseWithinVde4105",
  },
  {
    key: "REBT:2002, generator to connection",
    label: "REBT:2002, generator to connection",
    edition: "REBT:2002",
    grade: "copied",
    kind: "rise",
    force: "requirement",
    stretch: "generator to the connection with the network or installation",
    current: "nominal current",
    plants: "this plant",
    condition: "changeWithinRebt",
  },
  {
    key: "REBT:2002, lighting or dwelling",
    label: "REBT:2002, lighting or dwelling",
    edition: "REBT:2002",
    grade: "copied",
    kind: "drop",
    force: "requirement",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinRebt",
  },
  {
    key: "REBT:2002, other uses",
    label: "REBT:2002, other uses",
    edition: "REBT:2002",
    grade: "copied",
    kind: "drop",
    force: "requirement",
    stretch: "origin of the installation to the load",
    current: "design current",
    plants: "none; loads",
    condition: "dropWithinRebt",
  },
  {
    key: "NFPA 70:2017, branch circuit or feeder",
    label: "NFPA 70:2017, branch circuit or feeder",
    edition: "NFPA 70:2017",
    grade: "copied",
    kind: "drop",
    force: "recommendation",
    stretch: "branch circuit or feeder alone",
    current: "load current",
    plants: "none; loads",
    condition: "dropWithinNfpa70",
  },
  {
    key: "NFPA 70:2017, feeder and branch circuit",
    label: "NFPA 70:2017, feeder and branch circuit",
    edition: "NFPA 70:2017",
    grade: "copied",
    kind: "drop",
    force: "recommendation",
    stretch: "feeder and branch circuit together",
    current: "load current",
    plants: "none; loads",
    condition: "dropWithinNfpa70",
  },
  {
    key: "MCS guide:2012, array to inverter",
    label: "MCS guide:2012, array to inverter",
    edition: "MCS guide:2012",
    grade: "memory",
    kind: "drop",
    force: "requirement",
    stretch: "array to inverter",
    current: "current at maximum power, standard test conditions",
    plants: "this plant",
    condition: "directDropWithinMcs",
  },
  {
    key: "AS/NZS 5033 practice, array to inverter",
    label: "AS/NZS 5033 practice, array to inverter",
    edition: "none",
    grade: "memory",
    kind: "drop",
    force: "recommendation",
    stretch: "array to inverter",
    current: "current at maximum power",
    plants: "this plant",
    condition: "directDropWithinPractice",
  },
  {
    key: "Penn State, direct current",
    label: "Penn State, direct current",
    edition: "Penn State AE 868:undated",
    grade: "original",
    kind: "drop",
    force: "recommendation",
    stretch: "array to inverter",
    current: "current at maximum power",
    plants: "this plant",
    condition: "directDropWithinPractice",
  },
  {
    key: "Penn State, alternating current",
    label: "Penn State, alternating current",
    edition: "Penn State AE 868:undated",
    grade: "original",
    kind: "rise",
    force: "recommendation",
    stretch: "inverter to meter",
    current: "rated current of the inverter",
    plants: "this plant",
    condition: "alternatingDropWithinPractice",
  },
] as const satisfies readonly VoltageLimit[];

/** Key of a limit of voltage change. */
export type VoltageLimitKey = (typeof voltageLimits)[number]["key"];

const conditions = {
  alternatingDropWithinPractice,
  changeWithinRebt,
  directDropWithinMcs,
  directDropWithinPractice,
  dropWithinAnnexG,
  dropWithinAsNzs3000,
  dropWithinBs7671,
  dropWithinNfpa70,
  dropWithinRebt,
  riseWithinAsNzs4777,
  riseWithinVde4105,
};

/** A voltage change against a limit. */
export interface VoltageLimitRequest {
  readonly limit: VoltageLimitKey;
  /** The change over the stretch, at the current and by the plants that the limit is made for. */
  readonly share: Known<Input<"ratio">>;
  readonly at: string;
  /** Length of the main wiring: annex G allows more beyond 100 m. */
  readonly length?: Known<Input<"length">>;
}

/** Whether a voltage change is within a limit; the caller answers for stretch, current and plants being those of the limit. */
export function voltageLimitCheck({ limit, share, at, length }: VoltageLimitRequest): Check {
  const { condition, plants, current, stretch } = voltageLimits.find(({ key }) => key === limit)!;
  const tabulated = voltageLimitShares({ limit });
  const due = condition === "dropWithinAnnexG" && length !== undefined ? supplemented(tabulated, length) : tabulated;
  return conditions[condition]({ value: share, limit: due, at, because: `${stretch}; ${current}; ${plants}` });
}

function supplemented(tabulatedLimit: Quantity<"ratio">, length: Known<Input<"length">>): Known<Quantity<"ratio">> {
  return whenKnown({ length }, (known) => annexGLimit({ tabulatedLimit, supplement: annexGSupplement(known) }));
}
