import { createInterface } from "node:readline";
import { type Readable, Writable } from "node:stream";
import { EXIT, type Host, Stop } from "../../host.ts";

/** Longer than any passphrase. */
const LONGEST = 10_000;

/** A secret from the environment, or the next line of standard input. Never from an argument: those are seen by others. */
export async function secretLine(host: Host, variable: string, what: string): Promise<string> {
  const given = process.env[variable];
  if (given !== undefined && given !== "") return given;
  const ask = () => {
    if (host.interactive) host.stderr.write(`${what}, then Enter: `);
  };
  const line = await (isTerminal(host.stdin) ? typedLine(host, ask) : nextLine(host.stdin, ask));
  if (line === "")
    throw new Stop(EXIT.input, `${what}: nothing was given. Set ${variable}, or write it as a line on standard input.`);
  return line;
}

function isTerminal(stream: Readable): boolean {
  return "isTTY" in stream && stream.isTTY === true;
}

/** A line typed at a terminal. Nothing of it is shown, not even how long it is. */
async function typedLine({ stdin: input, stderr }: Host, ask: () => void): Promise<string> {
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  const typing = createInterface({ input, output: nowhere, terminal: true, historySize: 0 });
  // Asked when nothing is shown any more: somebody may type at once.
  ask();
  try {
    return await new Promise<string>((done, failed) => {
      typing.once("line", done);
      typing.once("SIGINT", () => failed(new Stop(EXIT.input, "Stopped; nothing was written.")));
      // Control-D, or a terminal that went away.
      typing.once("close", () => done(""));
    });
  } finally {
    typing.close();
    stderr.write("\n");
  }
}

const WAITING = new WeakMap<Readable, string>();

/** The next line of a stream; what came after it stays for the next. */
async function nextLine(stream: Readable, ask: () => void): Promise<string> {
  ask();
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
