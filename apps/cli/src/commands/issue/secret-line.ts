import type { Readable } from "node:stream";
import { EXIT, type Host, Stop } from "../../host.ts";

/** Longer than any passphrase. */
const LONGEST = 10_000;

/** A secret from the environment, or the next line of standard input. Never from an argument: those are seen by others. */
export async function secretLine(host: Host, variable: string, what: string): Promise<string> {
  const given = process.env[variable];
  if (given !== undefined && given !== "") return given;
  if (host.interactive) host.stderr.write(`${what}, then Enter: `);
  const line = await nextLine(host.stdin);
  if (line === "")
    throw new Stop(EXIT.input, `${what}: nothing was given. Set ${variable}, or write it as a line on standard input.`);
  return line;
}

const WAITING = new WeakMap<Readable, string>();

/** The next line of a stream; what came after it stays for the next. */
async function nextLine(stream: Readable): Promise<string> {
  let text = WAITING.get(stream) ?? "";
  const pieces = stream.iterator({ destroyOnReturn: false });
  while (!text.includes("\n") && text.length < LONGEST) {
    const { value, done } = await pieces.next();
    if (done === true) break;
    text += Buffer.from(value).toString("utf8");
  }
  const end = text.indexOf("\n");
  WAITING.set(stream, end < 0 ? "" : text.slice(end + 1));
  return (end < 0 ? text : text.slice(0, end)).replace(/\r$/, "");
}
