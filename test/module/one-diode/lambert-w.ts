import { type BigNumber, create, all } from "mathjs";
import type { OneDiode } from "../../../src/module/index.js";

// An independent evaluation of the one-diode model: its closed form with the Lambert W function, in 64 digits.
const big = create(all!, { number: "BigNumber", precision: 64 });
const of = (value: number): BigNumber => big.bignumber(String(value));

/** Lambert W of an argument that is given by its logarithm: w + ln w = logarithm, by Newton's steps. */
function lambertW(logarithm: BigNumber): BigNumber {
  const start = logarithm.toNumber();
  // For a small argument W is the argument itself; for a large one its logarithm less that logarithm's own.
  let w = start > 1 ? logarithm.minus(logarithm.ln()) : logarithm.exp().div(of(1).plus(logarithm.exp()));
  for (let step = 0; step < 60; step += 1) {
    const next = w.times(of(1).plus(logarithm).minus(w.ln())).div(of(1).plus(w));
    if (next.minus(w).abs().lte(w.abs().times("1e-60"))) return next;
    w = next;
  }
  throw new Error("Lambert W does not converge");
}

interface BigDiode {
  readonly light: BigNumber;
  readonly dark: BigNumber;
  readonly series: BigNumber;
  readonly shunt: BigNumber;
  readonly scale: BigNumber;
}

function bigOf({
  photocurrent,
  saturationCurrent,
  seriesResistance,
  shuntResistance,
  exponentVoltage,
}: OneDiode): BigDiode {
  return {
    light: of(photocurrent),
    dark: of(saturationCurrent),
    series: of(seriesResistance),
    shunt: of(shuntResistance),
    scale: of(exponentVoltage),
  };
}

/** Current at a voltage; series resistance above zero and a finite shunt resistance. */
export function exactCurrent(diode: OneDiode, voltage: number): BigNumber {
  const { light, dark, series, shunt, scale } = bigOf(diode);
  const both = series.plus(shunt);
  const exponent = shunt.times(series.times(light.plus(dark)).plus(of(voltage))).div(scale.times(both));
  const w = lambertW(series.times(shunt).times(dark).div(scale.times(both)).ln().plus(exponent));
  return shunt.times(light.plus(dark)).minus(of(voltage)).div(both).minus(scale.div(series).times(w));
}

/** Voltage at a current; a finite shunt resistance. */
export function exactVoltage(diode: OneDiode, current: number): BigNumber {
  const { light, dark, series, shunt, scale } = bigOf(diode);
  const left = light.plus(dark).minus(of(current));
  const w = lambertW(dark.times(shunt).div(scale).ln().plus(shunt.times(left).div(scale)));
  return shunt.times(left).minus(of(current).times(series)).minus(scale.times(w));
}

/** Voltage at the maximum power point of a diode without resistances: a · (W(e · (I_L / I_0 + 1)) − 1). */
export function idealMppVoltage({ photocurrent, saturationCurrent, exponentVoltage }: OneDiode): BigNumber {
  const ratio = of(photocurrent).div(of(saturationCurrent)).plus(1);
  return of(exponentVoltage).times(lambertW(ratio.ln().plus(1)).minus(1));
}

/** The short form that one course prints, without the one: 0.2 % high. */
export function shortMppVoltage({ photocurrent, saturationCurrent, exponentVoltage }: OneDiode): BigNumber {
  return of(exponentVoltage).times(lambertW(of(photocurrent).div(of(saturationCurrent)).ln()));
}
