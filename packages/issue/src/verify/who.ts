import type { RegisteredKey } from "../keys/register.ts";
import type { Issued } from "../pdf/issued.ts";
import type { TimeWord } from "../pdf/time-token.ts";
import type { IssueRecord } from "../statement/record.ts";
import type { Answer, Known } from "./answers.ts";

/** By whom: what the register of the firm says of the key, and whose word that register is. */
export function who({ statement, register: carried }: IssueRecord, { time }: Issued, known: Known): Answer {
  const question = "who";
  const register = known.register ?? carried;
  const short = statement.key.slice(0, 16);
  if (register === undefined)
    return {
      question,
      standing: "open",
      words: [`Key ${short}. No register of keys came with it and none was handed in: whose it is, is not known.`],
    };
  if (!register.signed)
    return { question, standing: "against", words: ["The register of keys was changed since its root signed it."] };
  if (known.root !== undefined && known.root !== register.root)
    return {
      question,
      standing: "against",
      words: [`The register stands under root ${register.root.slice(0, 16)}, not under the one given.`],
    };
  const key = register.keys.find((one) => one.key === statement.key);
  if (key === undefined)
    return { question, standing: "against", words: [`Key ${short} is not in the register of the firm.`] };
  const named = `${key.person}, with the key of ${key.device} (${short}).`;
  const isTold = known.register !== undefined || known.root !== undefined;
  const source = isTold
    ? "By the register or root that was handed in."
    : `By the register that came with the document, under root ${register.root.slice(0, 16)}. Compare it with what the firm gives; until then anybody may have written both.`;
  const ended = endedWords(key, statement.at, time?.fits === true ? time : undefined);
  const standing = ended?.standing ?? (isTold ? "holds" : "open");
  return { question, standing, words: [named, ...(ended === undefined ? [] : [ended.words]), source] };
}

/** What the end of a key means for a statement. A key that was retired or lost later takes nothing from it. */
function endedWords(
  { added, ended }: RegisteredKey,
  at: string,
  seen: TimeWord | undefined,
): { readonly standing?: Answer["standing"]; readonly words: string } | undefined {
  if (at < added)
    return { standing: "against", words: `The statement bears a moment before the key was added, ${added}.` };
  if (ended === undefined) return undefined;
  if (at >= ended.since)
    return {
      standing: "against",
      words: `The key was ${ended.as} since ${ended.since}, before the moment of the statement.`,
    };
  if (ended.as !== "stolen")
    return { words: `The key was ${ended.as} later, ${ended.since}: this takes nothing from the statement.` };
  if (seen !== undefined && seen.at.toISOString() < ended.since)
    return {
      standing: "open",
      words: `The key was stolen, ${ended.since}. A time authority that calls itself ${seen.by} saw the signature before; ask it whether it did.`,
    };
  return {
    standing: "open",
    words: `The key was stolen, ${ended.since}. The statement bears an earlier moment, but only by a clock that a thief can set.`,
  };
}
