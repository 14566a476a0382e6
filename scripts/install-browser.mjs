// Installs the browser that the tests of the site drive, where this can be done without asking: on Debian and its
// kin, as root. Everywhere else it says what to install, and fails.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const found = [process.env.CHROMIUM ?? "", ...places].find((path) => path !== "" && existsSync(path));

/** @param {string[]} args */
function apt(...args) {
  const { status } = spawnSync("apt-get", args, {
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    stdio: "inherit",
  });
  return status === 0;
}

if (found !== undefined) {
  console.log(`Chromium is there: ${found}`);
} else if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
  if (!apt("update") || !apt("install", "-y", "--no-install-recommends", "chromium")) {
    console.error("Chromium could not be installed. The tests of the site need it.");
    process.exitCode = 1;
  }
} else {
  console.error(
    "The tests of the site need Chromium. On Debian: sudo apt-get install -y chromium. " +
      "Elsewhere, install it and name its path in the environment: CHROMIUM=/path/to/chromium.",
  );
  process.exitCode = 1;
}
