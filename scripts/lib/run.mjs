// Starting child programs from the repository root.
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));
const binaries = join("node_modules", ".bin");
const onWindows = process.platform === "win32";

// On Windows the variable is spelt Path, and only the real process.env ignores case: a copy needs the spelling found.
const pathName = Object.keys(process.env).find((name) => name.toUpperCase() === "PATH") ?? "PATH";
const inheritedPath = (process.env[pathName] ?? "").split(delimiter);

/** Our own tools first: node_modules/.bin/node is Node 24 even where the machine has Node 20. */
const withTools = { [pathName]: [join(root, binaries), ...inheritedPath].join(delimiter) };

/** No node_modules/.bin at all: for npm, which must not run on a node that it is about to delete. */
export const withoutTools = {
  [pathName]: inheritedPath.filter((folder) => !folder.endsWith(binaries)).join(delimiter),
};

/**
 * Runs a program and resolves to how it ended; it never rejects. Output goes straight to the terminal unless
 * `capture` is set, in which case it comes back as `output`.
 */
export function run(command, args, { env = {}, capture = false, cwd = root } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...withTools, ...env },
      stdio: capture ? ["ignore", "pipe", "pipe"] : "inherit",
      // npm and the tools in node_modules/.bin are .cmd files on Windows, which only a shell can start.
      shell: onWindows && command !== "node",
    });
    let output = "";
    child.stdout?.on("data", (chunk) => {
      output += chunk;
    });
    child.stderr?.on("data", (chunk) => {
      output += chunk;
    });
    child.on("error", (error) => resolve({ code: 127, output: `${command}: ${error.message}` }));
    child.on("close", (code, signal) => resolve({ code: code ?? 1, output, signal }));
  });
}

/** Where a program is on the inherited PATH, or undefined. */
export function findProgram(name) {
  const endings = onWindows ? [".exe", ".cmd", ".bat"] : [""];
  for (const folder of inheritedPath) {
    for (const ending of endings) {
      const candidate = join(folder, name + ending);
      if (folder !== "" && existsSync(candidate)) return candidate;
    }
  }
  return undefined;
}

export function heading(text) {
  console.log(`\n── ${text} ${"─".repeat(Math.max(2, 76 - text.length))}`);
}
