import { type Command, Option } from "commander";

/** Chart files; may be given several times, and with several files each time. */
export function chartOption(): Option {
  return new Option("--chart <files...>", "size charts to choose from, CSV or JSON");
}

/** What is known of people beforehand. */
export function priorOption(): Option {
  return new Option(
    "--prior <which>",
    "weigh the readings with what surveys know of people (default: where cut and stature are given)",
  ).choices(["reference", "none"]);
}

/** The unit that results are shown in. */
export function showUnitOption(): Option {
  return new Option("--show-unit <unit>", "unit of what is printed (default: that of the readings)").choices([
    "cm",
    "in",
  ]);
}

/** Output for programs. */
export function jsonOption(): Option {
  return new Option("--json", "print JSON instead of text");
}

/** The chart files of a call that cannot do without one. */
export function requireCharts(
  options: { readonly chart?: readonly string[] },
  command: Command,
): readonly string[] {
  return options.chart ?? command.error("error: no chart is given; say for example --chart chart.csv");
}

/** Ends a call in which an option was left without its words and has swallowed the next option for one. */
export function requireWords(options: Readonly<Record<string, unknown>>, command: Command): void {
  for (const option of command.options) {
    const words = options[option.attributeName()];
    const [first] = Array.isArray(words) ? words : [];
    if (typeof first === "string" && first.startsWith("--")) {
      command.error(`error: option '${option.long}' is left without a value before '${first}'`);
    }
  }
}
