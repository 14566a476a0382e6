import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The folder of the site. */
export const site: string = fileURLToPath(new URL("..", import.meta.url));

/** Runs a command of the installed packages in the folder of the site; the process ends when it fails. */
export function run(
  command: string,
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): void {
  const { status } = spawnSync(command, args, {
    cwd: site,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: "1", ...env },
    shell: process.platform === "win32",
    stdio: "inherit",
  });
  if (status !== 0) process.exit(status ?? 1);
}

/** Builds the site for the path that the tests serve it under, unless `SITE_BUILT=yes` says that it is. */
export function buildForTests(): void {
  if (process.env.SITE_BUILT === "yes") return;
  run("astro", ["build"], { SITE_BASE: "/tapewise/" });
  run("node", ["scripts/secure.ts"]);
}
