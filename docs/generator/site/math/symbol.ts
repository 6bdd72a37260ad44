import { escaped } from "../html.js";

const SUPERSCRIPTS: Readonly<Record<string, string>> = { "⁻": "−", "⁰": "0", "¹": "1", "²": "2", "³": "3", "⁷": "7" };
const TOKEN = /(\d[\d.]*(?: \d{3})*)|(\p{L}[\p{L}'°]*)(?:_([^\s|·+*/()²³]+))?|([⁻⁰¹²³⁷]+)|(\S)/gu;

/** A printed symbol such as `U_OC,STC`, `k² S²` or `cos φ` as MathML. */
export function symbolMath(symbol: string): string {
  const parts: string[] = [];
  for (const [, number, base, sub, raised, sign] of symbol.matchAll(TOKEN)) {
    if (number !== undefined) parts.push(`<mn>${escaped(number)}</mn>`);
    else if (base !== undefined) parts.push(withSubscript(base, sub));
    else if (raised !== undefined) {
      const power = raised.replace(/./g, (digit) => SUPERSCRIPTS[digit] ?? digit);
      parts.push(`<msup>${parts.pop() ?? "<mrow></mrow>"}<mn>${power}</mn></msup>`);
    } else parts.push(`<mo stretchy="false">${escaped(sign!)}</mo>`);
  }
  return parts.length === 1 ? parts[0]! : `<mrow>${parts.join("")}</mrow>`;
}

function withSubscript(base: string, sub: string | undefined): string {
  const letters =
    base.startsWith("Δ") && base.length > 1
      ? `<mrow><mi mathvariant="normal">Δ</mi><mi>${escaped(base.slice(1))}</mi></mrow>`
      : `<mi>${escaped(base)}</mi>`;
  return sub === undefined ? letters : `<msub>${letters}<mtext>${escaped(sub)}</mtext></msub>`;
}

/** Whether a symbol is a sum or difference and needs brackets as a factor; a product as the base of a power. */
export function isSum(symbol: string): boolean {
  return /\s[+−]\s/.test(symbol);
}

/** Whether a symbol is of several parts. */
export function isComposed(symbol: string): boolean {
  return /\s/.test(symbol);
}

/** Whole formulas in a line of text. */
export const inlineMath = (mathml: string): string => `<math>${mathml}</math>`;

/** A symbol in a line of text. */
export const inlineSymbol = (symbol: string): string => inlineMath(symbolMath(symbol));
