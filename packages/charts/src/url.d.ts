/** Zod's declarations name this class, which every platform has and TypeScript's ES library lacks. */
interface URL {
  readonly href: string;
}
