import { words } from "./words.ts";

/** Attributes of an element; one that is `undefined` is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/**
 * An element as text. Attributes are escaped, numbers among them written with at most two decimals; children are
 * elements or {@link words}, and are not.
 *
 * @example
 * ```ts
 * import { element, words } from "@tapewise/figures";
 * element("text", { x: 1 / 3, id: "a" }, words("S & M")); // => '<text x="0.33" id="a">S &amp; M</text>'
 * element("rect", { width: 8, rx: undefined }); // => '<rect width="8"/>'
 * ```
 */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(
      ([key, value]) => ` ${key}="${typeof value === "number" ? writeNumber(value) : words(String(value))}"`,
    )
    .join("");
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join("")}</${name}>`;
}

/** A number with at most two decimals, and no negative zero. */
export function writeNumber(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}
