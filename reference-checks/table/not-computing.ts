/** Exported functions that compute no figure, by package and by why not. */
export const notComputing: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  afterwards: {
    "asks and answers, by rules without figures": [
      "answerBodyCheck",
      "fillBodyCheck",
      "lookAgain",
      "startBodyCheck",
      "writeBodyCheck",
    ],
    "reads and writes the log": [
      "memoryOutcomeStore",
      "readOutcomes",
      "safeOutcomeRow",
      "safeParseOutcomeLine",
      "writeOutcomeLine",
    ],
    "holds sums for learnProduct and learnMaker": ["createEvidence"],
  },
  charts: {
    "findings of auditReport in words": ["auditChart", "auditChartText"],
    "writes what was read": ["chartToData"],
    "puts in order": ["sizesInOrder"],
    names: ["speakDimension"],
  },
  coverage: {
    "draws what others compute": ["chartFigure", "drawChartFigure", "drawGrowthFigure"],
    "writes what others compute": ["describeSample", "writeShare"],
  },
  fit: {
    "makes room for chooseColumns and chooseRow": ["createChoiceColumns", "createRow", "safeCompileColumns"],
    "writes what others compute": ["writePercent"],
  },
  intervals: {
    "makes an interval of the numbers given": ["atLeast", "atMost", "point", "safeInterval"],
    "writes an interval": ["formatInterval"],
  },
  landmarks: {
    "looks up": ["cautionsFor", "dimensionKind", "dimensionName", "landmark"],
    "reads names": ["findDimension", "parseDimension", "safeParseDimension"],
  },
  measurement: {
    "words for what others compute": ["adviseStudy", "stateEstimate", "stateUncertainty", "tellStudy"],
    "draws what others compute": [
      "agreementFigure",
      "drawStudyFigure",
      "errorFigure",
      "readingsFigure",
      "studyFigures",
      "studyPage",
    ],
    "fills in what was left out": ["assumeConditions"],
    "reads readings and studies": ["createStudy", "parseStudy", "safeParseStudy", "safeReadReadings"],
  },
  outcome: {
    "named errors": ["InvalidArgumentError", "IssuesError", "TapewiseError"],
    "picks words by editDistance": ["closestWord", "didYouMean"],
    "makes, finds and writes issues": [
      "createIssue",
      "defineIssues",
      "describeReceived",
      "escaped",
      "failure",
      "fillTemplate",
      "formatIssue",
      "formatPath",
      "hasIssues",
      "printable",
      "relocateIssue",
      "success",
      "translateIssue",
      "unwrap",
    ],
  },
  population: {
    "reads tables of people": ["readSurvey", "safeReadSurvey"],
    "looks up": ["variableUnit"],
  },
  tables: {
    "reads text into cells": ["asWritten", "detectSeparator", "readDelimitedText", "readTable"],
    "finds a place in a text": ["placeOf", "placesIn"],
  },
  units: {
    "reads names and marks": ["decimalMarkOf", "describeUnit", "parseLengthUnit", "safeParseLengthUnit"],
    "checks a number": ["millimetres"],
  },
};
