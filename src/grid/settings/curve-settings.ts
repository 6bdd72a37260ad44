import { gradeOf } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { type Citation, type Grade, weaker } from "../../source/index.js";
import type { GridRules } from "../rules/grid-rule-sets.js";
import type { SupplyFacts } from "../supply/supply-facts.js";
import { settingInVolts } from "./in-volts.js";
import { reactiveShareOfPowerFactor } from "./reactive-share.js";
import { NOT_BEFORE_CONFIRMED } from "./setting-row.js";
import {
  asNzs4777_2_2020_voltVarReactive,
  asNzs4777_2_2020_voltVarVoltage,
  asNzs4777_2_2020_voltWattActive,
  asNzs4777_2_2020_voltWattVoltage,
} from "./tables/as-nzs-4777-2-2020-curves.js";
import {
  californiaRule21_2018_voltVarReactive,
  californiaRule21_2018_voltVarVoltage,
  californiaRule21_2018_voltWattActive,
  californiaRule21_2018_voltWattVoltage,
} from "./tables/california-rule-21-curves.js";
import {
  ieee1547_1_2020_voltVarReactive,
  ieee1547_1_2020_voltVarResponseTime,
  ieee1547_1_2020_voltVarVoltage,
  ieee1547_1_2020_voltWattActive,
  ieee1547_1_2020_voltWattResponseTime,
  ieee1547_1_2020_voltWattVoltage,
  ieee1547_1_2020_wattVarActive,
  ieee1547_1_2020_wattVarReactive,
} from "./tables/ieee-1547-1-2020-curves.js";
import {
  vdeArN4105_2018_powerFactorLimit,
  vdeArN4105_2018_powerFactorOfPower,
  vdeArN4105_2018_powerFactorOfPowerActive,
  vdeArN4105_2018_voltVarVoltage,
} from "./tables/vde-ar-n-4105-2018-curves.js";

/** The kinds of characteristic curves. */
export const curveKinds = [
  {
    key: "volt-var",
    label: "reactive power over voltage, Q(U)",
    ieee1547: "voltage-reactive power mode",
    iec61850: "DVVR",
  },
  {
    key: "volt-watt",
    label: "ceiling of the active power over voltage, P(U)",
    ieee1547: "voltage-active power mode",
    iec61850: "DVWC",
  },
  {
    key: "watt-var",
    label: "reactive power over active power, Q(P)",
    ieee1547: "active power-reactive power mode",
    iec61850: "DWVR",
  },
  { key: "power factor of power", label: "power factor over active power, cos φ(P)", ieee1547: null, iec61850: null },
] as const;

/** Kind of a characteristic curve. */
export type CurveKind = (typeof curveKinds)[number]["key"];

/** One point of a curve. */
export interface CurvePoint {
  /** Voltage as printed or active power as a share of the rated; the abscissa. */
  readonly x: Quantity;
  /** The voltage of the point between line and neutral, and between two lines; `null` where the abscissa is a power. */
  readonly volts: {
    readonly lineToNeutral: Quantity<"voltage">;
    readonly lineToLine: Quantity<"voltage"> | null;
  } | null;
  /** Reactive or active power as a share, or power factor; the ordinate. */
  readonly y: Quantity<"ratio">;
}

/** A characteristic curve of a set of connection rules. */
export interface CurveSetting {
  readonly key: CurveKind;
  readonly label: string;
  /** Which of several curves of this kind. */
  readonly variant: string;
  readonly points: readonly CurvePoint[];
  readonly responseTime: Quantity<"time"> | null;
  readonly source: readonly Citation[];
  readonly grade: Grade | null;
  readonly confirm: string | null;
  readonly terms: { readonly ieee1547: string | null; readonly iec61850: string | null };
}

interface Sketch {
  readonly key: CurveKind;
  readonly variant: string;
  readonly points: readonly { readonly x: Quantity; readonly y: Quantity<"ratio"> }[];
  readonly responseTime?: Quantity<"time">;
  readonly source: readonly Citation[];
}

const FOUR = ["1", "2", "3", "4"] as const;
const TWO = ["1", "2"] as const;
const THREE = ["1", "2", "3"] as const;

/** The characteristic curves of a set of connection rules, in volts for a supply. */
export function curveSettings(rules: GridRules, facts: SupplyFacts): readonly CurveSetting[] {
  return Object.freeze(sketchesOf(rules).map((sketch) => drawn(sketch, facts)));
}

function drawn({ key, variant, points, responseTime, source }: Sketch, facts: SupplyFacts): CurveSetting {
  const { label, ieee1547, iec61850 } = curveKinds.find((kind) => kind.key === key)!;
  const grade = points.flatMap(({ x, y }) => [gradeOf(x), gradeOf(y)]).reduce<Grade | null>(weaker, null);
  const overVoltage = key === "volt-var" || key === "volt-watt";
  return Object.freeze({
    key,
    label,
    variant,
    points: Object.freeze(
      points.map(({ x, y }) => Object.freeze({ x, volts: overVoltage ? voltsOf(x, facts) : null, y })),
    ),
    responseTime: responseTime ?? null,
    source,
    grade,
    confirm: grade === "memory" ? NOT_BEFORE_CONFIRMED : null,
    terms: Object.freeze({ ieee1547, iec61850 }),
  });
}

