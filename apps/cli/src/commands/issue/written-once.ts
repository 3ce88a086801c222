import { writeFile } from "node:fs/promises";
import { EXIT, Stop } from "../../host.ts";
import { reason } from "../../reason-of.ts";

/** Writes a file where none stands: what was issued is never written over. */
export async function writtenOnce(path: string, content: Uint8Array | string, advice: string): Promise<void> {
  try {
    await writeFile(path, content, { flag: "wx", mode: 0o600 });
  } catch (error) {
    const why = reason(error);
    if (why === "EEXIST")
      throw new Stop(EXIT.input, `${path}: stands there already and is never written over. ${advice}`);
    throw new Stop(
      EXIT.unreadable,
      `${path}: cannot be written (${why}). Check that the folder exists and that you may write there.`,
    );
  }
}
