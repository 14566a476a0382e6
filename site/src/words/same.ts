import type { english } from "./en/index.ts";

/** The shape of a section in another language: each key of the English one, and no other. */
export type Same<Section extends keyof typeof english> = (typeof english)[Section];
