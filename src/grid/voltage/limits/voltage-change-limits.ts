import type { Force } from "../../../formula/index.js";
import type { Quantity } from "../../../quantity/index.js";
import type { SourceKey } from "../../../source/index.js";
import type { GridRules } from "../../rules/grid-rule-sets.js";
import { asNzs4777_1_2016_voltageRiseLimit } from "./as-nzs-4777-1.js";
import { mcs_2012_voltageRiseTarget } from "./mcs.js";
import { pennState_acVoltageTarget } from "./penn-state.js";
import { rd1699_2011_voltageChangeLimit } from "./rd-1699.js";
import { rebt_2002_voltageChangeLimit } from "./rebt-itc-bt-40.js";
import { tor_undated_voltageChangeLimit } from "./tor.js";
import { vdeArN4105_2011_voltageChangeLimit } from "./vde-ar-n-4105-2011.js";
import { vdeArN4105_2018_voltageChangeLimit } from "./vde-ar-n-4105-2018.js";
import { westernPower_2017_voltageRiseTarget } from "./western-power.js";

/** A limit of the voltage change: where it holds, and whose plants count. */
export interface VoltageChangeLimit {
  readonly key: string;
  readonly document: SourceKey;
  readonly clause: string;
  /** `network`: up to the connection point; `installation`: from there to the inverter terminals. */
  readonly place: "network" | "installation";
  readonly counts: "this plant" | "all plants";
  readonly force: Exclude<Force, "yield">;
  /** The sets of connection rules under which it is checked. */
  readonly rules: readonly GridRules[];
  readonly limit: (symbols: { readonly nominalVoltage: Quantity<"voltage"> }) => Quantity<"voltage">;
}

const AUSTRALASIA = [
  "AS/NZS 4777.2:2020 Australia A",
  "AS/NZS 4777.2:2020 Australia B",
  "AS/NZS 4777.2:2020 Australia C",
  "AS/NZS 4777.2:2020 New Zealand",
] as const;
const SPAIN = ["RD 1699/2011:2011", "RD 1699/2011:2014", "RD 1699/2011:2020"] as const;
const AMERICA = [
  "IEEE 1547:2018 category A I",
  "IEEE 1547:2018 category A II",
  "IEEE 1547:2018 category A III",
  "IEEE 1547:2018 category B I",
  "IEEE 1547:2018 category B II",
  "IEEE 1547:2018 category B III",
  "IEEE 1547:2003",
  "California Rule 21:2018",
  "ISO-NE source requirements:2018",
] as const;

/** Limits of the voltage change that plants cause, by document. */
export const voltageChangeLimits: readonly VoltageChangeLimit[] = [
  {
    key: "VDE-AR-N 4105:2018",
    document: "VDE-AR-N 4105:2018",
    clause: "5.3",
    place: "network",
    counts: "all plants",
    force: "requirement",
    rules: ["VDE-AR-N 4105:2018"],
    limit: vdeArN4105_2018_voltageChangeLimit,
  },
  {
    key: "VDE-AR-N 4105:2011",
    document: "VDE-AR-N 4105:2011",
    clause: "5.3",
    place: "network",
    counts: "all plants",
    force: "requirement",
    rules: ["VDE-AR-N 4105:2011"],
    limit: vdeArN4105_2011_voltageChangeLimit,
  },
  {
    key: "TOR Erzeuger",
    document: "TOR Erzeuger:undated",
    clause: "voltage change, low voltage",
    place: "network",
    counts: "all plants",
    force: "requirement",
    rules: ["TOR Erzeuger:undated"],
    limit: tor_undated_voltageChangeLimit,
  },
  {
    key: "AS/NZS 4777.1:2016",
    document: "AS/NZS 4777.1:2016",
    clause: "3.3.3",
    place: "installation",
    counts: "this plant",
    force: "requirement",
    rules: AUSTRALASIA,
    limit: asNzs4777_1_2016_voltageRiseLimit,
  },
  {
    key: "Western Power",
    document: "Western Power inverters:2017",
    clause: "installer checks",
    place: "installation",
    counts: "this plant",
    force: "recommendation",
    rules: ["AS/NZS 4777.2:2020 Australia B"],
    limit: westernPower_2017_voltageRiseTarget,
  },
  {
    key: "MCS",
    document: "MCS guide:2012",
    clause: "a.c. cable",
    place: "installation",
    counts: "this plant",
    force: "recommendation",
    rules: ["EREC G98:2022", "EREC G99:2019"],
    limit: mcs_2012_voltageRiseTarget,
  },
  {
    key: "Penn State",
    document: "Penn State AE 868:undated",
    clause: "lecture on wiring, a.c. side",
    place: "installation",
    counts: "this plant",
    force: "recommendation",
    rules: AMERICA,
    limit: pennState_acVoltageTarget,
  },
  {
    key: "RD 1699/2011",
    document: "RD 1699/2011:2011",
    clause: "12.3",
    place: "network",
    counts: "all plants",
    force: "requirement",
    rules: SPAIN,
    limit: rd1699_2011_voltageChangeLimit,
  },
  {
    key: "REBT ITC-BT-40",
    document: "REBT:2002",
    clause: "ITC-BT-40, section 5",
    place: "installation",
    counts: "this plant",
    force: "requirement",
    rules: ["RD 1699/2011:2011", "RD 1699/2011:2014", "RD 1699/2011:2020", "REBT ITC-BT-40:2002"],
    limit: rebt_2002_voltageChangeLimit,
  },
];

/** The limits that a set of connection rules brings. */
export function voltageChangeLimitsOf(rules: GridRules): readonly VoltageChangeLimit[] {
  return voltageChangeLimits.filter((limit) => limit.rules.includes(rules));
}
