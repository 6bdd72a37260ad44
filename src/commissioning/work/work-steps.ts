/** What a person does at a step. */
export type WorkKind = "check" | "measure" | "set" | "seal" | "confirm";

/** One step of the work at first switch-on. */
export interface WorkStep {
  readonly key: string;
  readonly phase: "before" | "d.c. side" | "a.c. side" | "switching on" | "afterwards";
  readonly kind: WorkKind;
  readonly text: string;
  readonly cautions: readonly string[];
  /** Readings of the sheet that the step fills in. */
  readonly readings: readonly string[];
}

const LIVE = "The strings are live in daylight, whatever is switched off.";

/** The order of work at first switch-on, with the usual cautions. The makers' instructions and the local rules prevail. */
export const workSteps: readonly WorkStep[] = [
  {
    key: "instructions",
    phase: "before",
    kind: "check",
    text: "Read the makers' instructions and the local rules; where they differ from this sheet, they prevail.",
    cautions: ["Work is for licensed people."],
    readings: [],
  },
  {
    key: "instruments",
    phase: "before",
    kind: "check",
    text: "Check that meters, leads and gloves are rated for the d.c. voltage of the longest string on a cold day, and prove the meter on a known source.",
    cautions: [LIVE],
    readings: [],
  },
  {
    key: "isolated",
    phase: "before",
    kind: "confirm",
    text: "De-energise the a.c. circuit of the inverter, lock it off, and prove it dead at the inverter.",
    cautions: ["Prove the tester before and after."],
    readings: [],
  },
  {
    key: "switches",
    phase: "before",
    kind: "confirm",
    text: "Open every d.c. switch; leave all string plugs unmated.",
    cautions: [LIVE, "Plugs are mated or parted only with the d.c. switch open and no current flowing."],
    readings: [],
  },
  {
    key: "inspection",
    phase: "d.c. side",
    kind: "check",
    text: "Inspect the array: module type and number of each string against the plan, cables fixed and unhurt, plugs of one make and type, labels in place.",
    cautions: [LIVE],
    readings: [],
  },
  {
    key: "bonding",
    phase: "d.c. side",
    kind: "measure",
    text: "Measure the continuity of the protective and bonding conductors, leads nulled, and compare with what length and section let expect.",
    cautions: [],
    readings: ["continuity"],
  },
  {
    key: "conditions",
    phase: "d.c. side",
    kind: "measure",
    text: "Read irradiance in the plane of the modules and the temperature of the back of a module, in steady light, just before and just after the strings.",
    cautions: [],
    readings: ["irradiance", "moduleTemperature"],
  },
  {
    key: "polarity",
    phase: "d.c. side",
    kind: "measure",
    text: "Measure polarity and open-circuit voltage of each string at its plugs before anything is connected; a reversed or wrong string is put right first.",
    cautions: [LIVE, "A string with reversed poles destroys inverters and can burn parallel strings."],
    readings: ["openCircuitVoltage"],
  },
  {
    key: "currents",
    phase: "d.c. side",
    kind: "measure",
    text: "Measure the short-circuit current of each string with a switch that is rated for it, or its operating current later under load.",
    cautions: ["Never make or break a short circuit with plugs: the arc does not go out."],
    readings: ["shortCircuitCurrent"],
  },
  {
    key: "arrayInsulation",
    phase: "d.c. side",
    kind: "measure",
    text: "Measure the insulation resistance of the array at its test voltage, with inverter and surge protective devices disconnected.",
    cautions: ["The array carries the test voltage: keep people away, and let it discharge before it is touched."],
    readings: ["insulationPositive", "insulationNegative", "insulationJoined"],
  },
  {
    key: "seal",
    phase: "d.c. side",
    kind: "seal",
    text: "Seal every unused d.c. input with the maker's cap.",
    cautions: [],
    readings: [],
  },
  {
    key: "acConductors",
    phase: "a.c. side",
    kind: "check",
    text: "Verify each conductor from end to end – L1, L2, L3, N and the protective conductor – before the a.c. connector is wired.",
    cautions: ["Still locked off and proved dead."],
    readings: ["continuity"],
  },
  {
    key: "acInsulation",
    phase: "a.c. side",
    kind: "measure",
    text: "Measure the insulation resistance of the a.c. circuit with the inverter disconnected.",
    cautions: [],
    readings: ["acInsulation"],
  },
  {
    key: "acConnector",
    phase: "a.c. side",
    kind: "confirm",
    text: "Wire the a.c. connector, check each clamp with the maker's torque, and close the housing.",
    cautions: ["A swapped neutral puts the voltage between lines on single-phase parts."],
    readings: [],
  },
  {
    key: "acVoltages",
    phase: "a.c. side",
    kind: "measure",
    text: "Switch the a.c. circuit on with the d.c. side still open, and measure L1, L2 and L3 to N, and N to the protective conductor.",
    cautions: ["From here on the a.c. side is live."],
    readings: ["voltageL1", "voltageL2", "voltageL3", "voltageNeutral"],
  },
  {
    key: "loop",
    phase: "a.c. side",
    kind: "measure",
    text: "Measure the impedance of the fault loop, and test each residual current device at its rated and at five times its rated residual current.",
    cautions: [],
    readings: ["loopImpedance", "breakTime", "breakTimeAtFive", "residualCurrent"],
  },
  {
    key: "connectStrings",
    phase: "switching on",
    kind: "confirm",
    text: "With the d.c. switch open, mate the string plugs at the inputs of the plan until they latch.",
    cautions: [LIVE, "Mate only strings whose polarity and voltage were found right."],
    readings: [],
  },
  {
    key: "settings",
    phase: "switching on",
    kind: "set",
    text: "Close the d.c. switch, and select the grid settings before the inverter feeds.",
    cautions: ["The inverter must not feed before its settings are active and agreed with the operator."],
    readings: [],
  },
  {
    key: "start",
    phase: "switching on",
    kind: "confirm",
    text: "Switch on the a.c. side and watch the first start; note messages of the inverter.",
    cautions: [],
    readings: [],
  },
  {
    key: "lossOfMains",
    phase: "switching on",
    kind: "confirm",
    text: "Open the a.c. switch under load: the inverter must stop at once, and wait its reconnection time when the grid returns.",
    cautions: ["Parts inside stay charged for minutes."],
    readings: [],
  },
  {
    key: "working",
    phase: "switching on",
    kind: "measure",
    text: "Read voltage and current of each tracker under load, with irradiance and temperature beside them.",
    cautions: [],
    readings: ["operatingVoltage", "operatingCurrent"],
  },
  {
    key: "warmth",
    phase: "switching on",
    kind: "check",
    text: "After an hour under load look for warm clamps and plugs, with a thermal camera where there is one.",
    cautions: [],
    readings: [],
  },
  {
    key: "labels",
    phase: "afterwards",
    kind: "check",
    text: "Put up the labels: two supplies, live d.c. cables in daylight, d.c. switch, settings and date, plan for the fire service.",
    cautions: [],
    readings: [],
  },
  {
    key: "handover",
    phase: "afterwards",
    kind: "confirm",
    text: "Hand over this sheet, the plan, the settings and the makers' instructions, signed and dated.",
    cautions: [],
    readings: [],
  },
  {
    key: "firstDay",
    phase: "afterwards",
    kind: "measure",
    text: "Over a clear day read irradiation and energy, and compare the energy with what the irradiation lets expect.",
    cautions: [],
    readings: ["irradiation", "energy"],
  },
];
