import fc from "fast-check";
import type { StringingInput } from "../../src/stringing/index.js";
import type { Inverter, Plant, Roof, Tracker } from "./brute-force.js";

const roof = (name: string): fc.Arbitrary<Roof> =>
  fc
    .record({
      type: fc.constantFrom("M1", "M2"),
      modules: fc.integer({ min: 1, max: 16 }),
      drop: fc.constantFrom(0, 10, 30),
      systemVoltage: fc.constantFrom(40000, 60000, 100000),
      hotter: fc.integer({ min: 0, max: 200 }),
    })
    .map(({ type, hotter, ...rest }) => {
      const first = type === "M1";
      return {
        name,
        type,
        ...rest,
        coldOpen: first ? 5000 : 4410,
        hotOpen: (first ? 4000 : 3600) - hotter,
        hotMpp: (first ? 3200 : 2900) - hotter,
        coldMpp: first ? 4300 : 3800,
        mppCurrent: first ? 10000 : 12500,
        shortCircuit: first ? 10600 : 13300,
        fuseRating: first ? 20000 : 25000,
        power: first ? 400 : 430,
      };
    });

const tracker: fc.Arbitrary<Tracker> = fc.record({
  inputs: fc.integer({ min: 1, max: 3 }),
  inputCurrent: fc.constantFrom(9000, 13000, 20000, 26000, 40000),
  shortCircuit: fc.constantFrom(13250, 20000, 30000, 45000, 60000),
  plug: fc.constantFrom(13250, 20000, 30000),
});

const inverter: fc.Arbitrary<Inverter> = fc.record({
  maximumVoltage: fc.constantFrom(30000, 45000, 60000),
  mppRange: fc.constantFrom([8000, 25000] as const, [9000, 50000] as const, [12000, 48000] as const),
  start: fc.constantFrom(8000, 12000),
  backfeed: fc.constantFrom(0, 0, 5000),
  arrayPower: fc.constantFrom(3000, 5200, 8000, 1000000),
  ratedPower: fc.constantFrom(3000, 5000),
  trackers: fc.array(tracker, { minLength: 1, maxLength: 3 }),
});

/** Small plants of one to three roofs and one or two inverters. */
export const smallPlant: fc.Arbitrary<Plant> = fc.record({
  roofs: fc
    .integer({ min: 1, max: 3 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, at) => roof(`R${at}`)))),
  inverters: fc.array(inverter, { minLength: 1, maxLength: 2 }),
  fuses: fc.boolean(),
  join: fc.boolean(),
  ratio: fc.constantFrom(null, 100, 130),
});

const amperes = (milli: number): string => `${milli / 1000} A`;
const volts = (centi: number): string => `${centi / 100} V`;

/** The same plant in the words of the library. */
export function inputOf({ roofs, inverters, fuses, join, ratio }: Plant, most: number): StringingInput {
  return {
    rules: "IEC 62548-1:2023",
    fuses: fuses ? "choose" : "none",
    joinRoofs: join,
    most,
    ...(ratio === null ? {} : { targetRatio: `${ratio} %` }),
    roofs: roofs.map((each) => ({
      name: each.name,
      moduleType: each.type,
      modules: each.modules,
      orientation: each.name,
      module: {
        coldOpenCircuitVoltage: volts(each.coldOpen),
        coldMppVoltage: volts(each.coldMpp),
        hotMppVoltage: volts(each.hotMpp),
        hotOpenCircuitVoltage: volts(each.hotOpen),
      },
      ceilings: [{ key: "module", limit: volts(each.systemVoltage) }],
      maximumPower: `${each.power} W`,
      mppCurrent: amperes(each.mppCurrent),
      shortCircuitCurrent: amperes(each.shortCircuit),
      maximumSeriesFuse: amperes(each.fuseRating),
      voltageDrop: `${each.drop / 10} %`,
    })),
    inverters: inverters.map((each, at) => ({
      name: `INV${at}`,
      maximumDcVoltage: volts(each.maximumVoltage),
      mppVoltageRange: [volts(each.mppRange[0]), volts(each.mppRange[1])],
      startVoltage: volts(each.start),
      backfeedCurrent: amperes(each.backfeed),
      maximumArrayPower: `${each.arrayPower} W`,
      ratedPower: `${each.ratedPower} W`,
      trackers: each.trackers.map(({ inputs, inputCurrent, shortCircuit, plug }, place) => ({
        name: "ABC"[place]!,
        inputs,
        maximumInputCurrent: amperes(inputCurrent),
        shortCircuitRating: amperes(shortCircuit),
        inputRating: amperes(plug),
      })),
    })),
  };
}
