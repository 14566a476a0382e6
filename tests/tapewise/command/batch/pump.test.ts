import { describe, expect, test } from "vitest";
import type { LineBlock } from "../../../../packages/tapewise/src/batch/lane/line-blocks.ts";
import type { Answerers } from "../../../../packages/tapewise/src/command/batch/answerers.ts";
import { createPump } from "../../../../packages/tapewise/src/command/batch/pump.ts";

const encoder = new TextEncoder();
const decoder = new TextDecoder();
const textOf = (block: LineBlock): string =>
  block.bytes === undefined ? `[${block.first} too long]\n` : decoder.decode(block.bytes);

/** Answerers that give back what they are told, once they are let. */
function crew(count: number, most: number) {
  const given: { readonly first: number; readonly text: string; readonly finish: () => void }[] = [];
  let busy = 0;
  const released: string[] = [];
  const answerers: Answerers = {
    most,
    isAnyIdle: () => busy < count,
    answer: (block) => {
      busy += 1;
      const text = textOf(block);
      return new Promise((resolve) => {
        const finish = (): void => {
          busy -= 1;
          resolve({ bytes: encoder.encode(text), anyBad: false, release: () => released.push(text) });
        };
        given.push({ first: block.first, text, finish });
      });
    },
    close: async () => undefined,
  };
  return { answerers, given, released };
}

function pumpOf(count: number, most: number) {
  const made = crew(count, most);
  let written = "";
  const pump = createPump(
    made.answerers,
    async (bytes) => {
      written += decoder.decode(bytes);
      return true;
    },
    () => undefined,
  );
  const take = (first: number, text: string) => pump.take({ first, bytes: encoder.encode(text) });
  return { ...made, pump, take, written: () => written };
}

const settle = () => new Promise((resolve) => setImmediate(resolve));

describe("a pump", () => {
  test("hands lines to whoever is idle at once, and gathers what comes while all are busy", async () => {
    const { given, take } = pumpOf(1, 3);
    await take(1, "a\n");
    await take(2, "b\n");
    await take(3, "c\n");
    expect(given.map(({ text }) => text)).toEqual(["a\n"]);
    given[0]?.finish();
    await settle();
    expect(given.map(({ first, text }) => [first, text])).toEqual([
      [1, "a\n"],
      [2, "b\nc\n"],
    ]);
  });

  test("keeps the order, whoever is ready first, and says when bytes are needed no longer", async () => {
    const { given, released, pump, take, written } = pumpOf(2, 6);
    await take(1, "a\n");
    await take(2, "b\n");
    given[1]?.finish();
    await settle();
    expect([written(), released]).toEqual(["", []]);
    given[0]?.finish();
    await pump.end();
    expect([written(), released]).toEqual(["a\nb\n", ["a\n", "b\n"]]);
  });

  test("puts the news of a line that is too long between the lines before and after it", async () => {
    const { given, pump, take, written } = pumpOf(1, 6);
    await take(1, "a\n");
    await take(2, "b\n");
    const long = pump.take({ first: 3 });
    await settle();
    await long;
    await take(4, "d\n");
    const end = pump.end();
    for (let k = 0; k < 4; k += 1) {
      given[k]?.finish();
      await settle();
    }
    await end;
    expect(written()).toBe("a\nb\n[3 too long]\nd\n");
  });

  test("takes no more when so many are under way and enough has gathered", async () => {
    const { given, take } = pumpOf(1, 1);
    const much = `${"x".repeat(300_000)}\n`;
    await take(1, "a\n");
    let isTaken = false;
    const second = take(2, much).then(() => {
      isTaken = true;
    });
    await settle();
    expect([isTaken, given.length]).toEqual([false, 1]);
    given[0]?.finish();
    await second;
    expect([isTaken, given.length]).toEqual([true, 2]);
  });

  test("tells of an answerer that fails", async () => {
    const pump = createPump(
      { ...crew(1, 1).answerers, answer: () => Promise.reject(new Error("a worker has ended")) },
      async () => true,
      () => undefined,
    );
    await pump.take({ first: 1, bytes: encoder.encode("a\n") });
    await expect(pump.end()).rejects.toThrow("a worker has ended");
  });
});
