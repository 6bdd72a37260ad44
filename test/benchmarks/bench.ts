/**
 * Speed, measured: `npm run bench`, or `npm run bench -- --json`. Ratios within one run say more than times, which are
 * those of the machine.
 */
import { readdirSync, readFileSync } from "node:fs";
import { Decimal } from "decimal.js";
import { type PlantDescription, sizePlant } from "../../src/index.js";
import { openCircuitVoltageAt } from "../../src/module/index.js";
import { threePhaseOutputCurrent } from "../../src/protection/index.js";
import { given } from "../../src/quantity/index.js";
import { median } from "./measure.js";

interface Row {
  readonly name: string;
  readonly value: number;
  readonly unit: "ratio" | "µs" | "ms" | "kB";
}

const rows: Row[] = [];
const Bare = Decimal.clone({ defaults: true, precision: 34, rounding: 6 });

// One call of a rule against the same arithmetic in bare decimal.js, with arguments that are quantities already.
function plain(): void {
  const [u, b, t] = [given("49.8 V", "V"), given("-0.0027 1/K", "1/K"), given("-10 °C", "°C")];
  const [du, db, dt, one, standard] = [
    new Bare("49.8"),
    new Bare("-0.0027"),
    new Bare("-10"),
    new Bare(1),
    new Bare(25),
  ];
  const rule = median(
    () => openCircuitVoltageAt({ openCircuitVoltage: u, openCircuitVoltageCoefficient: b, cellTemperature: t }),
    20_000,
  );
  const bare = median(() => du.times(one.plus(db.times(dt.minus(standard)))), 20_000);
  rows.push({ name: "formula of four operations, against bare decimal.js", value: rule / bare, unit: "ratio" });
  rows.push({ name: "formula of four operations, one call", value: rule / 1000, unit: "µs" });
}

function root(): void {
  const [s, v] = [given("15000 VA", "VA"), given("400 V", "V")];
  const [ds, dv, three] = [new Bare(15_000), new Bare(400), new Bare(3)];
  const rule = median(() => threePhaseOutputCurrent({ apparentPower: s, lineToLine: v }), 3000);
  const bare = median(() => ds.div(three.sqrt().times(dv)), 3000);
  rows.push({ name: "formula with a root, against bare decimal.js", value: rule / bare, unit: "ratio" });
}

function plants(): void {
  const folder = new URL("../../shared/plants/", import.meta.url);
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".json"))) {
    const plant = JSON.parse(readFileSync(new URL(file, folder), "utf8")) as PlantDescription;
    const start = performance.now();
    const record = sizePlant(plant);
    rows.push({ name: `${file}: first sizing`, value: performance.now() - start, unit: "ms" });
    rows.push({ name: `${file}: sizing, warm`, value: median(() => sizePlant(plant), 20, 5) / 1e6, unit: "ms" });
    rows.push({
      name: `${file}: record as JSON`,
      value: median(() => JSON.stringify(record), 20, 5) / 1e6,
      unit: "ms",
    });
    rows.push({ name: `${file}: size of the record`, value: JSON.stringify(record).length / 1000, unit: "kB" });
  }
}

plain();
root();
plants();
if (process.argv.includes("--json")) {
  console.log(JSON.stringify({ node: process.version, rows }, null, 2));
} else {
  for (const { name, value, unit } of rows) console.log(`${value.toFixed(2).padStart(10)} ${unit.padEnd(6)} ${name}`);
}
