import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzip } from "node:zlib";

/** Where the built site lies. */
export const dist: string = fileURLToPath(new URL("../dist", import.meta.url));

const TYPES: Readonly<Record<string, string>> = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
};

/** The built site, served under a path, on a port of this machine. */
export interface ServedSite {
  /** Address of the first page, with a slash at its end. */
  readonly address: string;
  readonly origin: string;
  readonly close: () => Promise<void>;
}

const compress = promisify(gzip);

/** Serves the built site as hosts do: text compressed where it may be, file names exactly as they are. */
export async function serveSite(base: string, folder: string = dist): Promise<ServedSite> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://site").pathname);
    const answer = async (): Promise<void> => {
      if (!path.startsWith(base)) throw new Error("outside of the site");
      const inside = normalize(path.slice(base.length));
      if (inside.startsWith("..")) throw new Error("outside of the site");
      const file = join(folder, path.endsWith("/") ? join(inside, "index.html") : inside);
      const content = await readFile(file);
      const type = TYPES[extname(file)];
      const isSmaller = type !== undefined && /\bgzip\b/.test(String(request.headers["accept-encoding"]));
      response.writeHead(200, {
        "content-type": type ?? "application/octet-stream",
        ...(isSmaller ? { "content-encoding": "gzip" } : {}),
      });
      response.end(isSmaller ? await compress(content) : content);
    };
    answer().catch(async () => {
      response.writeHead(404, { "content-type": "text/html; charset=utf-8" });
      response.end(await readFile(join(folder, "404.html")).catch(() => "not found"));
    });
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const origin = `http://127.0.0.1:${port}`;
  return {
    address: `${origin}${base}`,
    origin,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
