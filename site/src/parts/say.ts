import type { fit, outcome } from "tapewise";
import type { Lang } from "../layouts/languages.ts";
import { fill } from "../words/fill.ts";
import type { MessageCode, Messages } from "../words/messages.ts";
import { lengthText, type ShownUnit } from "./lengths.ts";
import type { Problem } from "./problem.tsx";

/** Words of the library in the reader's language: English ones come ready, others are made from code and facts. */
export interface Voice {
  readonly lang: Lang;
  readonly unit: ShownUnit;
  /** `undefined` for English. */
  readonly messages: Messages | undefined;
}

/** An issue as a problem of a field. */
export function sayIssue(issue: outcome.Issue, { lang, messages }: Voice): Problem {
  const wording = messages === undefined ? undefined : wordingOf(messages, issue.code);
  const facts =
    messages === undefined
      ? {}
      : translated({ received: receivedText(issue.received), ...issue.facts }, messages);
  const isEnglish = lang !== "en" && wording === undefined;
  return {
    severity: issue.severity,
    message: wording === undefined ? issue.message : fill(wording.message, facts),
    expected: wording === undefined ? issue.expected : fill(wording.expected, facts),
    ...(isEnglish ? { isEnglish } : {}),
    ...fixesOf(issue),
  };
}

/** A bare number is one of two lengths, and a number with a separator too: each can be taken as it is. */
function fixesOf({ code, facts }: outcome.Issue): { readonly fixes?: readonly string[] } {
  if (code === "length-no-unit" && facts.number !== undefined) {
    return { fixes: [`${facts.number} cm`, `${facts.number} in`] };
  }
  if (code === "reading-unit-suspect" && facts.other !== undefined) return { fixes: [String(facts.other)] };
  return {};
}

function wordingOf(messages: Messages, code: string): Messages["issues"][MessageCode] | undefined {
  return Object.hasOwn(messages.issues, code) ? messages.issues[code as MessageCode] : undefined;
}

type Table = "reasons" | "nextSteps" | "comparisons";

/** The sentence of a reason, a next step or a comparison. */
export function sayReason(reason: fit.Reason, table: Table, voice: Voice): string {
  const { messages } = voice;
  const texts: Readonly<Record<string, string>> = messages?.[table] ?? {};
  const text = Object.hasOwn(texts, reason.code) ? texts[reason.code] : undefined;
  if (messages === undefined || text === undefined) return reason.sentence;
  const facts = Object.entries(reason.facts).map(([name, value]) => [
    name,
    sayFact(name, value, voice, messages),
  ]);
  return fill(text, Object.fromEntries(facts));
}

function sayFact(name: string, value: string | number, voice: Voice, messages: Messages): string {
  if (typeof value === "string") {
    if (/dimension$/i.test(name)) return messages.dimensions[value] ?? value;
    return factText(value, messages);
  }
  if (name.endsWith("Mm")) {
    const least = voice.unit === "cm" ? 0.5 : 25.4 / 16;
    if (value > 0 && value < least) {
      return fill(messages.lessThan, {
        length: lengthText(voice.unit === "cm" ? 1 : 3.175, voice.unit, voice.lang),
      });
    }
    return lengthText(value, voice.unit, voice.lang);
  }
  if (name.endsWith("Probability")) return sayShare(value, messages);
  return new Intl.NumberFormat(voice.lang, { maximumSignificantDigits: 4 }).format(value);
}

function sayShare(probability: number, messages: Messages): string {
  if (probability < 0.01) return messages.lessThanOne;
  if (probability > 0.99) return messages.moreThanNinetyNine;
  return `${Math.round(probability * 100)} %`;
}

function translated(facts: outcome.Facts, messages: Messages): Record<string, string | number> {
  return Object.fromEntries(
    Object.entries(facts).map(([name, value]) => [
      name,
      typeof value === "string" ? factText(value, messages) : germanNumber(value),
    ]),
  );
}

/** A text that the library holds ready, such as where its figures come from, in the reader's language. */
export function sayText(text: string, { messages }: Pick<Voice, "messages">): string {
  return messages === undefined ? text : factText(text, messages);
}

/** Ready-made words in facts, one by one where they are a list. */
function factText(value: string, messages: Messages): string {
  const { facts } = messages;
  const known = (word: string): string | undefined => (Object.hasOwn(facts, word) ? facts[word] : undefined);
  const whole = known(value);
  if (whole !== undefined) return whole;
  const tall = /^(\w+) (\d+) cm tall$/.exec(value);
  if (tall !== null) {
    return fill(messages.tall, { who: known(tall[1] ?? "") ?? tall[1] ?? "", height: tall[2] ?? "" });
  }
  const lengths = /^(up to |from )?([\d.]+)(?: to ([\d.]+))? mm$/.exec(value);
  if (lengths !== null) {
    const [, end = "", first = "", second] = lengths;
    const text =
      end === "up to "
        ? messages.upTo
        : end === "from "
          ? messages.from
          : second === undefined
            ? "{first}"
            : messages.range;
    const written = { first: germanNumber(Number(first)), second: germanNumber(Number(second ?? first)) };
    return `${fill(text, written)} mm`;
  }
  const times = /^(\d+) times$/.exec(value);
  if (times !== null) return fill(messages.times, { count: times[1] ?? "" });
  const parts = value.split(/(, | and | or )/);
  if (!parts.some((part) => known(part) !== undefined)) return value;
  return parts
    .map((part) => (part === " and " ? messages.and : part === " or " ? messages.or : (known(part) ?? part)))
    .join("");
}

function germanNumber(value: number): string {
  return new Intl.NumberFormat("de", { maximumFractionDigits: 3, useGrouping: false }).format(value);
}

/** What was received, as the library's own texts show it. */
function receivedText(received: outcome.Received): string {
  return received === null ? "null" : String(received);
}
