import { type Check, condition, formula } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { InterfaceSettings } from "./interface-settings.js";
import type { SettingKey } from "./setting-keys.js";

/**
 * Voltage as a share of the nominal voltage.
 *
 * @function
 * @example
 * ```ts
 * import { voltageShareOf } from "pv-to-grid/grid";
 * voltageShareOf({ voltage: "230 V", nominalVoltage: "230 V" }).text; // "1"
 * ```
 */
export const voltageShareOf = /* @__PURE__ */ formula({
  id: "grid/voltage-share-of",
  about: "voltage as a share of the nominal voltage",
  takes: {
    voltage: { unit: "V", symbol: "U", about: "voltage", from: 0, usual: [0, 1000] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "p.u.", symbol: "u" },
  expression: "voltage / nominalVoltage",
  source: [{ in: "common practice", clause: "definition", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Is the voltage at least the lowest for entering service?
 *
 * @function
 * @example
 * ```ts
 * import { voltageAboveReconnectionLow } from "pv-to-grid/grid";
 * voltageAboveReconnectionLow({ value: "0.937", limit: "0.917" }).verdict; // "met"
 * ```
 */
export const voltageAboveReconnectionLow = /* @__PURE__ */ condition({
  id: "grid/voltage-above-reconnection-low",
  asks: "Is the voltage at least the lowest for entering service?",
  force: "requirement",
  value: { unit: "p.u.", symbol: "u", about: "voltage" },
  relation: "≥",
  limit: { unit: "p.u.", symbol: "u_low", about: "lowest voltage for entering service" },
  source: [{ in: "IEEE 1547.1:2020", clause: "table 11", grade: "copied", seen: "UL1741SB test scripts:2026, EnterService" }],
});

/**
 * Is the voltage at most the highest for entering service?
 *
 * @function
 * @example
 * ```ts
 * import { voltageBelowReconnectionHigh } from "pv-to-grid/grid";
 * voltageBelowReconnectionHigh({ value: "1.06", limit: "1.05" }).verdict; // "not met"
 * ```
 */
export const voltageBelowReconnectionHigh = /* @__PURE__ */ condition({
  id: "grid/voltage-below-reconnection-high",
  asks: "Is the voltage at most the highest for entering service?",
  force: "requirement",
  value: { unit: "p.u.", symbol: "u", about: "voltage" },
  relation: "≤",
  limit: { unit: "p.u.", symbol: "u_high", about: "highest voltage for entering service" },
  source: [{ in: "IEEE 1547.1:2020", clause: "table 11", grade: "copied", seen: "UL1741SB test scripts:2026, EnterService" }],
});

/**
 * Is the frequency at least the lowest for entering service?
 *
 * @function
 * @example
 * ```ts
 * import { frequencyAboveReconnectionLow } from "pv-to-grid/grid";
 * frequencyAboveReconnectionLow({ value: "59.52 Hz", limit: "59.5 Hz" }).verdict; // "met"
 * ```
 */
export const frequencyAboveReconnectionLow = /* @__PURE__ */ condition({
  id: "grid/frequency-above-reconnection-low",
  asks: "Is the frequency at least the lowest for entering service?",
  force: "requirement",
  value: { unit: "Hz", symbol: "f", about: "frequency" },
  relation: "≥",
  limit: { unit: "Hz", symbol: "f_low", about: "lowest frequency for entering service" },
  source: [{ in: "IEEE 1547.1:2020", clause: "table 11", grade: "copied", seen: "UL1741SB test scripts:2026, EnterService" }],
});

/**
 * Is the frequency at most the highest for entering service?
 *
 * @function
 * @example
 * ```ts
 * import { frequencyBelowReconnectionHigh } from "pv-to-grid/grid";
 * frequencyBelowReconnectionHigh({ value: "60.2 Hz", limit: "60.1 Hz" }).verdict; // "not met"
 * ```
 */
export const frequencyBelowReconnectionHigh = /* @__PURE__ */ condition({
  id: "grid/frequency-below-reconnection-high",
  asks: "Is the frequency at most the highest for entering service?",
  force: "requirement",
  value: { unit: "Hz", symbol: "f", about: "frequency" },
  relation: "≤",
  limit: { unit: "Hz", symbol: "f_high", about: "highest frequency for entering service" },
  source: [{ in: "IEEE 1547.1:2020", clause: "table 11", grade: "copied", seen: "UL1741SB test scripts:2026, EnterService" }],
});

/** Whether a plant may enter service at a voltage and a frequency, as far as the rules print a window. */
export function enterServiceChecks(
  { rows }: InterfaceSettings,
  state: {
    readonly voltage: Input<"voltage">;
    readonly nominalVoltage: Input<"voltage">;
    readonly frequency: Input<"frequency">;
  },
  at: string,
): readonly Check[] {
  const printed = (key: SettingKey): Quantity | undefined => rows.find((row) => row.key === key)?.setting?.printed;
  const { voltage, nominalVoltage, frequency } = state;
  const value = voltageShareOf({ voltage, nominalVoltage });
  const checks: Check[] = [];
  const share = (key: SettingKey): Quantity<"ratio"> | undefined => printed(key) as Quantity<"ratio"> | undefined;
  const hertz = (key: SettingKey): Quantity<"frequency"> | undefined =>
    printed(key) as Quantity<"frequency"> | undefined;
  const [lowVoltage, highVoltage] = [share("reconnectionVoltageLow"), share("reconnectionVoltageHigh")];
  const [lowFrequency, highFrequency] = [hertz("reconnectionFrequencyLow"), hertz("reconnectionFrequencyHigh")];
  if (lowVoltage) checks.push(voltageAboveReconnectionLow({ value, limit: lowVoltage, at }));
  if (highVoltage) checks.push(voltageBelowReconnectionHigh({ value, limit: highVoltage, at }));
  if (lowFrequency) checks.push(frequencyAboveReconnectionLow({ value: frequency, limit: lowFrequency, at }));
  if (highFrequency) checks.push(frequencyBelowReconnectionHigh({ value: frequency, limit: highFrequency, at }));
  return Object.freeze(checks);
}
