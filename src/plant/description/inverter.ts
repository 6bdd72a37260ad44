import * as z from "zod/mini";
import { switchCategories } from "../../device/index.js";
import { shutdownWays } from "../../string/index.js";
import { count, fact, finding, keysOf, name, note, perhaps, perhapsCount, perhapsOneOf, statedIn } from "./fields.js";

/** One tracker: the inputs that share a maximum power point. */
export const trackerSchema = z.strictObject({
  name: name("name of the tracker, as the maker marks it"),
  inputs: count("pairs of plugs or terminals"),
  maximumInputCurrent: fact("A", "largest current that the tracker uses", { above: 0, usual: [1, 500] }),
  shortCircuitRating: finding("A", "largest short-circuit current of the array", { above: 0, usual: [1, 1000] }),
  inputRating: finding("A", "largest current of one plug or terminal", { above: 0, usual: [1, 500] }),
});

const joinedTrackers = z.optional(
  z.union([
    z.enum(["not declared", "not allowed"]),
    z.array(
      z.strictObject({
        trackers: z.array(name("a tracker that is joined")).check(z.minLength(2)),
        maximumInputCurrent: finding("A", "largest current that the joined trackers use", {
          above: 0,
          usual: [1, 1000],
        }),
        shortCircuitRating: finding("A", "largest short-circuit current for the joined trackers", {
          above: 0,
          usual: [1, 2000],
        }),
      }),
    ),
  ]),
);

const dcSwitch = z.optional(
  z.union([
    z.enum(["built in", "none"]),
    z.strictObject({
      ratedCurrent: fact("A", "rated operational current", { above: 0, usual: [1, 2000] }),
      ratedVoltage: fact("V", "rated operational voltage", { above: 0, usual: [50, 2000] }),
      category: perhapsOneOf(keysOf(switchCategories), "utilisation category"),
      poles: z.optional(z.int().check(z.gte(1), z.lte(8))),
      statedIn,
    }),
  ]),
);

/** An inverter as its datasheet gives it. */
export const inverterSchema = z.strictObject({
  name: name("name of the inverter in this plant"),
  statedIn,
  apparentPower: fact("VA", "rated apparent power", { above: 0, usual: [100, 10_000_000] }),
  activePower: finding("W", "rated active power", { above: 0, usual: [100, 10_000_000] }),
  acVoltage: fact("V", "rated output voltage: line to line, or line to neutral where single-phase", {
    above: 0,
    usual: [50, 1000],
  }),
  phases: z
    .union([z.literal(1), z.literal(2), z.literal(3)])
    .check(z.meta({ description: "1, 3, or 2 for the two lines of a split-phase supply", role: "fact" })),
  maximumAcCurrent: finding("A", "largest output current", { above: 0, usual: [0.5, 20000] }),
  maximumDcVoltage: fact("V", "largest input voltage", { above: 0, usual: [20, 2000] }),
  mppVoltageRange: z.tuple([
    fact("V", "lower end of the tracking range", { above: 0, usual: [10, 2000] }),
    fact("V", "upper end of the tracking range", { above: 0, usual: [10, 2000] }),
  ]),
  startVoltage: finding("V", "input voltage at which it starts", { above: 0, usual: [10, 2000] }),
  maximumDcPower: finding("W", "largest array power that the maker allows", { above: 0, usual: [100, 20_000_000] }),
  isolated: perhaps("whether it separates the d.c. side from the grid by a transformer"),
  functionalEarthing: perhaps("whether one pole of the array is earthed for function"),
  joinedTrackers,
  maximumAcDevice: finding("A", "largest overcurrent device on its output that the maker allows", {
    above: 0,
    usual: [5, 5000],
  }),
  dcSwitch,
  residualCurrent: z.optional(
    z.strictObject({
      monitored: perhaps("whether a residual-current monitor is built in"),
      rcdTypeAllowed: perhapsOneOf(
        ["A", "F", "B", "not declared"],
        "type of residual-current device that the maker allows upstream",
      ),
      standingLeakage: finding("A", "leakage current in normal operation", { from: 0, usual: [0, 1] }),
    }),
  ),
  arcFaultProtection: perhaps("whether a d.c. arc-fault protection is built in"),
  rapidShutdown: perhapsOneOf(
    [...keysOf(shutdownWays), "none"] as const,
    "how the array is shut down in an emergency, where the rules ask for it",
  ),
  modulesPerShutdownDevice: perhapsCount("modules behind one shutdown device", 1),
  insulationMonitoring: perhaps("whether it measures the insulation of the array before it starts"),
  surgeProtection: z.optional(
    z.strictObject({
      dc: perhapsOneOf(
        ["none", "type 1", "type 2", "type 1+2", "varistors"],
        "built-in surge protection of the d.c. side",
      ),
      ac: perhapsOneOf(
        ["none", "type 1", "type 2", "type 1+2", "varistors"],
        "built-in surge protection of the a.c. side",
      ),
    }),
  ),
  impulseWithstand: z.optional(
    z.strictObject({
      dc: finding("V", "rated impulse withstand voltage of the d.c. side", { above: 0, usual: [500, 12000] }),
      ac: finding("V", "rated impulse withstand voltage of the a.c. side", { above: 0, usual: [500, 12000] }),
    }),
  ),
  terminals: z.optional(
    z.strictObject({
      ac: z.optional(
        z.tuple([
          fact("mm²", "smallest section of the a.c. terminals"),
          fact("mm²", "largest section of the a.c. terminals"),
        ]),
      ),
      dc: z.optional(
        z.tuple([
          fact("mm²", "smallest section of the d.c. terminals"),
          fact("mm²", "largest section of the d.c. terminals"),
        ]),
      ),
      temperature: finding("°C", "temperature rating of the terminals", { from: 40, to: 150 }),
      aluminium: perhaps("whether aluminium conductors may be clamped"),
    }),
  ),
  backfeedCurrent: finding("A", "current that it can feed back into a faulty string", { from: 0, usual: [0, 1000] }),
  faultContribution: finding("A", "current that it adds to a fault on its output", { from: 0, usual: [0, 20000] }),
  maximumAltitude: finding("m", "height up to which it keeps its ratings", { from: 0, to: 9000 }),
  connector: note("make and type of its d.c. connectors"),
  connectorVoltage: finding("V", "rated voltage of its d.c. connectors", { above: 0, usual: [50, 2000] }),
  unbalanceLimited: perhaps("whether it is one of several single-phase units that are coupled against unbalance"),
  trackers: z.array(trackerSchema).check(z.minLength(1)),
});
