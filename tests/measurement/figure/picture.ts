import { expect } from "vitest";

/** What every picture of a study must be: well-formed, self-contained and readable on light and dark. */
export function expectStudyPicture(svg: string, id: string): void {
  expectWellFormed(svg);
  expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  expect(svg.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|href|@import|<style|<script/);
  const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map(([, colour]) => colour ?? "");
  expect(colours.length).toBeGreaterThan(3);
  expect(colours.filter((colour) => !/^(?:currentColor|none)$/.test(colour))).toEqual([]);
  expect(svg).toContain(`role="img" aria-labelledby="${id}-title ${id}-desc"`);
  const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map(([, one]) => one ?? "");
  expect(ids).toEqual([`${id}-title`, `${id}-desc`]);
  for (const note of ["Sample: ", "Caveat: ", "<title", "<desc"]) expect(svg).toContain(note);
}

/** Every element that is opened is closed, in order. */
export function expectWellFormed(markup: string): void {
  const open: string[] = [];
  for (const [tag, slash, name, end] of markup.matchAll(/<(\/?)([A-Za-z]\w*)[^<>]*?(\/?)>/g)) {
    if (slash === "/") expect(open.pop(), tag).toBe(name);
    else if (end === "" && name !== "meta") open.push(name ?? "");
  }
  expect(open).toEqual([]);
}
