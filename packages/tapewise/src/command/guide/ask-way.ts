import type { Way } from "@tapewise/landmarks";
import { type Io, pageWidth, print } from "../io.ts";
import { wrap } from "../text/wrap.ts";
import type { Asker } from "./asker.ts";

/** Which of several ways is meant; nothing once the input has ended. A lone way is not asked about. */
export async function askWay(ways: readonly Way[], asker: Asker, io: Io): Promise<Way | undefined> {
  const [first, ...others] = ways;
  if (others.length === 0) return first;
  const width = pageWidth(io.stdout);
  await print(io.stdout, [
    "How will you take it?",
    ...ways.flatMap((way, index) => wrap(wayWords(way), { first: `  ${index + 1}. `, rest: "     " }, width)),
  ]);
  for (;;) {
    const answer = await asker.ask("A number, or Enter for 1: ");
    if (answer === undefined) return undefined;
    const text = answer.trim();
    const way = text === "" ? first : /^\d{1,3}$/.test(text) ? ways[Number(text) - 1] : undefined;
    if (way !== undefined) {
      await print(io.stdout, [""]);
      return way;
    }
    await print(io.stdout, [`Type a number from 1 to ${ways.length}.`]);
  }
}

function wayWords({ tool, who }: Way): string {
  const thing = `a ${tool.replaceAll("-", " ")}`;
  return who === "self" ? `on my own with ${thing}` : `with a helper and ${thing}`;
}
