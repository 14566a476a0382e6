/** Attributes of an element; numbers are written with at most two decimals. */
type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element as text. Children are elements or {@link words}; attributes are escaped. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? round(value) : words(String(value))}"`)
    .join("");
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join("")}</${name}>`;
}

/** One line of text in a picture. */
export function label(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return element("text", { x, y, fill: "currentColor", "font-size": 13, ...attributes }, words(text));
}

/** A straight line in the colour of the words around. */
export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string {
  return element("line", { x1, y1, x2, y2, stroke: "currentColor", ...attributes });
}

// Beside what markup reserves, the control characters that it has no way to write.
const UNWRITABLE = /(?![\t\n\r])[\p{Cc}\u{FFFE}\u{FFFF}]/gu;

/** Text for an element: nothing in it is taken for markup. */
export function words(text: string): string {
  return text
    .toWellFormed()
    .replace(UNWRITABLE, "\u{FFFD}")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** A number with at most two decimals, and no negative zero. */
function round(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}
