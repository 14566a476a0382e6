import type { english } from "../en/index.ts";
import { arrives } from "./arrives.ts";
import { average } from "./average.ts";
import { choose } from "./choose.ts";
import { fits } from "./fits.ts";
import { frame } from "./frame.ts";
import { guide } from "./guide.ts";
import { hands } from "./hands.ts";
import { home } from "./home.ts";
import { dimensions, parts } from "./parts.ts";
import { read } from "./read.ts";

export const german: typeof english = {
  frame,
  home,
  guide,
  parts,
  dimensions,
  choose,
  read,
  average,
  hands,
  fits,
  arrives,
};
