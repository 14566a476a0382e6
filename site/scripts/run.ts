import { spawn, spawnSync } from "node:child_process";
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

/** Warnings that tell of no fault of the site. */
const HARMLESS: readonly RegExp[] = [
  // How busy the machine was.
  /PLUGIN_TIMINGS/,
  // Starlight asks for a collection of its own words, which a site may leave out.
  /The collection "i18n" does not exist or is empty/,
  // Without SITE_ORIGIN no page has a full address, and so there is no list of them.
  /requires the `site` astro\.config option/,
];

/** Builds the site into `dist`; the process ends when that fails, and also when anything warns. */
export async function build(env: Readonly<Record<string, string>> = {}): Promise<void> {
  const astro = spawn("astro", ["build"], {
    cwd: site,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: "1", ...env },
    shell: process.platform === "win32",
    stdio: ["inherit", "pipe", "pipe"],
  });
  let said = "";
  for (const [from, to] of [
    [astro.stdout, process.stdout],
    [astro.stderr, process.stderr],
  ] as const) {
    from.setEncoding("utf8").on("data", (text: string) => {
      said += text;
      to.write(text);
    });
  }
  const status = await new Promise<number>((resolve) => astro.on("close", (code) => resolve(code ?? 1)));
  if (status !== 0) process.exit(status);
  const warnings = said
    .split("\n")
    .filter((line) => /\[WARN\]|\bdeprecated\b.*Move /.test(line) && !HARMLESS.some((one) => one.test(line)));
  if (warnings.length > 0) {
    console.error(`The site was built with warnings:\n${warnings.join("\n")}`);
    process.exit(1);
  }
  run("node", ["scripts/secure.ts"], env);
}

/** Builds the site for the path that the tests serve it under, unless `SITE_BUILT=yes` says that it is. */
export async function buildForTests(): Promise<void> {
  if (process.env.SITE_BUILT === "yes") return;
  await build({ SITE_BASE: "/tapewise/" });
}
