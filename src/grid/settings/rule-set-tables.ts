import type { Table } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import type { SettingKey } from "./setting-keys.js";
import * as asNzs from "./tables/as-nzs-4777-2-2020.js";
import * as california from "./tables/california-rule-21.js";
import * as cei2012 from "./tables/cei-0-21-2012.js";
import * as cei2016 from "./tables/cei-0-21-2016.js";
import * as dinVde from "./tables/din-vde-0126-1-1.js";
import * as en50549 from "./tables/en-50549-1-2019.js";
import * as g98 from "./tables/erec-g98-2022.js";
import * as g99 from "./tables/erec-g99-2019.js";
import * as iec61727 from "./tables/iec-61727-2004.js";
import * as ieee2003 from "./tables/ieee-1547-2003.js";
import * as droop from "./tables/ieee-1547-2018-droop.js";
import * as ieee from "./tables/ieee-1547-2018.js";
import * as isoNe from "./tables/iso-ne.js";
import * as netcode from "./tables/netcode.js";
import * as rd2011 from "./tables/rd-1699-2011.js";
import * as rd2014 from "./tables/rd-1699-2014.js";
import * as rd2020 from "./tables/rd-1699-2020.js";
import * as rebt from "./tables/rebt-itc-bt-40.js";
import * as synergrid from "./tables/synergrid-c10-11.js";
import * as vde2011 from "./tables/vde-ar-n-4105-2011.js";
import * as vde from "./tables/vde-ar-n-4105-2018.js";

/** A table of settings: rows are keys of settings, columns the values or times that it prints. */
export type SettingTable = Pick<Table<never, Quantity>, "id" | "declaration" | "rows" | "cells">;

/** The tables of one set of connection rules. */
export interface RuleSetTables {
  /** Settings, in volts, shares of the nominal voltage, hertz, seconds …; column `value`. */
  readonly values: readonly SettingTable[];
  /** Deviations from the nominal frequency; column `value`. */
  readonly deviations?: readonly SettingTable[];
  /** Delays and clearing times; column `time`. */
  readonly times: readonly SettingTable[];
  /** The other headings of the tables. */
  readonly headings?: Readonly<Record<string, string>>;
  /** How a measured value is averaged before it is compared. */
  readonly averaging?: Readonly<Partial<Record<SettingKey, string>>>;
}

const ARITHMETIC_MEAN = "arithmetic mean of 3-second values over 10 minutes";
const RMS_MEAN = "moving r.m.s. mean over 10 minutes, renewed at most every 3 s";

function ieee1547(category: "I" | "II" | "III"): RuleSetTables {
  return {
    values: [
      ieee.ieee1547_2018_voltageTrip,
      ieee.ieee1547_2018_frequencyTrip,
      ieee.ieee1547_2018_rateOfChangeOfFrequency,
      ieee.ieee1547_2018_enterServiceVoltage,
      ieee.ieee1547_2018_enterServiceFrequency,
      ieee.ieee1547_2018_enterServiceTime,
      droop.ieee1547_2018_droopDeadBand,
      droop.ieee1547_2018_droop,
      droop.ieee1547_2018_droopResponseTime,
    ],
    times: [ieee.ieee1547_2018_voltageTripTime, ieee.ieee1547_2018_frequencyTripTime],
    headings: { category },
  };
}

function australasia(region: string): RuleSetTables {
  return {
    values: [
      asNzs.asNzs4777_2_2020_voltageLimits,
      asNzs.asNzs4777_2_2020_frequencyLimits,
      asNzs.asNzs4777_2_2020_reconnectionTime,
    ],
    times: [asNzs.asNzs4777_2_2020_times],
    headings: { region },
    averaging: { sustainedOvervoltage: "mean of 10 minutes" },
  };
}

