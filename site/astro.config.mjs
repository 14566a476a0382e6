import preact from "@astrojs/preact";
import starlight from "@astrojs/starlight";
import { defineConfig } from "astro/config";
import starlightTypeDoc, { typeDocSidebarGroup } from "starlight-typedoc";
import { searchOnUse } from "./scripts/search-on-use.ts";

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
  "figures/src/index.ts",
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

/** Quotes and inch marks stay as they are written: in the documentation they stand for themselves. */
const plainPunctuation = {
  name: "plain-punctuation",
  hooks: {
    "astro:config:setup": ({ config }) => {
      config.markdown.processor.options.features.smartPunctuation = false;
    },
  },
};

/** Libraries that come as one file although only little of them is used, and where their parts lie. */
const parts = { "ml-matrix": "src/index.js", "simple-statistics": "index.js" };
const inPieces = new RegExp(`node_modules/(?:${Object.keys(parts).join("|")})/`);

/** Lets a worker take the parts of these libraries that it uses: the same code, file by file. */
const takeParts = () => ({
  name: "take-parts",
  enforce: "pre",
  resolveId: {
    filter: { id: new RegExp(`^(?:${Object.keys(parts).join("|")})$`) },
    async handler(source, importer) {
      const whole = await this.resolve(source, importer, { skipSelf: true });
      if (whole === null) return null;
      const [root] = whole.id.split(`node_modules/${source}/`);
      return `${root}node_modules/${source}/${parts[source]}`;
    },
  },
});

/** No script that is loaded later brings styles or files of its own, so that nothing has to be fetched beforehand. */
const plainImports = {
  name: "plain-imports",
  enforce: "pre",
  load: {
    filter: { id: /vite\/preload-helper/ },
    handler: () => "export const __vitePreload = (load) => load();",
  },
};

/** What islands share: not what the documentation loads. */
const SHARED = /node_modules\/preact|site\/src\/|packages\//;

export default defineConfig({
  base,
  ...(origin === undefined ? {} : { site: origin }),
  trailingSlash: "always",
  build: { format: "directory", inlineStylesheets: "never" },
  devToolbar: { enabled: false },
  // Working pages may connect to nothing, and nobody's data is spent on pages that they do not open.
  prefetch: false,
  integrations: [
    plainPunctuation,
    preact(),
    starlight({
      title: "Tapewise",
      description:
        "From a person's own tape readings to a pack size, with the measurement error carried into the choice.",
      favicon: "/favicon.svg",
      disable404Route: true,
      customCss: ["./src/styles/tokens.css", "./src/styles/starlight.css"],
      components: {
        MarkdownContent: "./src/starlight/markdown-content.astro",
        Search: "./src/starlight/search.astro",
        SiteTitle: "./src/starlight/site-title.astro",
      },
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
                // A page for each package: of the name that is usual, the plugin takes away what others link to.
                entryFileName: "index",
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
    plugins: [plainImports, searchOnUse()],
    resolve: { conditions: [...conditions, "module", "browser", "development|production"] },
    ssr: {
      noExternal: [/^@tapewise\//, "tapewise"],
      resolve: { conditions: [...conditions, "module", "node", "development|production"] },
    },
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              // One file for what all working pages but one need, and one for what most do: small files compress badly.
              codeSplitting: {
                groups: [
                  { name: "every-page", test: SHARED, minShareCount: 5, priority: 2 },
                  { name: "most-pages", test: SHARED, minShareCount: 4, priority: 1 },
                ],
              },
            },
          },
        },
      },
      prerender: {
        resolve: {
          noExternal: [/^@tapewise\//, "tapewise"],
          conditions: [...conditions, "module", "node", "development|production"],
        },
      },
    },
    worker: {
      format: "es",
      plugins: () => [takeParts()],
      rolldownOptions: { treeshake: { moduleSideEffects: (id) => !inPieces.test(id) } },
    },
    build: { assetsInlineLimit: 0 },
  },
});
