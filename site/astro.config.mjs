import preact from "@astrojs/preact";
import starlight from "@astrojs/starlight";
import { defineConfig } from "astro/config";
import starlightTypeDoc, { typeDocSidebarGroup } from "starlight-typedoc";

/** The path that the site is served under: a folder of a host, or its root. */
const base = process.env.SITE_BASE ?? "/";

/** Where the site will be found, such as `https://example.org`; only then pages can name each other in full. */
const origin = process.env.SITE_ORIGIN;

/** Every entry point of the packages, in the order of the reference. */
const entryPoints = [
  "tapewise/src/index.ts",
  "tapewise/src/batch/index.ts",
  "tapewise/src/schema/index.ts",
  "outcome/src/index.ts",
  "units/src/index.ts",
  "intervals/src/index.ts",
  "statistics/src/index.ts",
  "landmarks/src/index.ts",
  "tables/src/index.ts",
  "measurement/src/index.ts",
  "charts/src/index.ts",
  "charts/src/schema.ts",
  "population/src/index.ts",
  "fit/src/index.ts",
  "afterwards/src/index.ts",
  "coverage/src/index.ts",
].map((path) => `../packages/${path}`);

/**
 * The reference takes most of the time of a build, and only a build shows it. `SITE_REFERENCE=off` leaves it
 * out of one too.
 */
const hasReference = process.argv.includes("build") && process.env.SITE_REFERENCE !== "off";

// The workspace's own sources are used, so that the site needs no build of the packages first.
const conditions = ["@tapewise/source"];

export default defineConfig({
  base,
  ...(origin === undefined ? {} : { site: origin }),
  trailingSlash: "always",
  build: { format: "directory", inlineStylesheets: "never" },
  devToolbar: { enabled: false },
  // Working pages may connect to nothing, and nobody's data is spent on pages that they do not open.
  prefetch: false,
  // Quotes and inch marks stay as they are written: in the documentation they stand for themselves.
  markdown: { smartypants: false },
  integrations: [
    preact(),
    starlight({
      title: "Tapewise",
      description:
        "From a person's own tape readings to a pack size, with the measurement error carried into the choice.",
      favicon: "/favicon.svg",
      disable404Route: true,
      customCss: ["./src/styles/tokens.css", "./src/styles/starlight.css"],
      components: { Search: "./src/starlight/search.astro", SiteTitle: "./src/starlight/site-title.astro" },
      sidebar: [
        { label: "Tutorials", items: [{ autogenerate: { directory: "tutorials" } }] },
        { label: "How to", items: [{ autogenerate: { directory: "how-to" } }] },
        { label: "Explanation", items: [{ autogenerate: { directory: "explanation" } }] },
        { label: "Reference", items: [{ autogenerate: { directory: "reference" } }] },
        ...(hasReference ? [typeDocSidebarGroup] : []),
      ],
      plugins: hasReference
        ? [
            starlightTypeDoc({
              entryPoints,
              output: "api",
              tsconfig: "./typedoc.tsconfig.json",
              sidebar: { label: "Functions and types", collapsed: true },
              typeDoc: {
                disableSources: true,
                excludeExternals: true,
                treatWarningsAsErrors: true,
                treatValidationWarningsAsErrors: true,
              },
            }),
          ]
        : [],
    }),
  ],
  vite: {
    resolve: { conditions: [...conditions, "module", "browser", "development|production"] },
    ssr: {
      noExternal: [/^@tapewise\//, "tapewise"],
      resolve: { conditions: [...conditions, "module", "node", "development|production"] },
    },
    environments: {
      prerender: {
        resolve: {
          noExternal: [/^@tapewise\//, "tapewise"],
          conditions: [...conditions, "module", "node", "development|production"],
        },
      },
    },
    worker: { format: "es" },
    build: { assetsInlineLimit: 0 },
  },
});
