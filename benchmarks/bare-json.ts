// A program that does no more than a batch cannot do without: it reads lines from standard input, parses each as JSON,
// writes an object of the size of an answer for it, and tells on standard error what that took. The objects, answers
// that a batch gave before, are read from the file it is given, and that does not count.
import { readFileSync } from "node:fs";
import { stderr, stdin, stdout } from "node:process";

const [file = ""] = process.argv.slice(2);
const answers = readFileSync(file, "utf8")
  .trimEnd()
  .split("\n")
  .map((line): unknown => JSON.parse(line));

const begin = performance.now();
const before = process.cpuUsage();
let held = "";
let count = 0;
const decoder = new TextDecoder();
for await (const chunk of stdin) {
  const lines = (held + decoder.decode(chunk, { stream: true })).split("\n");
  held = lines.pop() ?? "";
  let out = "";
  for (const line of lines) {
    const person: unknown = JSON.parse(line);
    if (typeof person !== "object") throw new Error("a person is an object");
    out += `${JSON.stringify(answers[count % answers.length])}\n`;
    count += 1;
  }
  if (!stdout.write(out)) await new Promise((resolve) => stdout.once("drain", resolve));
}
const { user, system } = process.cpuUsage(before);
const { maxRSS } = process.resourceUsage();
stderr.write(
  `${JSON.stringify([(performance.now() - begin) / 1e3, (user + system) / 1e6, maxRSS / 1024])}\n`,
);
