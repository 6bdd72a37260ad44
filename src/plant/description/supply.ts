import * as z from "zod/mini";
import { rcdTypes } from "../../device/index.js";
import { sourcePlaces } from "../../grid/index.js";
import { surgeTypes } from "../../surge/index.js";
import { choice, deviceText, fact, finding, keysOf, name, oneOf, perhaps, perhapsOneOf, statedIn } from "./fields.js";

/** A board: what feeds it and what it must carry. */
export const boardSchema = z.strictObject({
  name: name("name of the board"),
  busbarRating: finding("A", "rated current of its busbar", { above: 0, usual: [10, 10_000] }),
  mainSwitch: finding("A", "rated current of its main switch", { above: 0, usual: [10, 10_000] }),
  supplyDevice: deviceText("device that feeds it from the supply side"),
  loadDevices: finding("A", "sum of the ratings of the devices of its loads", { from: 0, usual: [1, 100_000] }),
  sourcePlace: perhapsOneOf(sourcePlaces, "where on the busbar the plant feeds it"),
  statedIn,
});

const impedanceSchema = z.strictObject({
  r: finding("Ω", "resistance", { from: 0, usual: [0, 100] }),
  x: finding("Ω", "reactance", { from: 0, usual: [0, 100] }),
});

/** The supply at the point where the installation is connected. */
export const supplySchema = z.strictObject({
  at: name("the board at which the supply arrives"),
  earthing: perhapsOneOf(["TN-S", "TN-C-S", "TN-C", "TT", "IT", "solidly grounded"], "earthing system"),
  lineToNeutral: finding("V", "nominal voltage, line to neutral", { above: 0, usual: [50, 400] }),
  frequency: finding("Hz", "nominal frequency", { above: 0, usual: [50, 60] }),
  loop: z.optional(
    z.strictObject({
      lineToProtective: z.optional(impedanceSchema),
      lineToNeutral: z.optional(impedanceSchema),
      lineToLine: z.optional(impedanceSchema),
      statedIn,
    }),
  ),
  network: z.optional(
    z.strictObject({
      r: finding("Ω", "resistance of one line of the network, from its source to the connection point", {
        from: 0,
        usual: [0, 10],
      }),
      x: finding("Ω", "reactance of one line of the network", { from: 0, usual: [0, 10] }),
      voltageWithoutPlant: finding(
        "V",
        "voltage at its source without the plant: between lines, or line to neutral where single-phase",
        { above: 0, usual: [80, 600] },
      ),
      shortCircuitPower: finding("VA", "short-circuit power at the connection point", { above: 0, usual: [1e4, 1e9] }),
      otherPlants: finding("VA", "apparent power of the other plants at the same connection point", {
        from: 0,
        usual: [0, 1e8],
      }),
      statedIn,
    }),
  ),
  largestFaultCurrent: finding("A", "largest prospective short-circuit current", { above: 0, usual: [100, 200_000] }),
  smallestFaultCurrent: finding("A", "smallest prospective short-circuit current", { above: 0, usual: [50, 200_000] }),
  upstreamRcd: z.optional(
    z.union([
      z.literal("none"),
      z.strictObject({
        type: perhapsOneOf(keysOf(rcdTypes), "its type"),
        ratedResidualCurrent: finding("A", "its rated residual operating current", { above: 0, usual: [0.01, 3] }),
        delayed: perhaps("whether it is time-delayed"),
      }),
    ]),
  ),
  lines: z.optional(
    z.strictObject({
      lowVoltageOverhead: fact("m", "overhead low-voltage line within a kilometre", { from: 0, to: 1000 }),
      lowVoltageBuried: fact("m", "buried low-voltage line within a kilometre", { from: 0, to: 1000 }),
      highVoltageOverhead: fact("m", "overhead high-voltage line within a kilometre", { from: 0, to: 1000 }),
      highVoltageBuried: fact("m", "buried high-voltage line within a kilometre", { from: 0, to: 1000 }),
      statedIn,
    }),
  ),
  insulationMonitoring: perhaps("whether the insulation of an IT supply is monitored"),
  serviceAmpacity: finding("A", "ampacity of the service conductors as laid", { above: 0, usual: [10, 5000] }),
  lineSection: finding("mm²", "section of the line conductors of the supply, in copper", {
    above: 0,
    usual: [4, 1000],
  }),
  serviceDevice: deviceText("device of the service"),
  exportLimit: finding("W", "agreed largest feed-in power", { from: 0, usual: [0, 1e8] }),
  displacementFactor: finding("1", "cos φ that the operator asks for", { above: 0, to: 1 }),
  reactiveDirection: perhapsOneOf(["injecting", "absorbing"], "direction of the reactive power at that cos φ"),
  statedIn,
});

/** A surge protective device of the plant. */
export const surgeDeviceSchema = z.strictObject({
  at: name("inverter or board at which it stands"),
  side: oneOf(["d.c.", "a.c."], "side that it protects"),
  type: perhapsOneOf(keysOf(surgeTypes), "type by its test class"),
  continuousVoltage: finding("V", "highest continuous operating voltage", { above: 0, usual: [50, 2000] }),
  protectionLevel: finding("V", "voltage protection level", { above: 0, usual: [300, 10_000] }),
  nominalDischargeCurrent: finding("A", "nominal discharge current", { above: 0, usual: [1000, 200_000] }),
  shortCircuitRating: finding("A", "short-circuit current rating", { above: 0, usual: [10, 100_000] }),
  largestBackUpFuse: finding("A", "largest fuse ahead of it", { above: 0, usual: [16, 500] }),
  leadLength: finding("m", "length of its leads, both together", { above: 0, usual: [0.05, 5] }),
  earthSection: finding("mm²", "section of its earthing lead", { above: 0, usual: [1.5, 95] }),
  statedIn,
});

/** The earth electrode of the installation. */
export const electrodeSchema = z.strictObject({
  resistance: finding("Ω", "resistance of the electrode", { above: 0, usual: [0.1, 5000] }),
  buried: perhapsOneOf(
    ["not buried", "corrosion and mechanical damage", "corrosion only", "neither"],
    "whether the earthing conductor is buried, and what it is then protected against",
  ),
  material: perhapsOneOf(["copper", "steel"], "material of the earthing conductor"),
  earthingConductor: choice("mm²", "section of the earthing conductor", { above: 0, usual: [1, 400] }),
  mainBonding: choice("mm²", "section of the main bonding conductors, copper", { above: 0, usual: [1, 100] }),
  neutralSection: finding("mm²", "section of the neutral of the supply, in copper", { above: 0, usual: [4, 1000] }),
  statedIn,
});

/** A transformer of the plant's own. */
export const transformerSchema = z.strictObject({
  apparentPower: fact("VA", "rated apparent power", { above: 0, usual: [1000, 100_000_000] }),
  shortCircuitVoltage: fact("%", "short-circuit voltage", { above: 0, to: 30 }),
  loadLoss: finding("W", "load loss at rated current", { above: 0, usual: [10, 1_000_000] }),
  secondaryVoltage: fact("V", "rated voltage of the low-voltage side", { above: 0, usual: [100, 1000] }),
  neutral: oneOf(["earthed", "isolated"], "neutral of the low-voltage side"),
  upstreamShortCircuitPower: finding("VA", "short-circuit power of the network before it", {
    above: 0,
    usual: [1e6, 1e11],
  }),
  statedIn,
});
