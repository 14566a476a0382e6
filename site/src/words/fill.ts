/** Fills the `{name}` places of a text; one without a value stays as it is, so that it is seen. */
export function fill(text: string, values: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{([A-Za-z]+)\}/g, (place, name: string) =>
    Object.hasOwn(values, name) ? String(values[name]) : place,
  );
}
