import { fc, test } from "@fast-check/vitest";
import { createRandom, normalQuantile, type Random } from "@tapewise/statistics";
import { expect } from "vitest";

const seed = fc.maxSafeInteger();
const label = fc.oneof(fc.string({ maxLength: 8 }), fc.maxSafeInteger());
const draw = (random: Random, count: number): number[] =>
  Array.from({ length: count }, () => random.uniform());

test.prop([seed])("law: a seed gives the same stream each time", (start) => {
  expect(draw(createRandom(start), 20)).toEqual(draw(createRandom(start), 20));
});

test.prop([seed, seed])("law: different seeds give different streams", (a, b) => {
  fc.pre(a !== b);
  expect(draw(createRandom(a), 3)).not.toEqual(draw(createRandom(b), 3));
});

test.prop([seed, label, fc.nat({ max: 20 })])(
  "law: a fork does not depend on what its parent drew, nor its parent on the fork",
  (start, name, drawn) => {
    const parent = createRandom(start);
    const before = draw(parent, drawn);
    const fork = draw(parent.fork(name), 5);
    expect(fork).toEqual(draw(createRandom(start).fork(name), 5));
    expect([...before, ...draw(parent, 5)]).toEqual(draw(createRandom(start), drawn + 5));
  },
);

test.prop([seed, label, label])("law: different labels fork different streams", (start, a, b) => {
  fc.pre(a !== b);
  const parent = createRandom(start);
  expect(draw(parent.fork(a), 3)).not.toEqual(draw(parent.fork(b), 3));
  expect(draw(parent.fork(a), 3)).not.toEqual(draw(createRandom(start), 3));
  expect(draw(parent.fork(a).fork(b), 3)).not.toEqual(draw(parent.fork(b).fork(a), 3));
});

test.prop([seed])("law: uniform numbers are multiples of 2⁻⁵³ between 0 and 1", (start) => {
  for (const u of draw(createRandom(start), 50)) {
    expect(u).toBeGreaterThan(0);
    expect(u).toBeLessThan(1);
    expect(Number.isInteger(u * 2 ** 53)).toBe(true);
  }
});

test.prop([seed])("law: a normal number is the quantile of the uniform one in its place", (start) => {
  const normal = createRandom(start);
  for (const u of draw(createRandom(start), 10)) expect(normal.normal()).toBe(normalQuantile(u));
});

test.prop([
  seed,
  fc.maxSafeInteger(),
  fc.oneof(fc.nat({ max: 5 }), fc.nat({ max: Number.MAX_SAFE_INTEGER })),
])("law: whole numbers keep to their bounds", (start, low, gap) => {
  fc.pre(Number.isSafeInteger(low + gap));
  const random = createRandom(start);
  for (let i = 0; i < 10; i += 1) {
    const whole = random.integer(low, low + gap);
    expect(Number.isSafeInteger(whole)).toBe(true);
    expect(whole).toBeGreaterThanOrEqual(low);
    expect(whole).toBeLessThanOrEqual(low + gap);
  }
});
