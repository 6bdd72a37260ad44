import { condition } from "../../formula/index.js";

// The value is the same in all of them; each limit is a check of its own, with its own source and remedy.

/** Is the string's open-circuit voltage at the lowest temperature within the inverter's largest d.c. voltage? @function */
export const coldVoltageWithinInverter = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-inverter",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the inverter's largest d.c. voltage?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_DC,max", about: "largest d.c. voltage of the inverter" },
  source: [
    { in: "AS/NZS 5033:2021", clause: "4.5.1.1", grade: "reproduced", seen: "Solar Victoria checklist:undated, performance 2" },
    { in: "IEC 62548-1:2023", clause: "maximum voltage of the PV array", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down", "inverters[].maximumDcVoltage": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the module's largest system voltage? @function */
export const coldVoltageWithinModule = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-module",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the module's largest system voltage?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_sys,max", about: "largest system voltage of the module" },
  source: [
    { in: "Solahart module manual:undated", clause: "5.1.2", grade: "original" },
    { in: "IEC 62548-1:2023", clause: "PV modules, operating voltage", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down", "moduleTypes[].maximumSystemVoltage": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the rated voltage of the d.c. connectors? @function */
export const coldVoltageWithinConnector = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-connector",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the rated voltage of the d.c. connectors?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_plug", about: "rated voltage of the connectors" },
  source: [
    { in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" },
    { in: "IEC 62548-1:2023", clause: "component requirements", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the rated d.c. voltage of the string cable? @function */
export const coldVoltageWithinCable = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-cable",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the rated d.c. voltage of the string cable?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_cable", about: "largest d.c. voltage of the cable" },
  source: [
    { in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" },
    { in: "EN 50618:2014", clause: "voltage rating", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the rated operational voltage of the d.c. switch? @function */
export const coldVoltageWithinSwitch = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-switch",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the rated operational voltage of the d.c. switch?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_e", about: "rated operational voltage of the switch" },
  source: [
    { in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" },
    { in: "IEC 60364-7-712:2017", clause: "712.536", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the rated voltage of the string fuses? @function */
export const coldVoltageWithinFuse = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-fuse",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the rated voltage of the string fuses?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_n", about: "rated d.c. voltage of the fuse" },
  source: [
    { in: "IEC 60269-6:2010", clause: "rated voltage", grade: "memory" },
    { in: "IEC 62548-1:2023", clause: "overcurrent protective devices", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the largest continuous voltage of the d.c. surge device? @function */
export const coldVoltageWithinSurgeDevice = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-surge-device",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the largest continuous voltage of the d.c. surge device?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_CPV", about: "largest continuous voltage of the surge device" },
  source: [
    { in: "IEC 60364-7-712:2017", clause: "712.534", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});

/** Is the string's open-circuit voltage at the lowest temperature within the highest voltage that the rules allow at this place? @function */
export const coldVoltageWithinLegalCeiling = /* @__PURE__ */ condition({
  id: "string/cold-voltage-within-legal-ceiling",
  asks: "Is the string's open-circuit voltage at the lowest temperature within the highest voltage that the rules allow at this place?",
  force: "requirement",
  value: { unit: "V", symbol: "U_OC,cold", about: "open-circuit voltage of the string at the lowest temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_law", about: "highest voltage that the rules allow" },
  source: [
    { in: "NFPA 70:2020", clause: "690.7", grade: "copied", seen: "California Electrical Code:2022, 690.7" },
    { in: "AS/NZS 4777.1:2024", clause: "4.3.2", grade: "reproduced", seen: "Solar Victoria checklist:undated, performance 1" },
    { in: "IEC 62548-1:2023", clause: "scope", grade: "memory" },
  ],
  worse: { "strings[].modules": "up", "moduleTypes[].openCircuitVoltage": "up", "site.coldest": "down" },
});
