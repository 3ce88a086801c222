// Checks which way imports point, how packages are entered, what pure packages use, and import cycles.
import { readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { join, posix } from "node:path";
import { cyclesIn } from "./cycles.mjs";
import { impurities, packageRules, purePackages, scope } from "./rules.mjs";
import { importsOf, lineOf, mask } from "./source.mjs";
import { exportsSubpath, workspacesOf } from "./workspaces.mjs";

const isTest = (file) => /\.test\.[mc]?tsx?$/.test(file);
const builtins = new Set(builtinModules);

/** All violations in the tree at `root`, each `{ file, line, found, expected }`, in order of file and line. */
export function checkBoundaries(root) {
  const workspaces = workspacesOf(root);
  const violations = workspaces.flatMap((workspace) => checkWorkspace(root, workspace, workspaces));
  return violations.sort((a, b) => (a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1));
}

function checkWorkspace(root, workspace, workspaces) {
  if (workspace.group === "packages" && !Object.hasOwn(packageRules, workspace.folder)) {
    const expected = "a rule for this package in scripts/lib/boundaries/rules.mjs";
    return [{ file: `${workspace.path}/package.json`, line: 1, found: `package ${workspace.folder}`, expected }];
  }
  const violations = [];
  const graph = new Map();
  for (const file of workspace.files) {
    const text = readFileSync(join(root, file), "utf8");
    const masked = mask(text);
    const imports = importsOf(text, masked);
    graph.set(file, edgesOf(file, imports, workspace));
    if (isTest(file)) continue;
    for (const { specifier, line } of imports) {
      const expected = expectation(file, specifier, workspace, workspaces);
      const found = specifier === undefined ? "import of a computed name" : `import "${specifier}"`;
      if (expected) violations.push({ file, line, found, expected });
    }
    violations.push(...referenceDirectives(file, text), ...impure(file, text, masked.code, workspace));
  }
  return [...violations, ...cyclesIn(graph).map(cycleViolation)];
}

/** What was expected in place of this import, or undefined where it is right. */
function expectation(file, specifier, workspace, workspaces) {
  const rule = workspace.group === "packages" ? packageRules[workspace.folder] : undefined;
  if (specifier === undefined) return rule ? "a plain string, so that the import can be checked" : undefined;
  if (specifier.startsWith(".")) return relativeExpectation(file, specifier, workspace);
  if (/^[#/]|^(?!node:)[a-z]+:/.test(specifier)) return "a relative path, a package name or node:…";
  const [name, subpath] = splitName(specifier);
  const target = workspaces.find((other) => other.name === name);
  if (target || name.startsWith(scope)) return workspaceExpectation(name, subpath, target, workspace, rule);
  if (!rule) return undefined;
  if (specifier.startsWith("node:") || builtins.has(name)) return nodeExpectation(file, workspace, rule);
  return outsideExpectation(name, workspace, rule);
}

function relativeExpectation(file, specifier, workspace) {
  const target = posix.join(posix.dirname(file), specifier);
  if (!target.startsWith(`${workspace.path}/`))
    return `a path inside ${workspace.path}, or another package by its name`;
  if (isTest(target)) return "no import of a test file";
  return undefined;
}

function workspaceExpectation(name, subpath, target, workspace, rule) {
  if (!target) return "the name of a package in this repository";
  if (target === workspace) return "a relative path inside the package itself";
  if (target.group === "apps") return `nothing that is in apps/: ${workspace.path} may import packages only`;
  if (rule && !rule.packages.includes(target.folder)) return `${workspace.folder} imports ${allowed(rule)}`;
  if (!exportsSubpath(target, subpath)) return `"${name}", or a subpath that its package.json exports`;
  return undefined;
}

function nodeExpectation(file, workspace, rule) {
  if (!rule.nodeIn) return `${workspace.folder} imports ${allowed(rule)}`;
  const folder = `${workspace.path}/${rule.nodeIn}`;
  return file.startsWith(folder) ? undefined : `Node's own modules only under ${folder}`;
}

function outsideExpectation(name, workspace, rule) {
  if (rule.outside === "any" || rule.outside.includes(name)) return undefined;
  return `${workspace.folder} imports ${allowed(rule)}`;
}

function allowed({ packages, outside }) {
  const names = [...packages.map((folder) => scope + folder), ...(outside === "any" ? ["packages from npm"] : outside)];
  return names.length === 0 ? "nothing" : `only ${names.join(", ")}`;
}

function splitName(specifier) {
  const parts = specifier.split("/");
  const length = specifier.startsWith("@") ? 2 : 1;
  return [parts.slice(0, length).join("/"), [".", ...parts.slice(length)].join("/")];
}

/** `/// <reference>` would bring in what the tsconfig of the package leaves out (Node, the DOM). */
function referenceDirectives(file, text) {
  return [...text.matchAll(/^[ \t]*\/\/\/\s*<reference\b.*$/gm)].map((match) => ({
    file,
    line: lineOf(text, match.index),
    found: match[0].trim(),
    expected: "no reference directives: the tsconfig says what a package sees",
  }));
}

function impure(file, text, code, workspace) {
  if (workspace.group !== "packages" || !purePackages.includes(workspace.folder)) return [];
  return impurities.flatMap(({ pattern, expected }) =>
    [...code.matchAll(pattern)].map((match) => ({ file, line: lineOf(text, match.index), found: match[0], expected })),
  );
}

/** Imports that are still there when the program runs. `import type` is not, so it cannot tie a knot. */
function edgesOf(file, imports, workspace) {
  const known = new Set(workspace.files);
  return imports
    .filter(({ specifier, typeOnly }) => !typeOnly && specifier?.startsWith("."))
    .map(({ specifier, line }) => ({ file: posix.join(posix.dirname(file), specifier), line }))
    .filter((edge) => known.has(edge.file));
}

function cycleViolation(steps) {
  const [first] = steps;
  const round = steps.map(({ from, line }) => `${from}:${line}`).join(" -> ");
  return { file: first.from, line: first.line, found: `import cycle ${round} -> ${first.from}`, expected: "no cycle" };
}
