import { builtinModules } from "node:module";
import { posix } from "node:path";
import { findCircles } from "./circles.ts";
import { codeOf } from "./code-of.ts";
import { type ImportSite, listImports } from "./imports.ts";
import { importName, nodeEntryPoints, nodePackages, type Rung } from "./ladder.ts";
import { listEntryPoints, type Package, type SourceText } from "./workspace.ts";

/** What a check of the whole workspace found, and how much it looked at. */
export interface LadderReport {
  readonly violations: readonly string[];
  readonly files: number;
  readonly imports: number;
}

/** Checks every import of every package, and every manifest, against the ladder. */
export function checkLadder(packages: readonly Package[], ladder: ReadonlyMap<string, Rung>): LadderReport {
  const workspace = new Map(packages.map((entry) => [importName(entry.name), entry]));
  const reports = packages.map((entry) => {
    const rung = ladder.get(entry.name);
    if (rung === undefined) {
      return { violations: [`${entry.folder}: has no rung on the ladder`], files: 0, imports: 0 };
    }
    return checkPackage(entry, rung, workspace);
  });
  const violations = reports.flatMap((report) => report.violations);
  const files = reports.reduce((sum, report) => sum + report.files, 0);
  const imports = reports.reduce((sum, report) => sum + report.imports, 0);
  // A check that looks at nothing passes whatever happens.
  if (files === 0) violations.push("no source file was found");
  if (imports === 0) violations.push("no import was found");
  return { violations, files, imports };
}

function checkPackage(entry: Package, rung: Rung, workspace: ReadonlyMap<string, Package>): LadderReport {
  const allowed = new Set(rung.mayImport.map(importName));
  const own = importName(entry.name);
  const paths = new Set(entry.files.map((file) => file.path));
  const violations: string[] = [];
  const imported = new Set<string>();
  const edges = new Map<string, string[]>();
  const nodeUsers = new Map<string, string>();
  let imports = 0;

  const checkSite = (path: string, site: ImportSite): void => {
    imports += 1;
    const at = `${entry.folder}/${path}:${site.line}`;
    const { specifier, kind } = site;
    if (specifier === undefined) {
      violations.push(`${at}: ${kind} of a computed name, which nobody can check`);
    } else if (specifier.startsWith(".")) {
      const target = posix.join(posix.dirname(path), specifier);
      edges.set(path, [...(edges.get(path) ?? []), target]);
      if (!target.startsWith("src/")) {
        violations.push(`${at}: ${kind} of "${specifier}" leaves the package's sources`);
      } else if (!paths.has(target)) {
        violations.push(`${at}: ${kind} of "${specifier}", which is no file of the package`);
      }
    } else if (specifier.startsWith("node:") || (kind === "reference" && specifier === "node")) {
      nodeUsers.set(path, at);
      if (!nodePackages.has(entry.name))
        violations.push(`${at}: ${kind} of "${specifier}" outside the command`);
    } else if (builtinModules.includes(specifier)) {
      violations.push(`${at}: ${kind} of "${specifier}" without "node:"`);
    } else {
      checkBare(at, site, specifier);
    }
  };

  const checkBare = (at: string, { kind }: ImportSite, specifier: string): void => {
    const name = packageOf(specifier);
    imported.add(name);
    if (name === own) {
      violations.push(`${at}: ${kind} of "${specifier}", the package itself`);
      return;
    }
    const target = workspace.get(name);
    const isOurs = target !== undefined || name === "tapewise" || name.startsWith("@tapewise/");
    if (isOurs && !allowed.has(name)) {
      violations.push(`${at}: ${kind} of "${specifier}", which ${entry.name} may not import`);
    } else if (!declared(entry).has(name)) {
      violations.push(
        `${at}: ${kind} of "${specifier}", which ${entry.folder}/package.json does not declare`,
      );
    }
    const entryPoint = specifier === name ? "." : `.${specifier.slice(name.length)}`;
    if (target !== undefined && target.manifest.exports?.[entryPoint] === undefined) {
      violations.push(`${at}: ${kind} of "${specifier}", which is no entry point of ${name}`);
    }
  };

  for (const file of entry.files) {
    for (const site of importsOf(file)) checkSite(file.path, site);
  }
  for (const circle of findCircles(edges)) {
    violations.push(`${entry.folder}: circle of imports ${circle.join(" -> ")}`);
  }
  violations.push(...checkManifest(entry, allowed, imported, workspace));
  violations.push(...checkBrowser(entry, edges, nodeUsers));
  return { violations, files: entry.files.length, imports };
}

/** A declared dependency must be allowed and really imported; ours are pinned to our own version. */
function checkManifest(
  entry: Package,
  allowed: ReadonlySet<string>,
  imported: ReadonlySet<string>,
  workspace: ReadonlyMap<string, Package>,
): readonly string[] {
  const violations: string[] = [];
  const at = `${entry.folder}/package.json`;
  for (const [name, range] of declared(entry)) {
    const target = workspace.get(name);
    if (target !== undefined) {
      if (!allowed.has(name)) violations.push(`${at}: declares ${name}, which ${entry.name} may not import`);
      if (range !== target.manifest.version) {
        violations.push(`${at}: declares ${name} ${range}, but the workspace has ${target.manifest.version}`);
      }
    }
    // The site's third-party dependencies are used by its configuration too.
    const expected = target !== undefined || entry.name !== "site";
    if (expected && !imported.has(name)) violations.push(`${at}: declares ${name} but never imports it`);
  }
  return violations;
}

/** No entry point but those for Node may reach a file that needs it: the library runs in browsers too. */
function checkBrowser(
  entry: Package,
  edges: ReadonlyMap<string, readonly string[]>,
  nodeUsers: ReadonlyMap<string, string>,
): readonly string[] {
  const reached = new Set<string>();
  const walk = (path: string): void => {
    if (reached.has(path)) return;
    reached.add(path);
    for (const next of edges.get(path) ?? []) walk(next);
  };
  for (const path of listEntryPoints(entry.manifest)) {
    if (!nodeEntryPoints.has(`${entry.folder}/${path}`)) walk(path);
  }
  return [...nodeUsers]
    .filter(([path]) => reached.has(path))
    .map(([, at]) => `${at}: needs Node but is reached from an entry point of the library`);
}

// The checks of faulty copies share most files with the workspace: each is parsed once.
const parsed = new WeakMap<SourceText, readonly ImportSite[]>();

function importsOf(file: SourceText): readonly ImportSite[] {
  const known = parsed.get(file);
  if (known !== undefined) return known;
  const sites = listImports(file.path, codeOf(file.path, file.text));
  parsed.set(file, sites);
  return sites;
}

function declared({ manifest }: Package): ReadonlyMap<string, string> {
  return new Map(
    Object.entries({
      ...manifest.dependencies,
      ...manifest.peerDependencies,
      ...manifest.optionalDependencies,
      ...manifest.devDependencies,
    }),
  );
}

function packageOf(specifier: string): string {
  return specifier
    .split("/")
    .slice(0, specifier.startsWith("@") ? 2 : 1)
    .join("/");
}
