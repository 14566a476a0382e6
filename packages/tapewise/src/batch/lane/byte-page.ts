/** Bytes that are written one after the other and taken away together. */
export interface BytePage {
  bytes: Uint8Array<ArrayBuffer>;
  length: number;
}

/** An empty page. */
export function createBytePage(capacity: number): BytePage {
  return { bytes: new Uint8Array(capacity), length: 0 };
}

/** Makes room for so many bytes more. */
export function makeRoom(page: BytePage, count: number): void {
  const needed = page.length + count;
  if (needed <= page.bytes.length) return;
  const larger = new Uint8Array(Math.max(needed, page.bytes.length * 2));
  larger.set(page.bytes.subarray(0, page.length));
  page.bytes = larger;
}

/** Below this many bytes a loop is quicker than a call. */
const SHORT = 24;

/** Writes bytes; there must be room for them. */
export function put(page: BytePage, piece: Uint8Array): void {
  const { bytes, length } = page;
  if (piece.length < SHORT) for (let k = 0; k < piece.length; k += 1) bytes[length + k] = piece[k] as number;
  else bytes.set(piece, length);
  page.length = length + piece.length;
}

/** Writes a part of other bytes; there must be room for it. */
export function putPart(page: BytePage, from: Uint8Array, start: number, end: number): void {
  const { bytes, length } = page;
  for (let k = start; k < end; k += 1) bytes[length + k - start] = from[k] as number;
  page.length = length + end - start;
}

const ZERO = 0x30;
const POINT = 0x2e;
/** A figure this near to the middle between two decimals may be rounded either way: 10⁻¹¹ mm, 2 · 10⁻¹⁴ of a chance. */
const NEAR_HALF = { 6: 1e-5, 9: 2e-5 } as const;

/**
 * Writes a figure of 0 or more with at most so many decimals, as JSON would; there must be room for 20 bytes.
 * Whether it can be: not where its last digits would decide the rounding, nor where it is very large.
 */
export function putFigure(page: BytePage, value: number, decimals: 6 | 9): boolean {
  const scale = decimals === 6 ? 1e6 : 1e9;
  const scaled = value * scale;
  const whole = Math.floor(scaled);
  const rest = scaled - whole;
  if (!(value >= 0 && value < 1e5) || Math.abs(rest - 0.5) < NEAR_HALF[decimals]) return false;
  const count = rest > 0.5 ? whole + 1 : whole;
  if (decimals === 9 && count < 1000) {
    put(page, small(count));
    return true;
  }
  const units = Math.floor(count / scale);
  putWhole(page, units);
  let fraction = count - units * scale;
  if (fraction === 0) return true;
  const { bytes } = page;
  let digits: number = decimals;
  while (fraction % 10 === 0) {
    fraction /= 10;
    digits -= 1;
  }
  bytes[page.length] = POINT;
  // Below 10⁹, so that whole-number arithmetic does.
  let left = fraction | 0;
  for (let at = page.length + digits; at > page.length; at -= 1) {
    const tens = (left / 10) | 0;
    bytes[at] = ZERO + left - tens * 10;
    left = tens;
  }
  page.length += digits + 1;
  return true;
}

function putWhole(page: BytePage, value: number): void {
  const { bytes } = page;
  let count = 1;
  for (let power = 10; power <= value; power *= 10) count += 1;
  let left = value | 0;
  for (let at = page.length + count - 1; at >= page.length; at -= 1) {
    const tens = (left / 10) | 0;
    bytes[at] = ZERO + left - tens * 10;
    left = tens;
  }
  page.length += count;
}

const smallOnes: Uint8Array[] = [];

/** So many thousand-millionths, below a thousand: JSON writes them with an exponent. */
function small(count: number): Uint8Array {
  const made = smallOnes[count];
  if (made !== undefined) return made;
  const text = String(count / 1e9);
  const piece = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  smallOnes[count] = piece;
  return piece;
}
