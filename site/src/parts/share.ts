import { coverage } from "tapewise";
import type { Lang } from "../layouts/languages.ts";

/** A share of people to a tenth of a per cent, as the library writes it. */
export function shareText(share: number, lang: Lang): string {
  const written = coverage.writeShare(share);
  if (lang === "en") return written;
  return written.replace("under", "unter").replace("over", "über").replace(".", ",");
}

/** What the size of the survey leaves open about a share, where that is known and says something. */
export function bandText({ share, low, high }: coverage.Share, lang: Lang): string | undefined {
  if (low === undefined || high === undefined || !(share >= 0)) return undefined;
  const [from, to] = [low, high].map((end) => tenths(end, lang));
  return from === to ? undefined : `(${from} ${lang === "de" ? "bis" : "to"} ${to})`;
}

function tenths(share: number, lang: Lang): string {
  return new Intl.NumberFormat(lang, { minimumFractionDigits: 1, maximumFractionDigits: 1 }).format(
    share * 100,
  );
}
