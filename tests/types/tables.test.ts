import { InvalidArgumentError } from "@tapewise/outcome";
import { detectSeparator, type Row, readDelimitedText, readTable, type Separator } from "@tapewise/tables";
import { expect, expectTypeOf, test } from "vitest";

test("cells are told apart from remarks and blank lines before they are read", () => {
  const [row] = readTable("a,b").rows;
  expectTypeOf(row).toEqualTypeOf<Row | undefined>();
  // @ts-expect-error a remark or a blank line has no cells
  expect(row?.cells).toHaveLength(2);
});

test("separators are those that are read", () => {
  expectTypeOf(detectSeparator).returns.toEqualTypeOf<Separator>();
  // @ts-expect-error nothing is parted by a bar
  expect(() => readDelimitedText("a|b", "|")).toThrow(InvalidArgumentError);
  // @ts-expect-error the separator must be named where it is not looked for
  expect(() => readDelimitedText("a,b")).toThrow(InvalidArgumentError);
});
