import { coverage } from "tapewise";
import type { Lang } from "../layouts/languages.ts";

/** A share of people to a tenth of a per cent, as the library writes it. */
export function shareText(share: number, lang: Lang): string {
  const written = coverage.writeShare(share);
  if (lang === "en") return written;
  return written.replace("under", "unter").replace("over", "über").replace(".", ",");
}

/** The same with what the size of the survey leaves open, where that is known and says something. */
export function bandedText({ share, low, high }: coverage.Share, lang: Lang): string {
  const written = shareText(share, lang);
  if (low === undefined || high === undefined) return written;
  const ends = [low, high].map((end) => tenths(end, lang));
  return ends[0] === ends[1] ? written : `${written} (${ends.join(lang === "de" ? " bis " : " to ")})`;
}

function tenths(share: number, lang: Lang): string {
  return new Intl.NumberFormat(lang, { minimumFractionDigits: 1, maximumFractionDigits: 1 }).format(
    share * 100,
  );
}
