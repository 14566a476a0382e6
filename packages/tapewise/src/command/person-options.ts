import { speakDimension } from "@tapewise/charts";
import { buildFeatures } from "@tapewise/fit";
import { measurers, tools } from "@tapewise/landmarks";
import { lengthUnits } from "@tapewise/units";
import { type Command, Option } from "commander";
import { personCuts } from "../person/choices.ts";
import { priorOption } from "./options.ts";
import { readDimensions } from "./person-from-options.ts";

/** Adds an option for each dimension that is read, in a group of their own. */
export function addReadingOptions(command: Command): Command {
  command.optionsGroup("Readings, each with one or more lengths:");
  for (const dimension of readDimensions) {
    command.addOption(new Option(`--${dimension} <readings...>`, `the ${speakDimension(dimension)}`));
  }
  return command;
}

/** Adds the options about the person and about how the readings were taken; `isChosenFor` those that only a choice uses. */
export function addPersonOptions(command: Command, { isChosenFor }: { isChosenFor: boolean }): Command {
  command
    .optionsGroup("The person and the measuring:")
    .addOption(
      new Option("--person <file>", "a person as JSON, in the form of the batch; - is standard input"),
    )
    .addOption(new Option("--unit <unit>", "the unit of readings that name none").choices(lengthUnits))
    .addOption(
      new Option("--cut <cut>", "whose survey figures to weigh the readings with").choices(personCuts),
    )
    .addOption(new Option("--stature <length>", "standing height, for the survey figures"))
    .addOption(new Option("--tool <tool>", "what the readings were taken with").choices(tools))
    .addOption(new Option("--rule-length <length>", "length of the rule, for the tool short-rule"))
    .addOption(new Option("--measured-by <who>", "who held the tool").choices(measurers))
    .addOption(new Option("--afresh", "the bones were found anew before each reading"));
  if (isChosenFor) {
    command
      .addOption(
        new Option("--build <features...>", "features of build that decide ties").choices(buildFeatures),
      )
      .addOption(
        new Option(
          "--first-pack",
          "a first pack: among packs that fit about as well, those with adjustable harnesses first",
        ),
      );
  }
  return command.addOption(priorOption());
}
