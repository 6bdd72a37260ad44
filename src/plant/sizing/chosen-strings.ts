import { assumed, isMissing, type Known } from "../../formula/index.js";
import { InputError, type Quantity } from "../../quantity/index.js";
import { legalCeiling, type TrackerLimits } from "../../string/index.js";
import { findStringings, type Stringing, type StringingInput, type StringingString } from "../../stringing/index.js";
import type { Plant } from "../description/plant-description.js";
import type { ArrayDesign } from "./arrays.js";
import { currentCorrectionOf } from "./currents.js";
import { arrayPlaceOf } from "./place.js";
import { caution, finding, remind, type Sizing } from "./sizing.js";

type Tracker = Plant["inverters"][number]["trackers"][number];

/** The stringing that the search ranks first; throws where nothing fits, with what blocks it. */
export function chooseStrings(sizing: Sizing, arrays: ReadonlyMap<string, ArrayDesign>): readonly StringingString[] {
  const found = findStringings(searchFor(sizing, arrays));
  const [best] = found.stringings;
  if (!best) {
    const message = found.blocked.map(({ because }) => because).join("; ") || "no string fits any tracker";
    throw new InputError("plant", [
      {
        path: "strings",
        code: "refused",
        message,
        expected: "a roof and an inverter that fit together",
        received: "choose",
      },
    ]);
  }
  sizing.chosen.push("strings");
  tellRanking(sizing, best, found.ranking, found.outcome);
  return best.strings;
}

function tellRanking(
  sizing: Sizing,
  { unused }: Stringing,
  ranking: readonly string[],
  outcome: "optimal" | "best found" | "none",
): void {
  const proof = outcome === "optimal" ? "proven the best" : "the best that was found";
  caution(
    sizing,
    `The strings were chosen, ${proof} by this rule: ${ranking.join("; ")}. Confirm that they suit the roof's shading and cable ways.`,
  );
  for (const { roof, modules } of unused) {
    remind(sizing, {
      kind: "confirm",
      text: `${modules} modules of ${roof} find no string: leave them off, or state another stringing.`,
      about: roof,
    });
  }
}

function searchFor(sizing: Sizing, arrays: ReadonlyMap<string, ArrayDesign>): StringingInput {
  const { plant, rules } = sizing;
  const voltageDrop = dropToPlanWith(sizing);
  return {
    rules: rules.pv,
    fuses: "choose",
    joinRoofs: false,
    most: 1,
    roofs: plant.roofs.map(({ name, moduleType, modules, azimuth, tilt }) => {
      const array = arrays.get(name)!;
      const { module, voltages } = array;
      const type = plant.moduleTypes[moduleType]!;
      const currentCorrection = currentCorrectionOf(plant, array);
      return {
        name,
        moduleType,
        modules,
        orientation: azimuth && tilt ? `${azimuth.text}/${tilt.text}` : name,
        module: {
          coldOpenCircuitVoltage: voltages.coldOpenCircuitVoltage,
          coldMppVoltage: voltages.coldMppVoltage,
          hotMppVoltage: voltages.hotMppVoltage,
          hotOpenCircuitVoltage: voltages.hotOpenCircuitVoltage,
        },
        ceilings: [
          { key: "module", limit: module.maximumSystemVoltage },
          ...known("connector", finding(type.connectorVoltage, `${module.path}.connectorVoltage`)),
          ...known("legal ceiling", legalCeiling({ rules: rules.pv, place: arrayPlaceOf(plant) })),
        ],
        maximumPower: module.maximumPower,
        mppCurrent: module.mppCurrent,
        shortCircuitCurrent: module.shortCircuitCurrent,
        ...(currentCorrection === undefined ? {} : { currentCorrection }),
        maximumSeriesFuse: module.maximumSeriesFuse,
        voltageDrop,
      };
    }),
    inverters: plant.inverters.map((inverter, index) => {
      const path = `inverters[${index}]`;
      return {
        name: inverter.name,
        maximumDcVoltage: inverter.maximumDcVoltage,
        mppVoltageRange: inverter.mppVoltageRange,
        startVoltage: finding(inverter.startVoltage, `${path}.startVoltage`),
        backfeedCurrent: finding(inverter.backfeedCurrent, `${path}.backfeedCurrent`),
        ceilings: known("connector", finding(inverter.connectorVoltage, `${path}.connectorVoltage`)),
        ...(inverter.maximumDcPower ? { maximumArrayPower: inverter.maximumDcPower } : {}),
        ...(inverter.activePower ? { ratedPower: inverter.activePower } : {}),
        trackers: inverter.trackers.map((tracker, at) => ({
          name: tracker.name,
          ...limitsOf(tracker, `${path}.trackers[${at}]`),
        })),
      };
    }),
  };
}

// What is not known does not bound the search; the check of the chosen strings stays open and says so.
function known<K extends "connector" | "legal ceiling">(
  key: K,
  limit: Known<Quantity<"voltage">>,
): { key: K; limit: Quantity<"voltage"> }[] {
  return isMissing(limit) ? [] : [{ key, limit }];
}

function limitsOf(tracker: Tracker, path: string): TrackerLimits {
  const { inputs, maximumInputCurrent, shortCircuitRating, inputRating } = tracker;
  return {
    inputs,
    maximumInputCurrent,
    shortCircuitRating: finding(shortCircuitRating, `${path}.shortCircuitRating`),
    ...(inputRating === undefined ? {} : { inputRating }),
  };
}

/** The drop that the search plans with, before the cables are known: the owner's limit, or one per cent as an assumption. */
function dropToPlanWith({ plant, assumptions }: Sizing): Quantity<"ratio"> {
  const { dcDrop } = plant.limits ?? {};
  if (dcDrop) return dcDrop;
  const drop = assumed("1 %", "1", "d.c. voltage drop that the search for strings plans with", [
    { in: "common practice", clause: "one per cent aimed at on the d.c. side", grade: "common-practice" },
  ]);
  assumptions.push(drop);
  return drop;
}
