/** What a setting does. */
export type SettingKind = "protection" | "ride-through" | "reconnection" | "control";

/** What a setting is measured in. */
export type SettingQuantity = "voltage" | "frequency" | "rate of change of frequency" | "time" | "ramp" | "droop";

interface SettingDeclaration {
  readonly key: string;
  readonly label: string;
  readonly kind: SettingKind;
  readonly quantity: SettingQuantity;
  /** Name in IEEE 1547-2018 and 1547.1-2020; `null` where it has none. */
  readonly ieee1547: string | null;
  /** Logical node of IEC 61850-7-4 or 61850-7-420, as recalled; `null` where none is known. */
  readonly iec61850: string | null;
}

/** Every setting that a set of connection rules may bring, in the order of a settings sheet. */
// prettier-ignore
export const settingKeys = [
  { key: "overvoltage2", label: "overvoltage, fast stage", kind: "protection", quantity: "voltage", ieee1547: "OV2", iec61850: "PTOV" },
  { key: "overvoltage1", label: "overvoltage, slow stage", kind: "protection", quantity: "voltage", ieee1547: "OV1", iec61850: "PTOV" },
  { key: "sustainedOvervoltage", label: "overvoltage, mean of 10 minutes", kind: "protection", quantity: "voltage", ieee1547: null, iec61850: "PTOV" },
  { key: "undervoltage1", label: "undervoltage, slow stage", kind: "protection", quantity: "voltage", ieee1547: "UV1", iec61850: "PTUV" },
  { key: "undervoltage2", label: "undervoltage, fast stage", kind: "protection", quantity: "voltage", ieee1547: "UV2", iec61850: "PTUV" },
  { key: "undervoltage3", label: "undervoltage, fastest stage", kind: "protection", quantity: "voltage", ieee1547: null, iec61850: "PTUV" },
  { key: "overfrequency2", label: "overfrequency, fast stage", kind: "protection", quantity: "frequency", ieee1547: "OF2", iec61850: "PTOF" },
  { key: "overfrequency1", label: "overfrequency", kind: "protection", quantity: "frequency", ieee1547: "OF1", iec61850: "PTOF" },
  { key: "overfrequencyNarrow", label: "overfrequency, narrow window", kind: "protection", quantity: "frequency", ieee1547: null, iec61850: "PTOF" },
  { key: "underfrequencyNarrow", label: "underfrequency, narrow window", kind: "protection", quantity: "frequency", ieee1547: null, iec61850: "PTUF" },
  { key: "underfrequency1", label: "underfrequency", kind: "protection", quantity: "frequency", ieee1547: "UF1", iec61850: "PTUF" },
  { key: "underfrequency2", label: "underfrequency, fast stage", kind: "protection", quantity: "frequency", ieee1547: "UF2", iec61850: "PTUF" },
  { key: "rateOfChangeOfFrequency", label: "rate of change of frequency", kind: "protection", quantity: "rate of change of frequency", ieee1547: null, iec61850: "PFRC" },
  { key: "rideThroughRate", label: "rate of change of frequency to ride through", kind: "ride-through", quantity: "rate of change of frequency", ieee1547: "ROCOF", iec61850: null },
  { key: "reconnectionVoltageLow", label: "lowest voltage for reconnection", kind: "reconnection", quantity: "voltage", ieee1547: "ES_V_LOW", iec61850: "DCTE" },
  { key: "reconnectionVoltageHigh", label: "highest voltage for reconnection", kind: "reconnection", quantity: "voltage", ieee1547: "ES_V_HIGH", iec61850: "DCTE" },
  { key: "reconnectionFrequencyLow", label: "lowest frequency for reconnection", kind: "reconnection", quantity: "frequency", ieee1547: "ES_F_LOW", iec61850: "DCTE" },
  { key: "reconnectionFrequencyHigh", label: "highest frequency for reconnection", kind: "reconnection", quantity: "frequency", ieee1547: "ES_F_HIGH", iec61850: "DCTE" },
  { key: "startFrequencyHigh", label: "highest frequency for the first start", kind: "reconnection", quantity: "frequency", ieee1547: null, iec61850: "DCTE" },
  { key: "reconnectionTime", label: "observation time before reconnection", kind: "reconnection", quantity: "time", ieee1547: "ES_DELAY", iec61850: "DCTE" },
  { key: "reconnectionTimeAfterShortInterruption", label: "observation time after a short interruption", kind: "reconnection", quantity: "time", ieee1547: null, iec61850: "DCTE" },
  { key: "shortInterruption", label: "longest interruption that counts as short", kind: "reconnection", quantity: "time", ieee1547: null, iec61850: null },
  { key: "rampTime", label: "time from zero to full power", kind: "reconnection", quantity: "time", ieee1547: "ES_RAMP_RATE", iec61850: "DCTE" },
  { key: "ramp", label: "ramp after reconnection", kind: "reconnection", quantity: "ramp", ieee1547: null, iec61850: null },
  { key: "overfrequencyStart", label: "start of the reduction at high frequency", kind: "control", quantity: "frequency", ieee1547: null, iec61850: "DHFW" },
  { key: "overfrequencyDroop", label: "droop at high frequency", kind: "control", quantity: "droop", ieee1547: null, iec61850: "DHFW" },
  { key: "underfrequencyStart", label: "start of the increase at low frequency", kind: "control", quantity: "frequency", ieee1547: null, iec61850: "DLFW" },
  { key: "underfrequencyDroop", label: "droop at low frequency", kind: "control", quantity: "droop", ieee1547: null, iec61850: "DLFW" },
  { key: "droopDeadBand", label: "dead band of the frequency droop", kind: "control", quantity: "frequency", ieee1547: "dbOF, dbUF", iec61850: "DHFW, DLFW" },
  { key: "frequencyDroop", label: "frequency droop", kind: "control", quantity: "droop", ieee1547: "kOF, kUF", iec61850: "DHFW, DLFW" },
  { key: "droopResponseTime", label: "open-loop response time of the frequency droop", kind: "control", quantity: "time", ieee1547: "T_response", iec61850: "DHFW, DLFW" },
] as const satisfies readonly SettingDeclaration[];

/** Key of a setting. */
export type SettingKey = (typeof settingKeys)[number]["key"];
