/** What a pseudonym should not be. */
export type Identifying = "an e-mail address" | "a phone number";

const MAIL = /[^\s@]@[^\s@]+\.[^\s@]/;
/** Digits with what people put between them. */
const PHONE = /^\+?[\d\s()./-]+$/;
const [FEWEST_DIGITS, MOST_DIGITS] = [7, 15];
/** So many digits with nothing between them and no plus may be a member's number. */
const FEWEST_BARE_DIGITS = 9;

/**
 * Whether the name of a person looks like an address or a number that leads to them. A phone number has 7 to 15 digits
 * (ITU-T E.164 (2010): at most 15) and a plus, a bracket or gaps, or else 9 digits or more. It may look so by chance.
 */
export function identifying(person: string): Identifying | undefined {
  if (MAIL.test(person)) return "an e-mail address";
  const text = person.trim();
  if (!PHONE.test(text) || ISO_DATE.test(text)) return undefined;
  const digits = text.replace(/\D/g, "").length;
  const fewest = digits === text.length ? FEWEST_BARE_DIGITS : FEWEST_DIGITS;
  return digits >= fewest && digits <= MOST_DIGITS ? "a phone number" : undefined;
}

const ISO_DATE = /^\d{4}-\d{2}-\d{2}$/;
