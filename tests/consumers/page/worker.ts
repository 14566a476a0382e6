import { choose } from "./choose.ts";

void fetch("/answer/worker", { method: "POST", body: choose() });
