import type { PlantDescription } from "../plant/index.js";

/** File of the schema that a starting description names, beside it. */
export const SCHEMA_FILE = "plant.schema.json";

const REPLACE = "invented; replace by your datasheet and its revision";

/** A description to begin with: small, whole, every value invented and said to be. */
export const startingPlant: PlantDescription = {
  $schema: `./${SCHEMA_FILE}`,
  format: "pv-to-grid/plant@1",
  name: "My roof",
  rules: { wiring: "IEC 60364:2009-2017", pv: "IEC 62548-1:2023", grid: "EN 50549-1:2019", supply: "230/400 V 50 Hz" },
  site: {
    coldest: "-14 °C",
    hottest: "36 °C",
    altitude: "240 m",
    building: "individual residential",
    statedIn: "invented; replace by the extremes of your place",
  },
  moduleTypes: {
    "Module 440": {
      statedIn: REPLACE,
      maximumPower: "440 W",
      openCircuitVoltage: "39.2 V",
      shortCircuitCurrent: "14.1 A",
      mppVoltage: "32.8 V",
      mppCurrent: "13.42 A",
      openCircuitVoltageCoefficient: "-0.26 %/K",
      shortCircuitCurrentCoefficient: "0.05 %/K",
      maximumPowerCoefficient: "-0.31 %/K",
      maximumSystemVoltage: "1000 V",
      maximumSeriesFuse: "25 A",
      protectionClass: "II",
      bifacial: false,
      connectorVoltage: "1000 V",
    },
  },
  roofs: [
    {
      name: "South",
      moduleType: "Module 440",
      modules: 14,
      tilt: "30 deg",
      azimuth: "180 deg",
      mounting: "close roof mount",
    },
  ],
  inverters: [
    {
      name: "INV1",
      statedIn: REPLACE,
      apparentPower: "5 kVA",
      acVoltage: "400 V",
      phases: 3,
      maximumAcCurrent: "8 A",
      maximumDcVoltage: "1000 V",
      mppVoltageRange: ["200 V", "850 V"],
      startVoltage: "180 V",
      maximumDcPower: "7.5 kW",
      maximumAltitude: "2000 m",
      isolated: false,
      functionalEarthing: false,
      insulationMonitoring: true,
      residualCurrent: { monitored: true, rcdTypeAllowed: "A", standingLeakage: "10 mA" },
      maximumAcDevice: "32 A",
      dcSwitch: "built in",
      terminals: { ac: ["2.5 mm2", "10 mm2"], dc: ["2.5 mm2", "6 mm2"], temperature: "90 °C" },
      backfeedCurrent: "0 A",
      connectorVoltage: "1000 V",
      trackers: [
        { name: "A", inputs: 1, maximumInputCurrent: "16 A", shortCircuitRating: "24 A" },
        { name: "B", inputs: 1, maximumInputCurrent: "16 A", shortCircuitRating: "24 A" },
      ],
    },
  ],
  strings: [{ inverter: "INV1", tracker: "A", roof: "South", modules: 14 }],
  routes: [
    {
      from: "South",
      to: "INV1",
      cable: { kind: "PV", size: "choose" },
      conductorLimit: "90 °C",
      stretches: [
        { place: "behind modules", length: "6 m", ambient: "70 °C", grouped: 0 },
        { place: "loft", length: "16 m", ambient: "50 °C", grouped: 0 },
      ],
    },
    {
      from: "INV1",
      to: "Main board",
      breaker: {
        rating: "choose",
        characteristic: "B",
        breakingCapacity: "6 kA",
        neighboursLoaded: false,
      },
      rcd: "none",
      cable: { kind: "multi-core", conductor: "copper", insulation: "PVC", size: "choose" },
      stretches: [{ place: "wall", length: "18 m", ambient: "30 °C", grouped: 0, referenceMethod: "C" }],
    },
  ],
  boards: [{ name: "Main board", busbarRating: "63 A", mainSwitch: "63 A", supplyDevice: "gG 35 A" }],
  supply: { at: "Main board", earthing: "TN-S", lineToNeutral: "230 V", frequency: "50 Hz" },
};
