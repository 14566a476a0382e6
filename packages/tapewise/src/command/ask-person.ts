import type { Person } from "@tapewise/fit";
import type { Issue, Outcome } from "@tapewise/outcome";
import type { Command } from "commander";
import type { PriorChoice } from "../person/choose-prior.ts";
import { safeReadPerson } from "../person/read-person.ts";
import { safeParsePerson } from "../person/safe-parse-person.ts";
import type { Context } from "./context.ts";
import { EXIT } from "./exit-status.ts";
import { pathCodes } from "./files.ts";
import { print } from "./io.ts";
import { optionNotes } from "./option-notes.ts";
import { hasReadings, type PersonOptions, personFromOptions } from "./person-from-options.ts";
import { readPersonFile } from "./read-person-file.ts";
import { wrap } from "./text/wrap.ts";

/** The options of a call that describe one person. */
export interface AskedPersonOptions extends PersonOptions {
  readonly person?: string;
  readonly prior?: Exclude<PriorChoice, "automatic">;
}

/** Ends a call that says nothing of the person. */
export function requireReadings(options: AskedPersonOptions, command: Command): void {
  if (options.person === undefined && !hasReadings(options)) {
    command.error(
      'error: no reading is given; say for example --torso-length "43.2 cm", or --person me.json',
    );
  }
}

/**
 * The person's JSON value, from the file that is named and the options put over it. Tells what of the options changes
 * nothing, and sets the exit status for a file that cannot be read.
 */
export async function askPerson(
  options: AskedPersonOptions,
  { io, finish }: Context,
): Promise<Outcome<unknown>> {
  const file = options.person === undefined ? undefined : await readPersonFile(options.person, io);
  if (file !== undefined && !file.ok) {
    finish(file.issues.some((issue) => pathCodes.includes(issue.code)) ? EXIT.misuse : EXIT.issues);
    return file;
  }
  const notes = optionNotes({
    options,
    file: file?.value,
    path: options.person,
    prior: options.prior ?? "automatic",
  });
  await print(
    io.stderr,
    notes.flatMap((note) => wrap(note)),
  );
  return { ok: true, value: personFromOptions(options, file?.value), issues: [] };
}

/** The person with estimates of what was read, and all that is to be said of it. */
export function personOf(
  value: unknown,
  prior: PriorChoice | undefined,
): { readonly person?: Person; readonly issues: readonly Issue[] } {
  const parsed = safeParsePerson(value);
  if (!parsed.ok) return { issues: parsed.issues };
  const read = safeReadPerson(parsed.value, { prior: prior ?? "automatic", estimateStature: true });
  const issues = [...parsed.issues, ...read.issues];
  return read.ok ? { person: read.value, issues } : { issues };
}
