/** The languages of the working pages. */
export type Lang = "en" | "de";

export const langs: readonly Lang[] = ["en", "de"];

/** The working pages in the order in which a reader needs them. */
export const pageIds = ["choose", "read", "average", "fits", "hands", "arrives"] as const;

export type PageId = (typeof pageIds)[number];

/** Paths for `getStaticPaths` of a page that is there in every language: English has no prefix. */
export function languagePaths(): { params: { lang: string | undefined }; props: { lang: Lang } }[] {
  return langs.map((lang) => ({ params: { lang: lang === "en" ? undefined : lang }, props: { lang } }));
}

/** The address of a page below the site's base; `""` is the first page. */
export function addressOf(page: PageId | "", lang: Lang): string {
  const base = import.meta.env.BASE_URL.replace(/\/$/, "");
  const steps = [lang === "en" ? "" : lang, page].filter((step) => step !== "");
  return `${base}/${steps.map((step) => `${step}/`).join("")}`;
}

/** The address of a page of the documentation, which is in English. */
export function docsAddress(path = ""): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, "")}/docs/${path}`;
}
