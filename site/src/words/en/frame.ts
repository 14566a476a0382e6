/** What stands around every working page. */
export const frame = {
  skip: "Skip to the content",
  tools: "Site",
  docs: "Documentation",
  pages: "Working pages",
  theme: "Light or dark",
  languages: { en: "English", de: "Deutsch" },
  page: {
    choose: "Choose a size",
    read: "Read a chart",
    average: "Why average",
    fits: "Who does it fit",
    hands: "How good are our hands",
    arrives: "After it arrives",
  },
  privacy:
    "Everything is worked out in your browser. Nothing that you enter is sent anywhere, and there are no cookies. A link that you copy holds your entries behind its # sign, which browsers do not send either.",
  care: "Pain, numbness, an injury, a pregnancy or a growing child: let a professional fitter or a clinician look before any load is carried.",
  invented: "The people, makers and packs of the examples are invented.",
};
