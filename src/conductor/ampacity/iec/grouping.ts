import type { Quantity } from "../../../quantity/index.js";
import type { CableKind } from "../../cable.js";
import type { Clearance, ReferenceMethod, Stretch } from "../../stretch.js";
import { circuitsOfLayer, unequalGroupFactor } from "../compose.js";
import { refuse } from "../refusal.js";
import { iec60364_5_52_2009_b_52_17 } from "./b-52-17.js";
import { iec60364_5_52_2009_b_52_18 } from "./b-52-18.js";
import { iec60364_5_52_2009_b_52_19_a } from "./b-52-19-a.js";
import { iec60364_5_52_2009_b_52_19_b } from "./b-52-19-b.js";
import { iec60364_5_52_2009_b_52_20 } from "./b-52-20.js";
import { iec60364_5_52_2009_b_52_21 } from "./b-52-21.js";

/** A grouping factor from exactly one table, and what was taken where the stretch leaves something out. */
export interface Grouping {
  readonly factor: Quantity<"ratio">;
  readonly note: string | null;
}

type Layer = Exclude<Parameters<typeof iec60364_5_52_2009_b_52_17>[0]["grouping"], "bunched">;

/** The grouping factor of IEC 60364-5-52 for circuits that heat each other. */
export function groupingIec(
  stretch: Stretch,
  method: ReferenceMethod,
  kind: CableKind,
  circuits: Quantity<"ratio">,
): Grouping {
  if (stretch.unequalSizes === true && method !== "D1" && method !== "D2") {
    const note = "the cables of the group are of different sizes, so the factor is 1/√n";
    return { factor: unequalGroupFactor({ circuits }), note };
  }
  switch (method) {
    case "A1":
    case "A2":
    case "B1":
    case "B2":
      return { factor: iec60364_5_52_2009_b_52_17({ circuits, grouping: "bunched" }), note: null };
    case "C":
      return onSurface(stretch, circuits);
    case "D1":
      return inDucts(stretch, kind, circuits);
    case "D2":
      return inGround(stretch, circuits);
    case "E":
      return multiCoreInAir(stretch, circuits);
    case "F":
      return singleCoreInAir(stretch, circuits);
    case "G":
      return spacedInAir(circuits);
  }
}

function layered(grouping: Layer, circuits: Quantity<"ratio">): Quantity<"ratio"> {
  return iec60364_5_52_2009_b_52_17({ circuits: circuitsOfLayer({ circuits }), grouping });
}

function bunched(circuits: Quantity<"ratio">): Grouping {
  const note = "the cables are taken as bunched, since their arrangement is not stated";
  return {
    factor: iec60364_5_52_2009_b_52_17({ circuits, grouping: "bunched" }),
    note: circuits.number > 1 ? note : null,
  };
}

function onSurface({ arrangement, underCeiling }: Stretch, circuits: Quantity<"ratio">): Grouping {
  if (underCeiling) return { factor: layered("single layer under a ceiling", circuits), note: null };
  if (arrangement === undefined) return bunched(circuits);
  return { factor: layered("single layer on a wall", circuits), note: null };
}

const ductClearances = ["touching", "0.25 m", "0.5 m", "1.0 m"] as const;
const directClearances = ["touching", "one diameter", "0.125 m", "0.25 m", "0.5 m"] as const;

function clearanceAmong<C extends Clearance>(clearance: Clearance | undefined, among: readonly C[], first: C): C {
  if (clearance === undefined) return first;
  const found = among.find((each) => each === clearance);
  return (
    found ??
    refuse(
      "stretches[].clearance",
      `nothing is tabulated for a clearance of ${clearance} here`,
      among.join(", "),
      clearance,
    )
  );
}

function inDucts({ clearance }: Stretch, kind: CableKind, circuits: Quantity<"ratio">): Grouping {
  if (circuits.number <= 1) return alone(circuits);
  const at = clearanceAmong(clearance, ductClearances, "touching");
  const table = kind === "multi-core" ? iec60364_5_52_2009_b_52_19_a : iec60364_5_52_2009_b_52_19_b;
  return { factor: table({ circuits, clearance: at }), note: unstated(clearance, "the ducts are taken as touching") };
}

function inGround({ clearance }: Stretch, circuits: Quantity<"ratio">): Grouping {
  if (circuits.number <= 1) return alone(circuits);
  const at = clearanceAmong(clearance, directClearances, "touching");
  const factor = iec60364_5_52_2009_b_52_18({ circuits, clearance: at });
  return { factor, note: unstated(clearance, "the cables are taken as touching") };
}

// The tables of cables in the ground begin with two circuits.
function alone(circuits: Quantity<"ratio">): Grouping {
  return { factor: iec60364_5_52_2009_b_52_17({ circuits, grouping: "bunched" }), note: null };
}

function unstated(clearance: Clearance | undefined, taken: string): string | null {
  return clearance === undefined ? `${taken}, since their clearance is not stated` : null;
}

const trayCounts = ["1", "2", "3", "6"] as const;

function traysOf(trays: number | undefined): (typeof trayCounts)[number] {
  const found = trayCounts.find((each) => Number(each) >= (trays ?? 1));
  return (
    found ??
    refuse("stretches[].trays", "more than six trays above each other are not tabulated", "1 to 6", String(trays))
  );
}

function multiCoreInAir(stretch: Stretch, circuits: Quantity<"ratio">): Grouping {
  const { trayKind, arrangement } = stretch;
  if (trayKind === undefined || (arrangement !== "touching" && arrangement !== "spaced")) {
    if (trayKind === "unperforated") {
      const note = "the cables are taken as touching, since their arrangement is not stated";
      return {
        factor: iec60364_5_52_2009_b_52_20({
          circuits,
          support: trayKind,
          arrangement: "touching",
          trays: traysOf(stretch.trays),
        }),
        note,
      };
    }
    return bunched(circuits);
  }
  const most = 9;
  if (
    circuits.number > most &&
    arrangement === "touching" &&
    (stretch.trays ?? 1) === 1 &&
    trayKind !== "unperforated"
  ) {
    const layer = trayKind === "ladder" ? "single layer on a ladder" : "single layer on a perforated tray";
    return { factor: layered(layer, circuits), note: null };
  }
  return {
    factor: iec60364_5_52_2009_b_52_20({ circuits, support: trayKind, arrangement, trays: traysOf(stretch.trays) }),
    note: null,
  };
}

function singleCoreInAir(stretch: Stretch, circuits: Quantity<"ratio">): Grouping {
  const { trayKind, arrangement } = stretch;
  if (trayKind === undefined || arrangement === undefined) return bunched(circuits);
  if (trayKind === "unperforated") {
    const message =
      "single cores in free air are tabulated on perforated trays and ladders; on an unperforated tray the method is C";
    return refuse("stretches[].trayKind", message, "perforated, ladder", trayKind);
  }
  const trays = traysOf(stretch.trays);
  if (trays === "6")
    return refuse("stretches[].trays", "more than three trays of single cores are not tabulated", "1 to 3", trays);
  const support = arrangement === "vertical" && trayKind === "perforated" ? "vertical perforated" : trayKind;
  const formation = arrangement === "trefoil" ? "trefoil" : "touching";
  return { factor: iec60364_5_52_2009_b_52_21({ circuits, support, arrangement: formation, trays }), note: null };
}

function spacedInAir(circuits: Quantity<"ratio">): Grouping {
  if (circuits.number <= 1) return alone(circuits);
  const message = "no factor is tabulated for groups of spaced single cores (method G)";
  return refuse("stretches[].grouped", message, "0, or method F", circuits.text);
}
