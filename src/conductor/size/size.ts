import { given, InputError, isQuantity, nearestName, type Quantity } from "../../quantity/index.js";
import { isNfpa70, type WiringRules } from "../wiring.js";
import { awgArea } from "./awg-area.js";
import { iec60228_2004_sections } from "./iec-sections.js";
import { nfpa70_2017_sizes } from "./nfpa-sizes.js";

/** The sizes that conductors are made in: cross-sections in mm², or gauge sizes where the rules are those of NFPA 70. */
export function sizesFor(wiring: WiringRules): readonly Quantity<"area">[] {
  return isNfpa70(wiring) ? nfpa70_2017_sizes.sizes() : iec60228_2004_sections.sizes();
}

/**
 * A conductor size as people write it, as an area: `"4 mm²"`, or `"10 AWG"` and `"250 kcmil"` where the rules are those of NFPA 70.
 *
 * @throws InputError where the size is not one of the sizes of the rules; the two families are never mixed silently
 * @example
 * ```ts
 * import { readSize } from "pv-to-grid/conductor";
 * readSize("10 AWG", "NFPA 70:2023").show(); // "10380 cmil"
 * readSize("4 mm2", "IEC 60364:2009-2017").show(); // "4 mm²"
 * ```
 */
export function readSize(input: string | number | Quantity<"area">, wiring: WiringRules): Quantity<"area"> {
  const american = isNfpa70(wiring);
  if (american && typeof input === "string") return gaugeArea(input);
  const size = given(input, american ? "cmil" : "mm²");
  const known = sizesFor(wiring);
  if (known.some(({ text }) => text === size.text)) return isQuantity(input) ? input : size;
  const names = known.map(sizeName);
  const message = american
    ? "the rules are those of NFPA 70, whose tables know gauge sizes"
    : `no conductor has this size${typeof input === "string" && /AWG|kcmil/i.test(input) ? "; a gauge size has no ampacity under these rules" : ""}`;
  throw new InputError("conductor/size", [
    {
      path: "cable.size",
      code: "not-in-list",
      message,
      expected: names.join(", "),
      received: isQuantity(input) ? `${input.text} ${input.unit}` : String(input),
    },
  ]);
}

function gaugeArea(input: string): Quantity<"area"> {
  const name = input.trim().replace(/\s+/g, " ");
  if (awgArea.rows().includes(name)) return awgArea({ conductorSize: name });
  const near = nearestName(name, awgArea.rows());
  const message = `no conductor size of NFPA 70${near === undefined ? "" : `; did you mean ${near}?`}`;
  throw new InputError("conductor/size", [
    { path: "cable.size", code: "not-in-list", message, expected: awgArea.rows().join(", "), received: name },
  ]);
}

/** A size as people call it: `"4 mm²"`, `"10 AWG"`, `"250 kcmil"`. */
export function sizeName(size: Quantity<"area">): string {
  if (size.unit !== "cmil" && size.unit !== "kcmil") return size.show({ digits: 6 });
  const { text } = size.in("cmil");
  const cell = awgArea.cells().find((each) => each.text === text);
  return cell === undefined ? size.show({ digits: 6 }) : cell.row;
}
