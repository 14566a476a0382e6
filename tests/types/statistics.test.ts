import {
  type Moments,
  type QuantileType,
  type Random,
  sampleQuantile,
  summarise,
} from "@tapewise/statistics";
import { describe, expect, expectTypeOf, test } from "vitest";

describe("what the compiler refuses", () => {
  test("a quantile type that Hyndman & Fan do not have, also at run time", () => {
    // @ts-expect-error: there are nine types
    expect(() => sampleQuantile([1, 2], 0.5, 10)).toThrow("type");
    // @ts-expect-error: the type has no default
    expect(() => sampleQuantile([1, 2], 0.5)).toThrow("type");
  });

  test("a deviation used without asking whether there is one", () => {
    const { sd } = summarise([432]);
    // @ts-expect-error: a single reading has none
    const doubled: number = sd;
    expect(doubled).toBeUndefined();
  });

  test("readings that are still text", () => {
    // @ts-expect-error: numbers only
    expect(() => summarise(["432"])).toThrow("values[0]");
  });

  test("moments that are changed in place", () => {
    const change = (moments: Moments): void => {
      // @ts-expect-error: moments are read only
      moments.n = 3;
    };
    expectTypeOf(change).parameter(0).toEqualTypeOf<Moments>();
    expect(change).toBeTypeOf("function");
  });
});

test("what the types say", () => {
  expectTypeOf<QuantileType>().toEqualTypeOf<1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9>();
  expectTypeOf<Random["fork"]>().parameter(0).toEqualTypeOf<string | number>();
  expectTypeOf(summarise).parameter(0).toEqualTypeOf<readonly number[]>();
  expectTypeOf(summarise([1]).sd).toEqualTypeOf<number | undefined>();
});
