import { isMissing, type Known, whenKnown } from "../../../formula/index.js";
import { given, type Quantity } from "../../../quantity/index.js";
import type { Cable } from "../../cable.js";
import type { ReferenceMethod, Stretch } from "../../stretch.js";
import { ampacityInAir, ampacityInGround, circuitsTogether } from "../compose.js";
import { iec60364_5_52_2009_b_52_15 } from "../iec/b-52-15.js";
import { iec60364_5_52_2009_b_52_16 } from "../iec/b-52-16.js";
import { groupingIec } from "../iec/grouping.js";
import { ofAllParallel, parallelOf } from "../parallel.js";
import { refuse } from "../refusal.js";
import type { AppliedFactor, StretchAmpacity } from "../stretch-ampacity.js";
import { bs7671_2018_4b1 } from "./table-4b1.js";
import { bs7671_2018_4e1a } from "./table-4e1a.js";
import { bs7671_2018_4e4a } from "./table-4e4a.js";

type SingleCoreColumn = Parameters<typeof bs7671_2018_4e1a>[0]["arrangement"];

/** Ampacity of a stretch after BS 7671, as far as its tables are held: thermosetting copper, single-core or armoured. */
export function ampacityBs(cable: Cable, section: Quantity<"area">, stretch: Stretch, loaded: 2 | 3): StretchAmpacity {
  const method = methodOf(cable, stretch);
  const buried = method === "D1" || method === "D2";
  const tabulatedAmpacity =
    cable.kind === "single-core"
      ? bs7671_2018_4e1a({ section, arrangement: singleCoreColumn(method, stretch, loaded) })
      : bs7671_2018_4e4a({ section, method: armouredMethod(method), cores: loaded === 2 ? "two" : "three or four" });
  const conductorsInParallel = parallelOf(cable);
  const notes = ["grouping and ground factors are those of IEC 60364-5-52, which BS 7671 shares"];
  const ambient: Known<Quantity<"temperature">> = isMissing(stretch.ambient)
    ? stretch.ambient
    : given(stretch.ambient, "°C");
  const temperatureFactor = whenKnown({ ambient }, (known) =>
    (buried ? iec60364_5_52_2009_b_52_15 : bs7671_2018_4b1)({ ambient: known.ambient, insulation: "XLPE" }),
  );
  const groupingFactor = whenKnown({ grouped: stretch.grouped }, ({ grouped }) => {
    const { factor, note } = groupingIec(
      stretch,
      method,
      cable.kind,
      circuitsTogether({ grouped, conductorsInParallel }),
    );
    if (note !== null) notes.push(note);
    return factor;
  });
  const factors: AppliedFactor[] = [
    { of: "ambient", factor: temperatureFactor },
    { of: "grouping", factor: groupingFactor },
  ];
  const result = {
    tabulated: tabulatedAmpacity,
    factors,
    ambient,
    conductorLimit: given("90 °C", "°C", "thermosetting insulation"),
    notes,
  };
  if (!buried) {
    const ampacity = whenKnown({ temperatureFactor, groupingFactor }, (known) =>
      ampacityInAir({ tabulatedAmpacity, ...known }),
    );
    return Object.freeze({ ampacity: ofAllParallel(ampacity, cable), ...result });
  }
  const soilFactor = whenKnown({ soil: stretch.soilThermalResistivity ?? "2.5 K·m/W" }, ({ soil }) =>
    iec60364_5_52_2009_b_52_16({ soilThermalResistivity: soil, method }),
  );
  factors.push({ of: "soil", factor: soilFactor });
  const ampacity = whenKnown({ temperatureFactor, groupingFactor, soilFactor }, (known) =>
    ampacityInGround({ tabulatedAmpacity, ...known }),
  );
  return Object.freeze({ ampacity: ofAllParallel(ampacity, cable), ...result });
}

/** The sections that the tables of BS 7671 hold for a cable on a stretch. */
export function sizesTabulatedBs(cable: Cable, stretch: Stretch, loaded: 2 | 3): readonly string[] {
  const method = methodOf(cable, stretch);
  if (cable.kind === "single-core") {
    const column = singleCoreColumn(method, stretch, loaded);
    return rowsWhere(bs7671_2018_4e1a.cells(), ([at]) => at === column);
  }
  const place = [armouredMethod(method), loaded === 2 ? "two" : "three or four"];
  return rowsWhere(bs7671_2018_4e4a.cells(), ([at, cores]) => at === place[0] && cores === place[1]);
}

function rowsWhere(
  cells: readonly { readonly row: string; readonly column: readonly string[] }[],
  wanted: (column: readonly string[]) => boolean,
): readonly string[] {
  return cells.filter(({ column }) => wanted(column)).map(({ row }) => row);
}

function methodOf(cable: Cable, { referenceMethod }: Stretch): ReferenceMethod {
  const { kind, conductor, insulation, armoured = false } = cable;
  const held = conductor === "copper" && insulation === "XLPE" && (kind === "single-core" ? !armoured : armoured);
  if (!held) {
    const message =
      "of the tables of BS 7671 those of thermosetting copper cables are held, single-core without armour (4E1A) and multi-core armoured (4E4A); for another cable state the ampacity of the stretch";
    return refuse(
      "cable",
      message,
      "statedAmpacity",
      [kind, conductor, insulation, armoured ? "armoured" : ""].join(" "),
    );
  }
  return (
    referenceMethod ??
    refuse(
      "stretches[].referenceMethod",
      "the reference method decides the column",
      "A1, B1, F, G; C, D1, D2, E",
      "undefined",
    )
  );
}

function armouredMethod(method: ReferenceMethod): "C" | "D" | "E" {
  if (method === "C" || method === "E") return method;
  if (method === "D1" || method === "D2") return "D";
  return refuse("stretches[].referenceMethod", "armoured cables are tabulated for C, D and E", "C, D1, D2, E", method);
}

function singleCoreColumn(method: ReferenceMethod, { arrangement }: Stretch, loaded: 2 | 3): SingleCoreColumn {
  switch (method) {
    case "A1":
      return loaded === 2 ? "A two" : "A three or four";
    case "B1":
      return loaded === 2 ? "B two" : "B three or four";
    case "F":
      if (loaded === 2) return "F two flat";
      return arrangement === "flat" || arrangement === "touching" ? "F three flat" : "F three trefoil";
    case "G":
      return arrangement === "spaced" || arrangement === "flat" ? "G horizontal" : "G vertical";
    default:
      return refuse(
        "stretches[].referenceMethod",
        "of table 4E1A the methods A, B, F and G are held",
        "A1, B1, F, G",
        method,
      );
  }
}
