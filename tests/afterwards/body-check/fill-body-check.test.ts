import { bodyCheckItems, bodyCheckTexts, fillBodyCheck, writeBodyCheck } from "@tapewise/afterwards";
import { build } from "esbuild";
import { expect, test } from "vitest";

test("the words that are handed in are used, with the figures of the check in them", () => {
  const texts = {
    ...bodyCheckTexts,
    look: { ...bodyCheckTexts.look, "upper-straps": "Meist {usualDegrees}?" },
  };
  const { sentences } = fillBodyCheck({ kind: "ask", item: "upper-straps" }, "cm", texts);
  const usual = bodyCheckItems.find(({ id }) => id === "upper-straps")?.facts.usualDegrees;
  expect(sentences).toEqual([`Meist ${usual}°?`]);
});

test("with the English texts it writes what is written without any", () => {
  for (const { id: item } of bodyCheckItems) {
    const step = { kind: "ask", item } as const;
    expect(fillBodyCheck(step, "in", bodyCheckTexts)).toEqual(writeBodyCheck(step, { unit: "in" }));
  }
});

test("whoever brings the words loads no others", async () => {
  const { outputFiles } = await build({
    stdin: {
      contents: 'import { fillBodyCheck } from "@tapewise/afterwards"; console.log(fillBodyCheck);',
      resolveDir: import.meta.dirname,
    },
    bundle: true,
    format: "esm",
    write: false,
    conditions: ["@tapewise/source"],
    logLevel: "silent",
  });
  const text = outputFiles[0]?.text ?? "";
  expect(text).toContain("fillBodyCheck");
  expect(text).not.toContain(bodyCheckTexts.look.cautions);
});
