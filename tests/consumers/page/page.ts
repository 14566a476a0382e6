// A page that chooses, and lets a worker choose too. Both tell the server.
import { choose } from "./choose.ts";

declare class Worker {
  constructor(url: URL, options: { readonly type: "module" });
}

await fetch("/answer/page", { method: "POST", body: choose() });
new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
