import { safeChartFromData } from "@tapewise/charts";
import { describe, expect, test } from "vitest";
import { bounds, codes, failureOf } from "./charts-in-tests.ts";

const size = { size: "M", "torso-length": "43-48 cm" };

test("reads an object of the JSON form", () => {
  const outcome = safeChartFromData({ chart: "c", maker: undefined, sizes: [size] });
  expect(outcome.issues).toEqual([]);
  expect(outcome.ok && bounds(outcome.value)).toEqual({ M: [430, 480] });
});

test("takes what the caller knows", () => {
  const outcome = safeChartFromData({ sizes: [size] }, { chart: "c", cut: "youth" });
  expect(outcome).toMatchObject({ ok: true, value: { chart: "c", cut: "youth" }, issues: [] });
});

test("a lone nominal length reaches as far as the caller says", () => {
  const data = { chart: "c", sizes: [{ size: "M", "torso-length": "46 cm" }] };
  expect(codes(failureOf(safeChartFromData(data)))).toEqual(["chart-nominal-alone", "chart-no-dimension"]);
  const outcome = safeChartFromData(data, { loneNominalHalfWidth: 30 as never });
  expect(outcome.ok && bounds(outcome.value)).toEqual({ M: [430, 490] });
  expect(outcome.ok && outcome.value.sizes[0]?.ranges["torso-length"]).toMatchObject({
    basis: "nominal",
    nominalMm: 460,
  });
});

describe("hostile objects", () => {
  const cyclic: Record<string, unknown> = { chart: "c" };
  cyclic.sizes = [cyclic];
  const revoked = Proxy.revocable({}, {});
  revoked.revoke();
  const endless = new Proxy({}, { ownKeys: () => Array.from({ length: 1000 }, (_, n) => `k${n}`) });
  const throwing = {
    get sizes(): never {
      throw new RangeError("no");
    },
  };

  test.each([
    ["nothing", undefined, "chart-value-kind"],
    ["null", null, "chart-value-kind"],
    ["a number", Number.NaN, "chart-value-kind"],
    ["a function", () => 1, "chart-value-kind"],
    ["a big integer", 10n, "chart-value-kind"],
    ["a list", [size], "chart-value-kind"],
    ["a map", new Map([["sizes", [size]]]), "chart-no-sizes"],
    ["one that holds itself", cyclic, "chart-value-kind"],
    ["a revoked proxy", revoked.proxy, "chart-value-kind"],
    ["a proxy with keys that are not there", endless, "chart-no-sizes"],
    ["a getter that throws", throwing, "chart-value-kind"],
    ["an endless list", { chart: "c", sizes: new Array(4_000_000_000) }, "chart-too-many-sizes"],
    ["a list without items", { chart: "c", sizes: new Array(3) }, "chart-value-kind"],
    ["deep lists", { chart: "c", sizes: [[[[[[[[[1]]]]]]]]] }, "chart-value-kind"],
  ])("%s", (_name, data, code) => {
    expect(codes(failureOf(safeChartFromData(data)))).toContain(code);
  });

  test("own keys only: a polluted prototype states nothing", () => {
    const data = Object.assign(Object.create({ maker: "x" }), { chart: "c", sizes: [size] });
    const outcome = safeChartFromData(data);
    expect(outcome.ok && "maker" in outcome.value).toBe(false);
  });
});
