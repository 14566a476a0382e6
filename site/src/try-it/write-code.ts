/** Texts and lists that are written on one line where they are no longer. */
const WIDTH = 92;

/** A call of a function as it would stand in a program. */
export function writeCall(name: string, args: readonly unknown[]): string {
  const written = args.map((each) =>
    typeof each === "string" && each.includes("\n") ? writeTemplate(each) : writeJson(each, WIDTH - 2, 2),
  );
  const line = `${name}(${written.join(", ")});`;
  if (line.length <= WIDTH && !line.includes("\n")) return line;
  return `${name}(\n${written.map((each) => `  ${each},\n`).join("")});`;
}

/** A value as JSON, broken into lines only where it is wider than `width`. */
export function writeJson(value: unknown, width: number = WIDTH, indent = 0): string {
  const flat = writeFlat(value);
  if (flat.length + indent <= width || typeof value !== "object" || value === null) return flat;
  const inside = " ".repeat(indent + 2);
  const parts = Array.isArray(value)
    ? value.map((each) => writeJson(each, width, indent + 2))
    : entriesOf(value).map(([key, each]) => `${JSON.stringify(key)}: ${writeJson(each, width, indent + 2)}`);
  const [open, close] = Array.isArray(value) ? ["[", "]"] : ["{", "}"];
  return `${open}\n${parts.map((part) => inside + part).join(",\n")}\n${" ".repeat(indent)}${close}`;
}

function writeFlat(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(writeFlat).join(", ")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const parts = entriesOf(value).map(([key, each]) => `${JSON.stringify(key)}: ${writeFlat(each)}`);
  return parts.length === 0 ? "{}" : `{ ${parts.join(", ")} }`;
}

/** As JSON has it: what is `undefined` is not there. */
function entriesOf(value: object): readonly (readonly [string, unknown])[] {
  return Object.entries(value).filter(([, each]) => each !== undefined);
}

function writeTemplate(text: string): string {
  return `\`${text.replace(/[\\`]|\$\{/g, "\\$&")}\``;
}
