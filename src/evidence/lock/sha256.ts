/** SHA-256 as FIPS 180-4 defines it, so that the lock can be checked wherever the library runs. */

const FIRST_64_PRIMES = 64;
const WORD = 2 ** 32;

// The first 32 bits of the fractional parts of the square roots (initial state) and cube roots (round constants) of the first primes.
function primes(): readonly number[] {
  const found: number[] = [];
  for (let n = 2; found.length < FIRST_64_PRIMES; n += 1) if (found.every((prime) => n % prime !== 0)) found.push(n);
  return found;
}

const fraction = (root: number): number => Math.floor((root - Math.floor(root)) * WORD) | 0;

let tables: { readonly start: readonly number[]; readonly rounds: readonly number[] } | undefined;

const rotate = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

function padded(bytes: Uint8Array): DataView {
  const length = Math.ceil((bytes.length + 9) / 64) * 64;
  const block = new Uint8Array(length);
  block.set(bytes);
  block[bytes.length] = 0x80;
  const view = new DataView(block.buffer);
  view.setUint32(length - 8, Math.floor((bytes.length * 8) / WORD));
  view.setUint32(length - 4, (bytes.length * 8) % WORD);
  return view;
}

/** SHA-256 of a text in UTF-8, as 64 hexadecimal digits. */
export function sha256(text: string): string {
  tables ??= {
    start: primes()
      .slice(0, 8)
      .map((prime) => fraction(Math.sqrt(prime))),
    rounds: primes().map((prime) => fraction(Math.cbrt(prime))),
  };
  const { start, rounds } = tables;
  const view = padded(new TextEncoder().encode(text));
  let state: readonly number[] = start;
  const w = new Int32Array(64);
  for (let offset = 0; offset < view.byteLength; offset += 64) {
    for (let t = 0; t < 16; t += 1) w[t] = view.getInt32(offset + t * 4);
    for (let t = 16; t < 64; t += 1) {
      const [x, y] = [w[t - 15]!, w[t - 2]!];
      const s0 = rotate(x, 7) ^ rotate(x, 18) ^ (x >>> 3);
      const s1 = rotate(y, 17) ^ rotate(y, 19) ^ (y >>> 10);
      w[t] = (w[t - 16]! + s0 + w[t - 7]! + s1) | 0;
    }
    let [a, b, c, d, e, f, g, h] = state as readonly [number, number, number, number, number, number, number, number];
    for (let t = 0; t < 64; t += 1) {
      const big1 = rotate(e, 6) ^ rotate(e, 11) ^ rotate(e, 25);
      const t1 = (h + big1 + ((e & f) ^ (~e & g)) + rounds[t]! + w[t]!) | 0;
      const big0 = rotate(a, 2) ^ rotate(a, 13) ^ rotate(a, 22);
      const t2 = (big0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
    }
    state = [a, b, c, d, e, f, g, h].map((word, index) => (word + state[index]!) | 0);
  }
  return state.map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}
