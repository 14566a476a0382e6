import type { SourceId } from "./source-id.ts";

/** A publication, and how far it was read. */
export interface Source {
  readonly id: SourceId;
  readonly title: string;
  /** Where and when it was published. */
  readonly published: string;
  /** What was read of it, so that nobody takes more from it than we did. */
  readonly read: string;
}

/** The publications behind the figures and findings. All measurements in millimetres, whatever they print. */
export const sources: readonly Source[] = [
  {
    id: "ansur-2",
    title: "2012 Anthropometric Survey of U.S. Army Personnel: Methods and Summary Statistics",
    published: "Gordon et al. 2014, NATICK/TR-15/007; individual data made public in 2017.",
    read: "The public individual data of 1,986 women and 4,082 men; not the printed tables.",
  },
  {
    id: "ansur-handbook",
    title: "Measurer's Handbook: US Army and Marine Corps Anthropometric Surveys, 2010-2011",
    published: "Hotzman et al. 2011, NATICK/TR-11/017.",
    read: "The titles of its sections, second-hand.",
  },
  {
    id: "kouchi-2020",
    title: "Anthropometric methods for apparel design: body measurement devices and techniques",
    published: "Kouchi, in Anthropometry, Apparel Sizing and Design, second edition, chapter 2.",
    read: "The pages on landmarks, waist levels and the neck base line.",
  },
  {
    id: "c7-palpation-2018",
    title:
      "Accuracy of motion palpation flexion-extension test in identifying the seventh cervical spinal process",
    published: "Journal of Chiropractic Medicine 17 (2018), pages 22 to 29.",
    read: "The abstract.",
  },
  {
    id: "c7-prominence-2013",
    title: "Which is the most prominent spinous process in the cervico-thoracic spinal junction?",
    published: "Scoliosis 8 (2013), supplement 2, O40.",
    read: "The abstract.",
  },
  {
    id: "crest-palpation-2017",
    title:
      "Systematic review and meta-analyses of the difference between the spinal level of the palpated and imaged iliac crests",
    published: "Journal of the Canadian Chiropractic Association 61 (2017).",
    read: "The abstract.",
  },
  {
    id: "crest-palpation-2007",
    title:
      "Which spinal levels are identified by palpation of the iliac crests and the posterior superior iliac spines?",
    published: "Chakraverty et al., Journal of Anatomy 210 (2007), pages 232 to 236.",
    read: "The abstract.",
  },
  {
    id: "scapula-level-2015",
    title:
      "The location of the inferior angle of the scapula in relation to the spine in the upright position",
    published: "Cooperstein, Haneline and Young, Chiropractic and Manual Therapies 23 (2015), article 7.",
    read: "The abstract.",
  },
  {
    id: "self-girths-2013",
    title:
      "Validity of self-measured waist and hip circumferences: results from a community study in Malaysia",
    published: "Nutrition Journal 12 (2013), article 135.",
    read: "The abstract.",
  },
  {
    id: "self-waist-2014",
    title: "Accuracy of self-measured waist circumference in adults at risk (Hoorn Prevention Study)",
    published: "BMC Medicine 12 (2014).",
    read: "The abstract; the journal's name from memory.",
  },
  {
    id: "daily-shrinkage-1987",
    title: "Spinal shrinkage in females: circadian variation and the effects of circuit weight-training",
    published: "Ergonomics 30 (1987); volume and year from memory.",
    read: "The abstract.",
  },
  {
    id: "load-numbness-2017",
    title: "Load carriage-related paresthesias (part 2): meralgia paresthetica",
    published: "Knapik, Reynolds, Orr and Pope 2017, PubMed 28285487.",
    read: "The abstract.",
  },
];