function voltsOf(x: Quantity, { lineToNeutral, lineToLine }: SupplyFacts): CurvePoint["volts"] {
  if (x.dimension === "voltage") return Object.freeze({ lineToNeutral: x as Quantity<"voltage">, lineToLine: null });
  const inVolts = (nominalVoltage: Quantity<"voltage">): Quantity<"voltage"> =>
    settingInVolts({ settingShare: x as Quantity<"ratio">, nominalVoltage });
  return Object.freeze({ lineToNeutral: inVolts(lineToNeutral), lineToLine: inVolts(lineToLine) });
}

function sketchesOf(rules: GridRules): readonly Sketch[] {
  if (rules === "VDE-AR-N 4105:2018") return germany();
  if (rules === "California Rule 21:2018") return california();
  if (rules.startsWith("IEEE 1547:2018 category A")) return ieee("A");
  if (rules.startsWith("IEEE 1547:2018 category B")) return ieee("B");
  if (rules.startsWith("AS/NZS 4777.2:2020 ")) return australasia(rules.slice("AS/NZS 4777.2:2020 ".length));
  return [];
}

function ieee(category: "A" | "B"): readonly Sketch[] {
  const curve = `1 ${category}`;
  return [
    {
      key: "volt-var",
      variant: `default of category ${category}`,
      points: FOUR.map((point) => ({
        x: ieee1547_1_2020_voltVarVoltage({ curve, point }),
        y: ieee1547_1_2020_voltVarReactive({ curve, point }),
      })),
      responseTime: ieee1547_1_2020_voltVarResponseTime({ curve }),
      source: ieee1547_1_2020_voltVarVoltage.declaration.source,
    },
    {
      key: "volt-watt",
      variant: "default parameters; the mode itself is off unless the operator asks for it",
      points: TWO.map((point) => ({
        x: ieee1547_1_2020_voltWattVoltage({ curve: "1", point }),
        y: ieee1547_1_2020_voltWattActive({ curve: "1", point }),
      })),
      responseTime: ieee1547_1_2020_voltWattResponseTime({ curve: "1" }),
      source: ieee1547_1_2020_voltWattVoltage.declaration.source,
    },
    {
      key: "watt-var",
      variant: `default of category ${category}`,
      points: THREE.map((point) => ({
        x: ieee1547_1_2020_wattVarActive({ curve, point }),
        y: ieee1547_1_2020_wattVarReactive({ curve, point }),
      })),
      source: ieee1547_1_2020_wattVarActive.declaration.source,
    },
  ];
}

function california(): readonly Sketch[] {
  const curve = "default";
  return [
    {
      key: "volt-var",
      variant: curve,
      points: FOUR.map((point) => ({
        x: californiaRule21_2018_voltVarVoltage({ curve, point }),
        y: californiaRule21_2018_voltVarReactive({ curve, point }),
      })),
      source: californiaRule21_2018_voltVarVoltage.declaration.source,
    },
    {
      key: "volt-watt",
      variant: curve,
      points: TWO.map((point) => ({
        x: californiaRule21_2018_voltWattVoltage({ curve, point }),
        y: californiaRule21_2018_voltWattActive({ curve, point }),
      })),
      source: californiaRule21_2018_voltWattVoltage.declaration.source,
    },
  ];
}

function australasia(region: string): readonly Sketch[] {
  return [
    {
      key: "volt-var",
      variant: region,
      points: FOUR.map((point) => ({
        x: asNzs4777_2_2020_voltVarVoltage({ region, point }),
        y: asNzs4777_2_2020_voltVarReactive({ region, point }),
      })),
      source: asNzs4777_2_2020_voltVarVoltage.declaration.source,
    },
    {
      key: "volt-watt",
      variant: region,
      points: TWO.map((point) => ({
        x: asNzs4777_2_2020_voltWattVoltage({ region, point }),
        y: asNzs4777_2_2020_voltWattActive({ region, point }),
      })),
      source: asNzs4777_2_2020_voltWattVoltage.declaration.source,
    },
  ];
}

function germany(): readonly Sketch[] {
  return (["up to 4.6 kVA", "above 4.6 kVA"] as const).flatMap((size): readonly Sketch[] => {
    const powerFactor = vdeArN4105_2018_powerFactorLimit({ size });
    const [inject, absorb] = [1, -1].map((direction) => reactiveShareOfPowerFactor({ powerFactor, direction }));
    const still = reactiveShareOfPowerFactor({ powerFactor: 1, direction: 1 });
    const shares = { "1": inject!, "2": still, "3": still, "4": absorb! };
    return [
      {
        key: "volt-var",
        variant: `plants ${size}`,
        points: FOUR.map((point) => ({
          x: vdeArN4105_2018_voltVarVoltage({ curve: "standard", point }),
          y: shares[point],
        })),
        source: vdeArN4105_2018_voltVarVoltage.declaration.source,
      },
      {
        key: "power factor of power",
        variant: `plants ${size}`,
        points: TWO.map((point) => ({
          x: vdeArN4105_2018_powerFactorOfPowerActive({ curve: "standard", point }),
          y: vdeArN4105_2018_powerFactorOfPower({ size, point }),
        })),
        source: vdeArN4105_2018_powerFactorOfPower.declaration.source,
      },
    ];
  });
}
