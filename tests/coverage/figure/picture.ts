import { expect } from "vitest";

/** What every picture must be: well-formed, self-contained and readable on light and dark. */
export function expectPicture(svg: string, id: string): void {
  const open: string[] = [];
  for (const [tag, slash, name, end] of svg.matchAll(/<(\/?)([A-Za-z]+)[^<>]*?(\/?)>/g)) {
    if (slash === "/") expect(open.pop(), tag).toBe(name);
    else if (end === "") open.push(name ?? "");
  }
  expect(open).toEqual([]);
  expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  expect(svg.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|href|@import|<style|<script/);
  const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map(([, colour]) => colour ?? "");
  expect(colours.length).toBeGreaterThan(3);
  expect(colours.filter((colour) => !/^(?:currentColor|none|url\(#.+\))$/.test(colour))).toEqual([]);
  expect(svg).toContain(`role="img" aria-labelledby="${id}-title ${id}-desc"`);
  const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map(([, one]) => one ?? "");
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.every((one) => one.startsWith(id))).toBe(true);
  for (const note of ["Sample: ", "Source: ", "Caveat: ", "<title", "<desc"]) expect(svg).toContain(note);
}
