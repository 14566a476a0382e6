import { describeReceived } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("describeReceived", () => {
  test.each([
    ["19 in", "19 in"],
    ["", ""],
    [43.2, 43.2],
    [true, true],
    [null, null],
  ])("leaves %j as it is", (value, shown) => {
    expect(describeReceived(value)).toBe(shown);
  });

  test.each([
    ["NaN", Number.NaN, "NaN"],
    ["an infinity", Number.NEGATIVE_INFINITY, "-Infinity"],
    ["minus zero, which JSON cannot hold", -0, 0],
    ["undefined", undefined, "nothing"],
    ["a big integer", 12345678901234567890n, "12345678901234567890"],
    ["a function", () => 1, "a function"],
    ["a symbol", Symbol("secret"), "a symbol"],
    ["an empty list", [], "an empty list"],
    ["a list", ["a", "b"], "a list of 2"],
    ["an object", { torso: 1 }, "an object"],
    ["a date", new Date(0), "an object"],
  ])("turns %s into something printable", (_kind, value, shown) => {
    expect(describeReceived(value)).toBe(shown);
  });

  test("keeps text of 80 characters, shortens text of 81 and says how long it was", () => {
    expect(describeReceived("x".repeat(80))).toBe("x".repeat(80));
    // 80 - 24 = 56 characters are kept: room for the ellipsis, the words and a length of nine digits.
    expect(describeReceived("x".repeat(81))).toBe(`${"x".repeat(56)}… (81 characters)`);
  });

  test("shortens a long big integer too", () => {
    expect(describeReceived(10n ** 100n)).toBe(`1${"0".repeat(55)}… (101 characters)`);
  });

  test.each([
    ["a line feed", "\n"],
    ["an escape", "\u001B"],
    ["a delete", "\u007F"],
    ["a next-line", "\u0085"],
    ["a line separator", "\u2028"],
    ["a paragraph separator", "\u2029"],
    ["a right-to-left override", "\u202E"],
    ["half a surrogate pair", "\uD83D"],
  ])("replaces %s, which would break or disguise a one-line message", (_name, character) => {
    expect(describeReceived(`19${character}in`)).toBe("19\uFFFDin");
  });

  test("does not leave half a character where it cuts", () => {
    const shown = String(describeReceived("x".repeat(55) + "😀".repeat(20)));
    expect(shown).toBe(`${"x".repeat(55)}\uFFFD… (95 characters)`);
  });

  test("does not throw on objects that refuse to be looked at", () => {
    const { proxy, revoke } = Proxy.revocable([], {});
    revoke();
    expect(describeReceived(proxy)).toBe("an object");
    const untouchable = new Proxy([], {
      get() {
        throw new Error("hands off");
      },
    });
    expect(describeReceived(untouchable)).toBe("an object");
  });
});
