import { randomUUID } from "node:crypto";
import { rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { EXIT, Stop } from "./host.ts";
import { reason } from "./reason-of.ts";

/** Writes beside the target and renames: whoever looks sees the old file or the new one, never half of one. */
export async function writeWhole(target: string, bytes: Uint8Array | string): Promise<void> {
  const beside = join(dirname(target), `.${randomUUID()}.part`);
  try {
    await writeFile(beside, bytes, { flag: "wx" });
    await rename(beside, target);
  } catch (error) {
    await rm(beside, { force: true });
    throw new Stop(
      EXIT.unreadable,
      `${target}: cannot be written (${reason(error)}). Check that the folder exists and that you may write there.`,
    );
  }
}
