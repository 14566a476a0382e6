import { InvalidArgumentError } from "@tapewise/outcome";
import type { BodyCheckAnswer, BodyCheckItem, BodyCheckItemId } from "./body-check-item.ts";
import type { GivenAnswer } from "./body-check-state.ts";
import { bodyCheckItems } from "./data.ts";

/** The item with an id. */
export function findItem(id: BodyCheckItemId): BodyCheckItem {
  const item = bodyCheckItems.find((one) => one.id === id);
  if (item === undefined) throw new InvalidArgumentError("item", id, "an item of the check");
  return item;
}

/** What an answer means. */
export function meaningOf({ item, answer }: GivenAnswer): BodyCheckAnswer {
  const { answers } = findItem(item);
  const found = answers.find(({ id }) => id === answer);
  if (found === undefined) {
    throw new InvalidArgumentError("answer", answer, `one of ${answers.map(({ id }) => id).join(", ")}`);
  }
  return found;
}
