import { type Given, type IssueRecord, NOT_SHOWN, QUESTION, type Verified, verifiedOf } from "@good-grounds/issue";
import type { Issued } from "@good-grounds/issue/pdf";
import { printable, wrapped } from "@good-grounds/report";
import { EXIT, type ExitCode, type Host, Stop, widthOf } from "../../host.ts";
import { givenAt, registerOf } from "./given.ts";
import { madeAgain } from "./made-again.ts";

interface VerifyOptions {
  readonly earlier: readonly string[];
  readonly json: boolean;
  readonly register?: string;
  readonly root?: string;
  readonly topics?: string;
}

/** `goodgrounds verify`: five answers on each issued document or record of an issue. */
export async function verifyCommand(paths: readonly string[], options: VerifyOptions, host: Host): Promise<ExitCode> {
  if (paths.length === 0)
    throw new Stop(EXIT.input, "verify: name at least one issued document or record of an issue.");
  const { root } = options;
  if (root !== undefined && !/^[0-9a-f]{64}$/.test(root))
    throw new Stop(
      EXIT.input,
      "verify: --root takes the 64 digits of the public root, as `goodgrounds keys root` gave them.",
    );
  const given: Given[] = [];
  for (const path of paths) given.push(await givenAt(path));
  const register = await registerOf(options.register);
  const again = (issued: Issued) => madeAgain(issued, options, host);
  const verified = await verifiedOf(given, { register, root, madeAgain: again });
  if (verified.length === 0)
    throw new Stop(EXIT.input, "verify: none of the files is an issued document or a record of an issue.");
  host.stdout.write(options.json ? asJson(verified) : asText(verified, widthOf(host)));
  const all = verified.flatMap((one) => one.answers);
  if (all.some(({ standing }) => standing === "against")) return EXIT.against;
  // Whether anything was issued later can never be known for certain: it is told, and does not count.
  return all.some(({ question, standing }) => standing === "open" && question !== "latest") ? EXIT.open : EXIT.done;
}

function asText(verified: readonly Verified[], width: number): string {
  const lines = verified.flatMap(({ name, record, answers: five }) => [
    printable(name),
    ...(record === undefined
      ? []
      : indented(
          `Report ${record.statement.report}, issue ${record.statement.number}, outcome ${record.statement.outcome}.`,
          width,
        )),
    ...five.flatMap(({ question, words }) => ["", QUESTION[question], ...words.flatMap((one) => indented(one, width))]),
    ...reasonLines(record, width),
    "",
  ]);
  const notShown = ["What none of this shows", ...NOT_SHOWN.flatMap((one) => indented(one, width))];
  return `${[...lines, ...notShown].join("\n")}\n`;
}

function reasonLines(record: IssueRecord | undefined, width: number): readonly string[] {
  const reasons = record?.signed === true ? record.statement.reasons : [];
  if (reasons.length === 0) return [];
  return [
    "",
    "Issued while these points stood open",
    ...reasons.flatMap(({ point, words }) => [...indented(point, width), ...indented(`Reason given: ${words}`, width)]),
  ];
}

function indented(words: string, width: number): readonly string[] {
  return wrapped(printable(words), width - 2).map((line) => `  ${line}`);
}

function asJson(verified: readonly Verified[]): string {
  const documents = verified.map(({ name, record, answers: five }) => ({
    file: name,
    ...(record === undefined ? {} : { signed: record.signed, hash: record.hash, statement: record.statement }),
    answers: five,
  }));
  return `${JSON.stringify({ format: "good-grounds-verification", version: 1, documents, notShown: NOT_SHOWN }, null, 2)}\n`;
}
