import { type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import { nominalVoltageOf } from "../supply/supply-facts.js";
import type { Connection, SupplySystem } from "../supply/supply-systems.js";
import {
  reactanceOfPath,
  shareOfNominalVoltage,
  voltageChange,
  voltageChangeAlongPath,
  voltageWithInfeed,
} from "./voltage-change.js";

/** Active and reactive power towards the grid; Q > 0 injects, Q < 0 absorbs. */
export interface Infeed {
  readonly activePower: Input<"activePower">;
  readonly reactivePower: Input<"reactivePower">;
}

/** One stretch of the path from the transformer to the inverter terminals. */
export interface NetworkStretch {
  readonly name: string;
  /** `network` up to the point of supply, `installation` behind it. */
  readonly part: "network" | "installation";
  readonly resistance: Known<Input<"resistance">>;
  readonly reactance: Known<Input<"resistance">>;
  /** What this plant sends through the stretch. */
  readonly activePower: Known<Input<"activePower">>;
  readonly reactivePower: Known<Input<"reactivePower">>;
  /** What the other plants of the network send through it; each 0 where there are none. */
  readonly otherPlants?: Known<Infeed>;
}

/** The path from the transformer, grid end first, and the voltage there without the plant. */
export interface VoltagePath {
  readonly supply: SupplySystem;
  readonly connection: Connection;
  readonly voltageWithoutPlant: Known<Input<"voltage">>;
  readonly stretches: readonly NetworkStretch[];
}

type Voltage = Known<Quantity<"voltage">>;

/** The voltage at the inverter's end of a stretch. */
export interface VoltagePoint {
  readonly name: string;
  readonly part: "network" | "installation";
  /** Change across this stretch by this plant, and as a share of the nominal voltage. */
  readonly change: Voltage;
  readonly share: Known<Quantity<"ratio">>;
  /** Change from the head of the path up to here by this plant. */
  readonly total: Voltage;
  readonly totalShare: Known<Quantity<"ratio">>;
  /** Change from the head of the path up to here by all plants. */
  readonly totalOfAllPlants: Voltage;
  /** Voltage here with all plants feeding in. */
  readonly voltage: Voltage;
}

/** What one part of the path adds. */
export interface PartProfile {
  readonly change: Voltage;
  /** Reactance that reactive power of the plant meets on this part. */
  readonly reactance: Known<Quantity<"resistance">>;
}

/** The voltage along the path, and what each part of it adds. */
export interface VoltageProfile {
  readonly connection: Connection;
  readonly nominalVoltage: Quantity<"voltage">;
  readonly voltageWithoutPlant: Known<Input<"voltage">>;
  readonly points: readonly VoltagePoint[];
  /** Up to the point of supply. */
  readonly network: PartProfile & { readonly changeOfAllPlants: Voltage; readonly voltage: Voltage };
  /** From the point of supply to the inverter terminals, by this plant. */
  readonly installation: PartProfile;
  readonly terminalVoltage: Voltage;
}

interface Changes {
  readonly stretch: NetworkStretch;
  readonly own: Voltage;
  readonly others: Voltage;
}

function changesOf(stretch: NetworkStretch, nominalVoltage: Quantity<"voltage">): Changes {
  const { resistance, reactance, activePower, reactivePower, otherPlants = NOT_TOLD } = stretch;
  const own = whenKnown({ resistance, reactance, activePower, reactivePower }, (known) =>
    voltageChange({ ...known, nominalVoltage }),
  );
  const others = whenKnown(
    { resistance, reactance, otherPlants },
    ({ otherPlants: { activePower: p, reactivePower: q }, ...known }) =>
      voltageChange({ ...known, activePower: p, reactivePower: q, nominalVoltage }),
  );
  return { stretch, own, others };
}

const NOT_TOLD = { missing: ["supply.network.otherPlants"] } as const;

function sumOf(changes: readonly Voltage[]): Voltage {
  return whenKnown(Object.fromEntries(changes.entries()) as Record<string, Voltage>, (known) =>
    voltageChangeAlongPath({ voltageChanges: Object.values(known) }),
  );
}

function shareOf(change: Voltage, nominalVoltage: Quantity<"voltage">): Known<Quantity<"ratio">> {
  return whenKnown({ voltageChange: change }, (known) => shareOfNominalVoltage({ ...known, nominalVoltage }));
}

interface Part {
  readonly own: Voltage;
  readonly all: Voltage;
  readonly reactance: Known<Quantity<"resistance">>;
}

/** What the stretches of one part add; missing where the path has none. */
function partOf(changes: readonly Changes[], part: "network" | "installation", path: string): Part {
  const here = changes.filter(({ stretch }) => stretch.part === part);
  if (here.length === 0) return { own: missing(path), all: missing(path), reactance: missing(path) };
  const reactances = Object.fromEntries(here.map(({ stretch }, index) => [index, stretch.reactance]));
  return {
    own: sumOf(here.map(({ own }) => own)),
    all: sumOf(here.flatMap(({ own, others }) => [own, others])),
    reactance: whenKnown(reactances, (known) => reactanceOfPath({ reactances: Object.values(known) })),
  };
}

/**
 * The voltage along the path from the transformer to the inverter terminals while the plant feeds in.
 *
 * @throws InputError where the supply system has no such connection, or a value lies outside its domain
 * @example
 * ```ts
 * import { isMissing } from "pv-to-grid/formula";
 * import { gridVoltageProfile } from "pv-to-grid/grid";
 * const cable = { part: "installation", activePower: "10 kW", reactivePower: "0 var", otherPlants: { activePower: 0, reactivePower: 0 } } as const;
 * const profile = gridVoltageProfile({ supply: "230/400 V 50 Hz", connection: "three-phase", voltageWithoutPlant: "405 V",
 *   stretches: [{ name: "roof cable", resistance: "0.1 ohm", reactance: "0.01 ohm", ...cable }] });
 * isMissing(profile.terminalVoltage) ? "" : profile.terminalVoltage.text; // "407.5"
 * ```
 */
export function gridVoltageProfile(path: VoltagePath): VoltageProfile {
  const { supply, connection, voltageWithoutPlant, stretches } = path;
  const nominalVoltage = nominalVoltageOf(supply, connection);
  const changes = stretches.map((stretch) => changesOf(stretch, nominalVoltage));
  const voltageAfter = (total: Voltage): Voltage =>
    whenKnown({ voltageWithoutPlant, voltageChange: total }, (known) => voltageWithInfeed(known));

  const points = changes.map(({ stretch: { name, part }, own }, index): VoltagePoint => {
    const upTo = changes.slice(0, index + 1);
    const total = sumOf(upTo.map((each) => each.own));
    const totalOfAllPlants = sumOf(upTo.flatMap((each) => [each.own, each.others]));
    return Object.freeze({
      name,
      part,
      total,
      totalOfAllPlants,
      change: own,
      share: shareOf(own, nominalVoltage),
      totalShare: shareOf(total, nominalVoltage),
      voltage: voltageAfter(totalOfAllPlants),
    });
  });

  const network = partOf(changes, "network", "supply.network");
  const installation = partOf(changes, "installation", "routes");
  return Object.freeze({
    connection,
    nominalVoltage,
    voltageWithoutPlant,
    points: Object.freeze(points),
    network: Object.freeze({
      change: network.own,
      changeOfAllPlants: network.all,
      voltage: voltageAfter(network.all),
      reactance: network.reactance,
    }),
    installation: Object.freeze({ change: installation.own, reactance: installation.reactance }),
    terminalVoltage: points.at(-1)?.voltage ?? { missing: ["routes"] },
  });
}
