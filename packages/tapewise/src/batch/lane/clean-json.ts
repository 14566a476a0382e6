import { escaped } from "@tapewise/outcome";

/** JSON on one line, with everything that could disturb a terminal escaped. */
export function cleanJson(value: unknown): string {
  return escaped(JSON.stringify(value));
}