/** The tables that hold the settings of a set of connection rules; `null` where no setting was seen or recalled. */
export function tablesOf(rules: GridRules): RuleSetTables | null {
  switch (rules) {
    case "EN 50549-1:2019":
      return {
        values: [
          en50549.en50549_1_2019_voltageRanges,
          en50549.en50549_1_2019_frequencyRanges,
          en50549.en50549_1_2019_reconnectionTime,
          en50549.en50549_1_2019_ramp,
          en50549.en50549_1_2019_droop,
        ],
        times: [en50549.en50549_1_2019_timeRanges],
        averaging: { sustainedOvervoltage: "mean of 10 minutes" },
      };
    case "VDE-AR-N 4105:2018":
      return {
        values: [
          vde.vdeArN4105_2018_voltageSettings,
          vde.vdeArN4105_2018_frequencySettings,
          vde.vdeArN4105_2018_reconnectionTime,
          vde.vdeArN4105_2018_ramp,
          vde.vdeArN4105_2018_droop,
        ],
        times: [vde.vdeArN4105_2018_delays],
        averaging: { sustainedOvervoltage: ARITHMETIC_MEAN },
      };
    case "VDE-AR-N 4105:2011":
      return {
        values: [vde2011.vdeArN4105_2011_voltageSettings, vde2011.vdeArN4105_2011_frequencySettings],
        times: [vde2011.vdeArN4105_2011_delays],
        averaging: { sustainedOvervoltage: ARITHMETIC_MEAN },
      };
    case "EREC G98:2022":
      return {
        values: [
          g98.erecG98_2022_voltageSettings,
          g98.erecG98_2022_frequencySettings,
          g98.erecG98_2022_rateOfChangeOfFrequency,
          g98.erecG98_2022_reconnectionTime,
          g98.erecG98_2022_droop,
        ],
        times: [g98.erecG98_2022_delays],
      };
    case "EREC G99:2019":
      return {
        values: [
          g99.erecG99_2019_voltageSettings,
          g99.erecG99_2019_frequencySettings,
          g99.erecG99_2019_rateOfChangeOfFrequency,
          g99.erecG99_2019_reconnectionTime,
          g99.erecG99_2019_droop,
        ],
        times: [g99.erecG99_2019_delays],
        averaging: { rateOfChangeOfFrequency: "measuring window of 500 ms" },
      };
    case "AS/NZS 4777.2:2020 Australia A":
      return australasia("Australia A");
    case "AS/NZS 4777.2:2020 Australia B":
      return australasia("Australia B");
    case "AS/NZS 4777.2:2020 Australia C":
      return australasia("Australia C");
    case "AS/NZS 4777.2:2020 New Zealand":
      return australasia("New Zealand");
    case "IEEE 1547:2018 category A I":
    case "IEEE 1547:2018 category B I":
      return ieee1547("I");
    case "IEEE 1547:2018 category A II":
    case "IEEE 1547:2018 category B II":
      return ieee1547("II");
    case "IEEE 1547:2018 category A III":
    case "IEEE 1547:2018 category B III":
      return ieee1547("III");
    case "IEEE 1547:2003":
      return {
        values: [
          ieee2003.ieee1547_2003_voltageTrip,
          ieee2003.ieee1547_2003_frequencyTrip,
          ieee2003.ieee1547_2003_reconnectionTime,
        ],
        times: [ieee2003.ieee1547_2003_clearingTime],
      };
    case "California Rule 21:2018":
      return {
        values: [california.californiaRule21_2018_voltageTrip, california.californiaRule21_2018_frequencyTrip],
        times: [california.californiaRule21_2018_clearingTime],
      };
    case "ISO-NE source requirements:2018":
      return {
        values: [isoNe.isoNe_2018_voltageTrip, isoNe.isoNe_2018_frequencyTrip],
        times: [isoNe.isoNe_2018_clearingTime],
      };
    case "CEI 0-21:2012":
      return {
        values: [cei2012.cei0_21_2012_voltageSettings, cei2012.cei0_21_2012_frequencySettings],
        times: [cei2012.cei0_21_2012_delays],
        averaging: { sustainedOvervoltage: RMS_MEAN },
      };
    case "CEI 0-21:2016":
      return {
        values: [cei2016.cei0_21_2016_voltageSettings, cei2016.cei0_21_2016_frequencySettings],
        times: [cei2016.cei0_21_2016_delays],
        averaging: { sustainedOvervoltage: RMS_MEAN },
      };
    case "IEC 61727:2004":
      return {
        values: [iec61727.iec61727_2004_voltageLimits, iec61727.iec61727_2004_reconnectionTime],
        deviations: [iec61727.iec61727_2004_frequencyDeviation],
        times: [iec61727.iec61727_2004_tripTimes],
      };
    case "RD 1699/2011:2011":
      return {
        values: [rd2011.rd1699_2011_voltageSettings, rd2011.rd1699_2011_frequencySettings],
        times: [rd2011.rd1699_2011_times],
      };
    case "RD 1699/2011:2014":
      return {
        values: [rd2014.rd1699_2014_voltageSettings, rd2014.rd1699_2014_frequencySettings],
        times: [rd2014.rd1699_2014_times],
      };
    case "RD 1699/2011:2020":
      return {
        values: [rd2020.rd1699_2020_voltageSettings, rd2020.rd1699_2020_reconnectionFrequency],
        times: [rd2020.rd1699_2020_times],
      };
    case "REBT ITC-BT-40:2002":
      return {
        values: [rebt.rebt_2002_voltageSettings, rebt.rebt_2002_frequencySettings],
        times: [rebt.rebt_2002_times],
      };
    case "Synergrid C10/11:undated":
      return {
        values: [synergrid.synergridC10_11_undated_voltageSettings, synergrid.synergridC10_11_undated_reconnectionTime],
        times: [],
      };
    case "Netcode elektriciteit:undated":
      return { values: [netcode.netcode_undated_voltageSettings], times: [] };
    case "DIN VDE 0126-1-1/A1:undated":
      return {
        values: [dinVde.dinVde0126_1_1_undated_voltageSettings],
        times: [dinVde.dinVde0126_1_1_undated_tripTime],
      };
    case "TOR Erzeuger:undated":
    case "ESB Networks micro-generation:2021":
      return null;
  }
}
