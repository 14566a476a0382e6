/** Attributes of an element; numbers are written with at most two decimals. */
type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An SVG element as text. Children are elements or {@link words}; attributes are escaped. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? round(value) : escaped(String(value))}"`)
    .join("");
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join("")}</${name}>`;
}

/** Text for an element: nothing in it is taken for markup. */
export function words(text: string): string {
  return escaped(text);
}

/** A number with at most two decimals, and no negative zero. */
function round(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}

/** One line of text. */
export function label(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return element("text", { x, y, fill: "currentColor", "font-size": 13, ...attributes }, words(text));
}

/** A path through points. */
export function path(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], k) => `${k === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("");
}

/** Breaks text at its spaces into lines of at most so many characters. */
export function lines(text: string, characters: number): readonly string[] {
  const out: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = out.at(-1);
    if (last === undefined || last.length + 1 + word.length > characters) out.push(word);
    else out[out.length - 1] = `${last} ${word}`;
  }
  return out;
}

// Beside what XML reserves, the control characters that it has no way to write.
const UNWRITABLE = /(?![\t\n\r])[\p{Cc}\u{FFFE}\u{FFFF}]/gu;

function escaped(text: string): string {
  return text
    .toWellFormed()
    .replace(UNWRITABLE, "\u{FFFD}")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
