import { isMissing, type Known, missing, whenKnown } from "../../../formula/index.js";
import { given, InputError, type Quantity } from "../../../quantity/index.js";
import type { Cable, ConductorMetal, Insulation } from "../../cable.js";
import type { ReferenceMethod, Stretch } from "../../stretch.js";
import { ampacityInAir, ampacityInGround, ampacityWithHarmonics, circuitsTogether } from "../compose.js";
import { ofAllParallel, parallelOf } from "../parallel.js";
import { refuse } from "../refusal.js";
import type { AppliedFactor, StretchAmpacity } from "../stretch-ampacity.js";
import { iec60364_5_52_2009_b_52_14 } from "./b-52-14.js";
import { iec60364_5_52_2009_b_52_15 } from "./b-52-15.js";
import { iec60364_5_52_2009_b_52_16 } from "./b-52-16.js";
import { groupingIec } from "./grouping.js";
import { conductorLimits } from "./table-52-1.js";
import { tabulatedIec, type TabulatedBy } from "./tabulated.js";

/** What decides table and column for a cable on a stretch; refuses what IEC 60364-5-52 does not know. */
export function tabulatedByIec(cable: Cable, stretch: Stretch, loaded: 2 | 3): TabulatedBy {
  const method = stretch.referenceMethod;
  if (method === undefined) {
    throw new InputError("conductor/ampacity", [
      {
        path: "stretches[].referenceMethod",
        code: "missing",
        message: "the reference method decides the table",
        expected: "A1 to G",
        received: "undefined",
      },
    ]);
  }
  fits(cable, method);
  return {
    insulation: insulationOf(cable),
    conductor: conductorOf(cable),
    method,
    loaded,
    arrangement: stretch.arrangement,
  };
}

/** Ampacity of a stretch after IEC 60364-5-52. */
export function ampacityIec(cable: Cable, size: Quantity<"area">, stretch: Stretch, loaded: 2 | 3): StretchAmpacity {
  const by = tabulatedByIec(cable, stretch, loaded);
  const { method, insulation } = by;
  const tabulatedAmpacity = tabulatedIec(size, by);
  const conductorsInParallel = parallelOf(cable);
  const buried = method === "D1" || method === "D2";
  const notes: string[] = [];

  const ambient: Known<Quantity<"temperature">> = isMissing(stretch.ambient)
    ? stretch.ambient
    : given(stretch.ambient, "°C");
  const temperatureFactor = whenKnown({ ambient }, (known) =>
    (buried ? iec60364_5_52_2009_b_52_15 : iec60364_5_52_2009_b_52_14)({ ambient: known.ambient, insulation }),
  );
  const groupingFactor = whenKnown({ grouped: stretch.grouped }, ({ grouped }) => {
    const circuits = circuitsTogether({ grouped, conductorsInParallel });
    const { factor, note } = groupingIec(stretch, method, cable.kind, circuits);
    if (note !== null) notes.push(note);
    return factor;
  });
  const factors: AppliedFactor[] = [
    { of: "ambient", factor: temperatureFactor },
    { of: "grouping", factor: groupingFactor },
  ];

  let ampacity: Known<Quantity<"current">>;
  if (buried) {
    const soilFactor = soilFactorIec(stretch, method, notes);
    factors.push({ of: "soil", factor: soilFactor });
    ampacity = whenKnown({ temperatureFactor, groupingFactor, soilFactor }, (known) =>
      ampacityInGround({ tabulatedAmpacity, ...known }),
    );
  } else {
    ampacity = whenKnown({ temperatureFactor, groupingFactor }, (known) =>
      ampacityInAir({ tabulatedAmpacity, ...known }),
    );
  }
  const { thirdHarmonicShare } = stretch;
  if (thirdHarmonicShare !== undefined) {
    ampacity = whenKnown({ ampacity }, (known) =>
      ampacityWithHarmonics({ ampacity: known.ampacity, thirdHarmonicShare }),
    );
  }
  const conductorLimit = conductorLimits({ insulation });
  return Object.freeze({
    ampacity: ofAllParallel(ampacity, cable),
    tabulated: tabulatedAmpacity,
    factors,
    ambient,
    conductorLimit,
    notes,
  });
}

function soilFactorIec(stretch: Stretch, method: "D1" | "D2", notes: string[]): Known<Quantity<"ratio">> {
  const stated = stretch.soilThermalResistivity;
  if (stated === undefined) {
    notes.push(
      "the thermal resistivity of the soil is taken as 2.5 K·m/W, the base of the table, since none is stated",
    );
    return iec60364_5_52_2009_b_52_16({ soilThermalResistivity: "2.5 K·m/W", method });
  }
  if (isMissing(stated)) return missing(...stated.missing);
  return iec60364_5_52_2009_b_52_16({ soilThermalResistivity: stated, method });
}

function insulationOf({ insulation }: Cable): Insulation {
  if (insulation === "PVC" || insulation === "XLPE") return insulation;
  return refuse("cable.insulation", "IEC 60364-5-52 tabulates PVC and XLPE (or EPR)", "PVC, XLPE", String(insulation));
}

/** The conductor's metal; refuses a cable that does not say it. */
export function conductorOf({ conductor }: Cable): ConductorMetal {
  return (
    conductor ?? refuse("cable.conductor", "the conductor's metal decides the table", "copper, aluminium", "undefined")
  );
}

const methodsOf: Readonly<Record<"single-core" | "multi-core", readonly ReferenceMethod[]>> = {
  "single-core": ["A1", "B1", "C", "D1", "D2", "F", "G"],
  "multi-core": ["A2", "B2", "C", "D1", "D2", "E"],
};

function fits({ kind }: Cable, method: ReferenceMethod): void {
  if (kind === "PV") return;
  const allowed = methodsOf[kind];
  if (allowed.includes(method)) return;
  refuse("stretches[].referenceMethod", `method ${method} is not one of ${kind} cables`, allowed.join(", "), method);
}
