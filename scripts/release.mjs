// `npm run release`: everything that must hold before the packages are published, and the tarballs. It stops there and
// prints the command that publishes them; nothing here talks to a registry, except to fetch what consumers bring along.
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const folder = join("node_modules", ".release", version);

/**
 * Runs a program and ends the release where it fails.
 *
 * @param {string} what
 * @param {string} program
 * @param {readonly string[]} args
 * @returns {string} what it printed, where that was asked for
 */
function must(what, program, args, stdio = "inherit") {
  console.log(`\n== ${what}`);
  const { status, stdout } = spawnSync(program, [...args], {
    cwd: root,
    encoding: "utf8",
    shell: process.platform === "win32",
    stdio: stdio === "pipe" ? ["ignore", "pipe", "inherit"] : "inherit",
  });
  if (status !== 0) {
    console.error(`\nNot released: ${what} failed.`);
    process.exit(1);
  }
  return stdout ?? "";
}

const changed = must("the tree is clean", "git", ["status", "--porcelain"], "pipe").trim();
if (changed !== "") {
  console.error(`Not released: commit or remove these first.\n${changed}`);
  process.exit(1);
}
// What older sources left in dist would be packed with the rest.
for (const name of readdirSync(join(root, "packages"))) {
  rmSync(join(root, "packages", name, "dist"), { recursive: true, force: true });
  rmSync(join(root, "packages", name, "tsconfig.tsbuildinfo"), { force: true });
}
must("build", "npm", ["run", "--silent", "build"]);
must("tests", "npm", ["test", "--silent"]);
must("consumers", "npm", ["run", "--silent", "test:consumers"]);

rmSync(join(root, folder), { recursive: true, force: true });
mkdirSync(join(root, folder), { recursive: true });
const names = readdirSync(join(root, "packages"));
const folders = names.map((name) => `./packages/${name}`);
must("pack", "npm", ["pack", ...folders, "--ignore-scripts", "--pack-destination", folder]);

const tarballs = readdirSync(join(root, folder)).map((file) => join(folder, file));
if (tarballs.length !== names.length) {
  console.error(`Not released: ${names.length} packages gave ${tarballs.length} tarballs.`);
  process.exit(1);
}
for (const tarball of tarballs) {
  must(`publint ${tarball}`, "npx", ["publint", "run", tarball, "--strict"]);
  must(`attw ${tarball}`, "npx", ["attw", tarball, "--profile", "esm-only", "--quiet"]);
}

const homeless = names.filter((name) => {
  const manifest = JSON.parse(readFileSync(join(root, "packages", name, "package.json"), "utf8"));
  return manifest.repository === undefined;
});
if (homeless.length > 0) {
  console.log(
    `\nFirst: npm takes --provenance only of packages that name the repository of the build. Say it as "repository"\n` +
      `{ "type": "git", "url": …, "directory": "packages/NAME" } in the package.json of ${homeless.join(", ")}.`,
  );
}
console.log(
  `\n${tarballs.length} packages of version ${version} are ready. Nothing was published. To publish them, in CI:\n`,
);
for (const tarball of tarballs) console.log(`npm publish ./${tarball} --provenance --access public`);
