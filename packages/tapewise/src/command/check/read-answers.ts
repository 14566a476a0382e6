import { type BodyCheckItemId, bodyCheckItemIds, bodyCheckItems } from "@tapewise/afterwards";
import { closestWord, didYouMean } from "@tapewise/outcome";
import { InvalidArgumentError } from "commander";

/** An answer as an option gives it. */
export interface StatedAnswer {
  readonly item: BodyCheckItemId;
  readonly answer: string;
}

/** Reads one word `item=answer` of an option and puts it behind those before it. */
export function readAnswer(word: string, before: unknown): readonly StatedAnswer[] {
  const [text = "", answer] = word.split("=", 2);
  const item = bodyCheckItems.find(({ id }) => id === text);
  if (item !== undefined && answer === undefined) {
    const known = item.answers.map(({ id }) => id);
    throw new InvalidArgumentError(
      `It says nothing of what was seen: give an answer with it, such as ${item.id}=${known[0]}; answers are ${known.join(", ")}.`,
    );
  }
  if (answer === undefined || item === undefined) {
    const near = closestWord(text, bodyCheckItemIds);
    throw new InvalidArgumentError(
      `It must be an item and an answer, such as cautions=none${didYouMean(near === undefined ? [] : [near])}; items are ${bodyCheckItemIds.join(", ")}.`,
    );
  }
  const known = item.answers.map(({ id }) => id);
  if (!known.includes(answer)) {
    const near = closestWord(answer, known);
    throw new InvalidArgumentError(
      `${item.id} has no answer “${answer}”${didYouMean(near === undefined ? [] : [near])}; answers are ${known.join(", ")}.`,
    );
  }
  return [...(Array.isArray(before) ? before : []), { item: item.id, answer }];
}
