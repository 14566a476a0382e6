import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { describe, expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What of a program's sources reaches the browser, and how many bytes it is together. */
async function sent(program: string): Promise<{ readonly bytes: number; readonly files: readonly string[] }> {
  const { metafile } = await build({
    stdin: { contents: program, resolveDir: root },
    bundle: true,
    format: "esm",
    platform: "browser",
    minify: true,
    write: false,
    metafile: true,
    conditions: ["@tapewise/source"],
    logLevel: "silent",
  });
  const [output] = Object.values(metafile.outputs);
  const files = Object.entries(output?.inputs ?? {}).flatMap(([path, { bytesInOutput }]) =>
    bytesInOutput > 0 ? [path] : [],
  );
  return { bytes: output?.bytes ?? 0, files };
}

describe("law: one pays for what one uses", () => {
  const heavy = /ml-matrix|women-figures|men-figures|\/joint\/|\/box\/|\/survey\/|\/fitting\//;

  test("a prior of cut and stature carries no models, no tables and no matrix library", async () => {
    const program = 'import { referencePrior } from "@tapewise/population"; console.log(referencePrior);';
    const { bytes, files } = await sent(program);
    expect(files.some((path) => path.includes("reference-prior"))).toBe(true);
    expect(files.filter((path) => heavy.test(path))).toEqual([]);
    expect(bytes).toBeLessThan(6000);
  });

  test("a joint model carries no matrix library either; fits do", async () => {
    const joint =
      'import { referencePopulation, reweight } from "@tapewise/population"; console.log(referencePopulation, reweight);';
    const model = await sent(joint);
    expect(model.files.some((path) => path.includes("women-figures"))).toBe(true);
    expect(model.files.filter((path) => path.includes("ml-matrix"))).toEqual([]);
    const fit = 'import { fitDistribution } from "@tapewise/population"; console.log(fitDistribution);';
    expect((await sent(fit)).files.some((path) => path.includes("ml-matrix"))).toBe(true);
  });
});
