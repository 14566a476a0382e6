/** The page that tells how well a group of people measures. */
export const hands = {
  title: "How good are our hands",
  description:
    "Paste the readings of an evening on which several people measured the same people, and see how far a single reading can be trusted, and why.",
  lead: "Measure a few people, each by two or three of you, each twice. Paste what you wrote down and see how far a single reading can be trusted, whose hand differs, and what to do about it.",
  example: "An invented evening of the trail crew: ten members, measured by three of them, twice each.",
  textTitle: "What you wrote down",
  textLabel: "Readings of the study",
  textHint:
    "Type, paste or drop a file: CSV, a table copied from a spreadsheet or a web page, or JSON. Either a row for each person with a column such as “Ann 2 (cm)” for each reading, or a row for each reading with the columns subject, measurer, repeat and a value with its unit.",
  dimension: "What was measured, where the text does not say",
  dimensionNone: "as the text says",
  bare: "Unit of bare numbers, where the text does not say",
  bareNone: "as the text says",
  clear: "Clear",
  begin: "Back to the example",
  counted: "{readings} readings of {subjects} people by {measurers}, up to {repeats} each.",
  handOne: "1 hand",
  handMany: "{count} hands",
  missingOne: "1 cell is missing.",
  missingMany: "{count} cells are missing.",
  asideOne: "1 was set aside.",
  asideMany: "{count} were set aside.",
  nothing: "Nothing to object to.",
  count: "{wrong} wrong, {odd} worth a look.",
  more: "Only the first {count} are shown.",
  wrongTitle: "Wrong",
  oddTitle: "Worth a look",
  goLine: "line {line}: go there",
  readTitle: "As it was read",
  readCaption: "Readings, {unit}; – is missing, crossed out is set aside",
  readMore: "The first {most} of {count} people are shown.",
  person: "Person",
  unreadable: "Nothing of it can be read as a study. What is wrong stands with the text.",
  empty: "There is nothing to tell yet.",
  tooMany:
    "This study is too large for a page: at most {measurers} hands and {readings} readings are compared here. The command does any size.",
  shortTitle: "In short",
  shortTotal: "± {value}",
  shortTotalText:
    "A single reading by any of you is this good: two of three lie within it of what hands like yours would read on average.",
  shortIntraText:
    "A single reading is this good: two of three lie within it of what the same hand would read on average. What another hand would read is not known.",
  shortApart:
    "If two readings of a person by one hand are more than {same} apart, find the bones again and take a third. By two hands they may be {any} apart without a slip.",
  shortApartSame:
    "If two readings of a person by one hand are more than {same} apart, find the bones again and take a third.",
  between:
    "Most of it lies between the hands: somebody holds the tape another way. Find the bones together, on one person, until you agree; more readings by one hand will not help.",
  within:
    "Most of it lies within each hand. Taking the mean of three readings, bones found afresh, will help more than a second person.",
  temTitle: "Technical error of measurement (TEM)",
  temHint: "The standard deviation of one reading; in per cent, of the mean. In brackets the interval.",
  temIntra: "one hand again (intra)",
  temInter: "between hands (inter)",
  temTotal: "any hand (total)",
  temOnly: "only {measurer}",
  error: "error",
  percent: "% of the mean",
  interval: "{percent} interval",
  reliability: "reliability",
  temMeaning:
    "For a fitter: write {total} beside a reading that anybody of you took, and {intra} beside the difference of two by the same hand.",
  temMeaningIntra:
    "For a fitter: {intra} is what one hand adds by chance each time; a second hand may add more.",
  temMeaningWide:
    "The interval between hands is wide because there are few hands, not because there are few readings: ask a fourth and a fifth person.",
  reliabilityMeaning:
    "Reliability is the share of what differs between readings that is people and not error. It is larger in a group of very different people; the error itself is not.",
  precisionTitle: "Repeatability and reproducibility",
  precisionHint:
    "After ISO 5725-2, people taken as levels. Two readings differ by more than r or R in one case of twenty.",
  sr: "sr, one hand again",
  sl: "sL, between hands",
  sR: "sR, any hand",
  r: "r, limit for one hand",
  R: "R, limit for two hands",
  precisionClean: "Screened by the tests of Cochran and Grubbs: nothing stands apart.",
  precisionFound: "Standing apart, and not left out: {found}.",
  foundVariance: "{subject} by {measurer} scatters more than the others do",
  foundMean: "{measurer}'s mean of {subject} is away from the others'",
  precisionMeaning:
    "For a fitter: a customer measured here and again by a colleague may seem to have grown by {R}. Between neighbouring sizes that are {R} apart, one reading by one person does not decide.",
  iccTitle: "Intraclass correlation (ICC)",
  iccHint: "From variance components (REML); for single readings.",
  iccAgreement: "agreement, hands exchanged",
  iccConsistency: "consistency, always the same hands",
  correlation: "ICC",
  iccMeaning:
    "For a fitter: of the variance between readings {share} % is people and {rest} % is you. The same tape on more alike people would give a lower figure.",
  agreementTitle: "Limits of agreement, two hands at a time",
  agreementHint:
    "After Bland and Altman: the mean difference, first less second, and the limits that 95 % of differences of single readings lie in.",
  pair: "Hands",
  bias: "mean difference",
  lowerLimit: "lower limit",
  upperLimit: "upper limit",
  agreementMeaning:
    "For a fitter: {first} reads {difference} {side} than {second} on average, and in a single case anything from {lower} to {upper}.",
  agreementMeaningNone:
    "For a fitter: {first} and {second} read the same on average, as far as this study can see, but in a single case they differ by anything from {lower} to {upper}.",
  longer: "longer",
  shorter: "shorter",
  agreementPlot: "Differences between {first} and {second}, over the length",
  agreementLabel:
    "Each point is a person: along the ruler the mean of {first} and {second}, upwards the difference. The mean difference is {bias}; the limits are {lower} and {upper}. The same is in the table above and the one below.",
  keyPoint: "a person",
  keyBias: "mean difference, with its interval",
  keyLimits: "limits of agreement",
  keyZero: "no difference",
  difference: "difference",
  meanLength: "mean",
  pairChoice: "Pair to draw",
  changeTitle: "Smallest detectable change",
  changeSame: "by the same hand",
  changeAny: "by any hand",
  changeMeaning:
    "For a fitter: if a growing or training customer reads less than {any} longer than last time, that may be you and not the back.",
  trendTitle: "Trend over repeats",
  trendSlope: "each repeat",
  trendChance: "p",
  everybody: "everybody",
  trendMeaning:
    "For a fitter: readings get {side} by {slope} from one to the next. The person slumps, or the tape settles: have everybody stand up anew.",
  trendMeaningNone: "For a fitter: the order in which readings are taken does no harm that shows.",
  digitsTitle: "Last digits",
  digitsHint:
    "How often each last digit was written, in {unit}, at the finest step that anybody used. Without preference each is as frequent.",
  digit: "Digit",
  digitsIndex: "preference index",
  digitsMeaning:
    "For a fitter: {measurers} likes some digits (often 0 and 5) more than chance would. Read every mark; a reading rounded to 5 mm throws away what a second reading would bring.",
  digitsMeaningNone: "For a fitter: nobody clearly prefers a digit. Every mark is read.",
  allowanceTitle: "Against a published limit",
  allowanceText:
    "A published survey of soldiers allowed two readings to differ by {limit} ({name}). Here {same} of {samePairs} pairs by one hand and {two} of {twoPairs} by two hands differ by more.",
  allowanceMeaning:
    "For a fitter: surveyors train for months to keep such a limit. It is a goal, not a rule for a shop.",
  plotTitle: "Every reading",
  plotLabel:
    "A row for each person, the shortest first, with every reading on one ruler: {people}. The same is in the table of what was read.",
  plotMore: "The first {most} people are drawn.",
  keyAside: "set aside",
  budgetTitle: "Where the error of one reading comes from",
  budgetLabel: "Bars on a ruler of error: {rows}.",
  budgetReading: "reading anew",
  budgetMeasurer: "the hand",
  budgetInteraction: "hand with person",
  budgetShare: "{sd}, {share} %",
  budgetMeaning:
    "For a fitter: the longest bar is where practice pays. Per cent are of the variance: a bar half as long is a quarter of the trouble.",
  notKnown: "not known",
  takeTitle: "Take it with you",
  takeHint: "JSON holds the readings, what is missing and set aside, and every figure of the report.",
  download: "Download as JSON",
  print: "Print the report",
  fileName: "our-hands",
};
