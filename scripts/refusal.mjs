const [MAJOR, MINOR] = [22, 12];

/**
 * Why the tests cannot be run here, or `undefined` when they can.
 *
 * @param {string} version the running Node's version, as in `process.versions.node`
 * @param {boolean} installed whether the dependencies are there
 * @returns {string | undefined}
 */
export function refusal(version, installed) {
  if (!installed) return 'The dependencies are not installed: run "npm ci" first.';
  const [major = 0, minor = 0] = version.split(".").map(Number);
  if (major > MAJOR || (major === MAJOR && minor >= MINOR)) return undefined;
  return [
    `The tests need Node ${MAJOR}.${MINOR} or newer, and this is Node ${version}.`,
    'On Linux and Windows "npm ci" installs a newer one among the optional dependencies, and "npm test"',
    "finds it there; elsewhere, please install one.",
  ].join("\n");
}
