import type { Lang } from "../layouts/languages.ts";
import { german } from "./de/index.ts";
import { messages as germanMessages } from "./de/messages.ts";
import { english } from "./en/index.ts";
import type { Messages } from "./messages.ts";

/** All words of the working pages, by language. */
export const words: Readonly<Record<Lang, typeof english>> = { en: english, de: german };

/** The library's own sentences in another language; English ones come with each issue and reason. */
export const messages: Readonly<Record<Lang, Messages | undefined>> = { en: undefined, de: germanMessages };

export type Words = typeof english;
