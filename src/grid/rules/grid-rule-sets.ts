import type { Grade, SourceKey } from "../../source/index.js";
import type { SupplySystem } from "../supply/supply-systems.js";
import { fromClosedList } from "./closed-list.js";

const FIFTY: readonly SupplySystem[] = ["230/400 V 50 Hz"];
const SIXTY: readonly SupplySystem[] = ["120/240 V 60 Hz split-phase", "208Y/120 V 60 Hz", "480Y/277 V 60 Hz"];
const EITHER: readonly SupplySystem[] = [
  "230/400 V 50 Hz",
  "120/240 V 60 Hz split-phase",
  "208Y/120 V 60 Hz",
  "480Y/277 V 60 Hz",
];

/** Rules for connection to a grid, each in its edition; the grade is that of most of its values. */
// prettier-ignore
export const gridRuleSets = [
  { key: "EN 50549-1:2019", label: "EN 50549-1, low voltage: ranges; the network operator sets the values", edition: "EN 50549-1:2019", grade: "memory", supplies: FIFTY, note: "the document gives ranges and defaults; every setting is the network operator's" },
  { key: "VDE-AR-N 4105:2018", label: "Germany, low voltage, edition 2018-11", edition: "VDE-AR-N 4105:2018", grade: "memory", supplies: FIFTY, note: "public notes say that a 2026 edition has replaced it: ask which applies" },
  { key: "VDE-AR-N 4105:2011", label: "Germany, low voltage, edition 2011-08 (superseded)", edition: "VDE-AR-N 4105:2011", grade: "memory", supplies: FIFTY, note: "superseded by the 2018 edition; for existing plants only" },
  { key: "EREC G98:2022", label: "Great Britain, up to 16 A per phase", edition: "EREC G98:2022", grade: "memory", supplies: FIFTY, note: null },
  { key: "EREC G99:2019", label: "Great Britain, above 16 A per phase, type A, low voltage", edition: "EREC G99:2019", grade: "memory", supplies: FIFTY, note: null },
  { key: "AS/NZS 4777.2:2020 Australia A", label: "Australia, region A", edition: "AS/NZS 4777.2:2020", grade: "memory", supplies: FIFTY, note: null },
  { key: "AS/NZS 4777.2:2020 Australia B", label: "Australia, region B (such as Western Australia)", edition: "AS/NZS 4777.2:2020", grade: "memory", supplies: FIFTY, note: null },
  { key: "AS/NZS 4777.2:2020 Australia C", label: "Australia, region C", edition: "AS/NZS 4777.2:2020", grade: "memory", supplies: FIFTY, note: null },
  { key: "AS/NZS 4777.2:2020 New Zealand", label: "New Zealand", edition: "AS/NZS 4777.2:2020", grade: "memory", supplies: FIFTY, note: "made for a supply range of ±6 %; since 13 November 2025 the range is ±10 % and Australian settings are advised meanwhile" },
  { key: "IEEE 1547:2018 category A I", label: "IEEE 1547, normal category A, abnormal category I", edition: "IEEE 1547:2018", grade: "copied", supplies: SIXTY, note: null },
  { key: "IEEE 1547:2018 category A II", label: "IEEE 1547, normal category A, abnormal category II", edition: "IEEE 1547:2018", grade: "copied", supplies: SIXTY, note: null },
  { key: "IEEE 1547:2018 category A III", label: "IEEE 1547, normal category A, abnormal category III", edition: "IEEE 1547:2018", grade: "copied", supplies: SIXTY, note: null },
  { key: "IEEE 1547:2018 category B I", label: "IEEE 1547, normal category B, abnormal category I", edition: "IEEE 1547:2018", grade: "copied", supplies: SIXTY, note: null },
  { key: "IEEE 1547:2018 category B II", label: "IEEE 1547, normal category B, abnormal category II", edition: "IEEE 1547:2018", grade: "copied", supplies: SIXTY, note: null },
  { key: "IEEE 1547:2018 category B III", label: "IEEE 1547, normal category B, abnormal category III", edition: "IEEE 1547:2018", grade: "copied", supplies: SIXTY, note: null },
  { key: "IEEE 1547:2003", label: "IEEE 1547, fixed trip table (superseded)", edition: "IEEE 1547:2003", grade: "memory", supplies: SIXTY, note: "superseded by the 2018 edition; still met in older interconnection rules" },
  { key: "California Rule 21:2018", label: "California, smart inverter settings", edition: "California Rule 21:2018", grade: "memory", supplies: SIXTY, note: "a profile of a state: it replaces the defaults of IEEE 1547" },
  { key: "ISO-NE source requirements:2018", label: "New England, source requirement document", edition: "ISO-NE source requirements:2018", grade: "memory", supplies: SIXTY, note: "a profile of a system operator: it replaces the defaults of IEEE 1547" },
  { key: "CEI 0-21:2012", label: "Italy, low voltage, narrow window 49.5 to 50.5 Hz", edition: "CEI 0-21:2012", grade: "memory", supplies: FIFTY, note: "later editions are recalled with 49.8 to 50.2 Hz: ask which applies" },
  { key: "CEI 0-21:2016", label: "Italy, low voltage, editions from 2016", edition: "CEI 0-21:2016", grade: "memory", supplies: FIFTY, note: "the narrow window is recalled; a relay manual of 2020 prints 49.5 to 50.5 Hz" },
  { key: "IEC 61727:2004", label: "IEC 61727, utility interface", edition: "IEC 61727:2004", grade: "memory", supplies: EITHER, note: null },
  { key: "RD 1699/2011:2011", label: "Spain, text of 2011 (superseded)", edition: "RD 1699/2011:2011", grade: "copied", supplies: FIFTY, note: "overfrequency held until 2014 only" },
  { key: "RD 1699/2011:2014", label: "Spain, text from 10 June 2014 (superseded)", edition: "RD 1699/2011:2014", grade: "copied", supplies: FIFTY, note: "superseded in 2020" },
  { key: "RD 1699/2011:2020", label: "Spain, text from 8 July 2020", edition: "RD 1699/2011:2020", grade: "copied", supplies: FIFTY, note: "the text holds no figures any more; thresholds stand in a table that was not seen and in the network code order" },
  { key: "REBT ITC-BT-40:2002", label: "Spain, low-voltage regulation, generators", edition: "REBT:2002", grade: "copied", supplies: FIFTY, note: "rules of the electricity sector, such as RD 1699/2011, prevail where they differ" },
  { key: "Synergrid C10/11:undated", label: "Belgium, C10/11", edition: "Synergrid C10/11:undated", grade: "reproduced", supplies: FIFTY, note: null },
  { key: "Netcode elektriciteit:undated", label: "Netherlands, before the proposal of 2023", edition: "Netcode elektriciteit:undated", grade: "reproduced", supplies: FIFTY, note: "a proposal of 2023 would raise the overvoltage threshold to 115 %; whether it came into force was not seen" },
  { key: "DIN VDE 0126-1-1/A1:undated", label: "DIN VDE 0126-1-1 with amendment 1, as used for France", edition: "DIN VDE 0126-1-1/A1:undated", grade: "reproduced", supplies: FIFTY, note: null },
  { key: "TOR Erzeuger:undated", label: "Austria, TOR", edition: "TOR Erzeuger:undated", grade: "reproduced", supplies: FIFTY, note: "no settings were seen: all are the network operator's" },
  { key: "ESB Networks micro-generation:2021", label: "Ireland, micro-generation from 17 December 2021", edition: "ESB Networks micro-generation:2021", grade: "original", supplies: FIFTY, note: "the settings of 2021 were not seen: all are the network operator's" },
] as const satisfies readonly GridRuleSet[];

/** One set of connection rules. */
export interface GridRuleSet {
  readonly key: string;
  readonly label: string;
  readonly edition: SourceKey;
  readonly grade: Grade;
  /** The supply systems that it is made for. */
  readonly supplies: readonly SupplySystem[];
  /** What a designer must know before using it. */
  readonly note: string | null;
}

/** Identity of a set of connection rules. */
export type GridRules = (typeof gridRuleSets)[number]["key"];

/**
 * The set of connection rules of a name.
 *
 * @throws InputError that lists the known sets where the name is another
 * @example
 * ```ts
 * import { gridRuleSet } from "pv-to-grid/grid";
 * gridRuleSet("EREC G98:2022").supplies; // ["230/400 V 50 Hz"]
 * ```
 */
export function gridRuleSet(name: string, path = "grid"): GridRuleSet & { readonly key: GridRules } {
  return fromClosedList(gridRuleSets, name, path, "set of connection rules");
}
