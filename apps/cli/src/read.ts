import { readFile, stat } from "node:fs/promises";
import { LARGEST } from "@good-grounds/inspection";
import { EXIT, Stop } from "./host.ts";

/** Reads a file as UTF-8 text. Stops with "unreadable" when it is not there, not a file, or far too large to be one. */
export async function readText(path: string): Promise<string> {
  return decode(await readBytes(path), path);
}

/** Reads a file as bytes, under the same conditions. */
export async function readBytes(path: string): Promise<Buffer> {
  try {
    const { size } = await stat(path);
    // Bytes are never fewer than characters, so nothing that would be accepted is refused here.
    if (size > LARGEST * 4)
      throw new Stop(
        EXIT.input,
        `${path}: ${size} bytes, where at most ${LARGEST * 4} were expected. Photographs belong beside the file, not in it.`,
      );
    return await readFile(path);
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw new Stop(
      EXIT.unreadable,
      `${path}: cannot be read (${reason(error)}). Check the name and that you may read it.`,
    );
  }
}

/** Bytes as UTF-8 text; anything else stops with the name of what was read. */
export function decode(bytes: Uint8Array, name: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Stop(EXIT.input, `${name}: not UTF-8 text, where a JSON document was expected. Save it as UTF-8.`);
  }
}

export function reason(error: unknown): string {
  if (error instanceof Error && "code" in error && typeof error.code === "string") return error.code;
  return error instanceof Error ? error.message : String(error);
}
