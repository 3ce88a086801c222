import { hashOf } from "../hand-over/hash.ts";

/** The SHA-256 of every part of the report writer that is fetched on demand, by its name in {@link FOLDER}. */
declare const WRITER_PARTS: Readonly<Record<string, string>>;

/** Where the parts lie beside the app. */
export const FOLDER = "writer/";

/** The names of all parts. */
export const PARTS: readonly string[] = Object.keys(WRITER_PARTS);

/**
 * Whether bytes are the part they came in the name of. A network that wants a sign-in first answers every request with
 * its own page, as if all were well; an older version of the app may have kept such a page, or a part of before.
 */
export async function isPart(name: string, bytes: ArrayBuffer): Promise<boolean> {
  return (await hashOf(bytes)) === WRITER_PARTS[name];
}
