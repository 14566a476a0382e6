import { createLineSplitter, type RawLine } from "tapewise/batch";
import { describe, expect, test } from "vitest";

const bytes = (text: string) => new TextEncoder().encode(text);
const shown = (lines: readonly RawLine[]) =>
  lines.map((line) => [
    line.number,
    line.bytes === undefined ? undefined : new TextDecoder().decode(line.bytes),
  ]);

describe("createLineSplitter", () => {
  test("numbers lines and takes either line end", () => {
    const splitter = createLineSplitter(10);
    expect(shown(splitter.push(bytes("a\nb\r\n\nc")))).toEqual([
      [1, "a"],
      [2, "b"],
      [3, ""],
    ]);
    expect(shown(splitter.end())).toEqual([[4, "c"]]);
  });

  test("has no last line after a line end", () => {
    const splitter = createLineSplitter(10);
    splitter.push(bytes("a\n"));
    expect(splitter.end()).toEqual([]);
  });

  test("joins a line that comes in pieces, also between carriage return and line feed", () => {
    const splitter = createLineSplitter(10);
    expect(splitter.push(bytes("ab"))).toEqual([]);
    expect(splitter.push(bytes("cd\r"))).toEqual([]);
    expect(shown(splitter.push(bytes("\ne\n")))).toEqual([
      [1, "abcd"],
      [2, "e"],
    ]);
  });

  test("keeps a line of the greatest length and drops one that is longer by a byte", () => {
    const splitter = createLineSplitter(3);
    expect(shown(splitter.push(bytes("abc\nabcd\nabc\r\nabcd\r\nx\n")))).toEqual([
      [1, "abc"],
      [2, undefined],
      [3, "abc"],
      [4, undefined],
      [5, "x"],
    ]);
  });

  test("never holds more of a long line than the limit", () => {
    const splitter = createLineSplitter(1000);
    const before = process.memoryUsage().arrayBuffers;
    for (let index = 0; index < 16_000; index++) splitter.push(new Uint8Array(65_536).fill(97));
    // A gigabyte has passed; were it held, it would show, whatever the collector has not yet taken away.
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(500_000_000);
    expect(shown(splitter.push(bytes("\nb\n")))).toEqual([
      [1, undefined],
      [2, "b"],
    ]);
  });

  test("is not disturbed when a chunk is filled anew", () => {
    const splitter = createLineSplitter(10);
    const chunk = Buffer.from("abc");
    splitter.push(chunk);
    chunk.fill("z");
    expect(shown(splitter.end())).toEqual([[1, "abc"]]);
  });
});
