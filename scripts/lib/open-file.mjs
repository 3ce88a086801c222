import { spawn } from "node:child_process";
import { findProgram } from "./run.mjs";

/** The program that shows a file to whoever sits at this machine, or undefined where nobody does. */
export function viewer(env = process.env, platform = process.platform, interactive = process.stdout.isTTY === true) {
  if (!interactive || env.CI || env.SSH_CONNECTION) return undefined;
  // `start` is built into the Windows shell, and takes its first quoted argument for a window title.
  if (platform === "win32") return { command: "cmd", args: ["/c", "start", ""] };
  if (platform === "darwin") return { command: "open", args: [] };
  if (!(env.DISPLAY || env.WAYLAND_DISPLAY)) return undefined;
  const command = findProgram("xdg-open");
  return command ? { command, args: [] } : undefined;
}

/** Opens the file if there is a desktop. Never fails: the report has been written whatever happens here. */
export function openFile(file) {
  const found = viewer();
  if (!found) return false;
  try {
    const child = spawn(found.command, [...found.args, file], { detached: true, stdio: "ignore" });
    child.on("error", () => {});
    child.unref();
    return true;
  } catch {
    return false;
  }
}
