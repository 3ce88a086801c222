import type { Issue } from "@good-grounds/core";
import { ENGINE, LACKS } from "../words/engine.ts";
import { memberName, ONE_OF } from "../words/members.ts";

/** What an issue of the parser says to the person who can put it right. Names and forms of the file itself are left out. */
export function issueWords({ code, path, found, expected, advice }: Issue): string {
  const name = String(path.at(-1) ?? "");
  switch (code) {
    case "missing":
      return isUnsaid(name) ? ENGINE.unsaid(memberName(name)) : ENGINE.missing(lackWords(name, path));
    case "unknown-member":
      return ENGINE.unknownMember;
    case "unknown-reference":
      return ENGINE.reference(/ (?:a|an) (.+) in this file$/.exec(expected)?.[1] ?? memberName(name));
    case "not-in-list":
      return ENGINE.notOneOf(plainFound(found));
    case "answered-twice":
      return ENGINE.answeredTwice;
    case "without-observation":
      return ENGINE.withoutObservation;
    case "without-reason":
      return ENGINE.withoutReason;
    case "circuit-without-board":
      return ENGINE.circuitWithoutBoard;
    case "duplicate-id":
    case "repeated-member":
      return ENGINE.twice;
    case "boards-in-a-circle":
      return ENGINE.circle;
    case "more-issues":
      return ENGINE.more(found);
    default:
      if (isCoded(expected)) return ENGINE.unusable(plainFound(found));
      return `${ENGINE.wrong(plainFound(found), expected)} ${advice.startsWith("write ") || isCoded(advice) ? "" : `${capital(advice)}.`}`.trim();
  }
}

/** Whether what is missing is a list, of which there may be none: then somebody has to say so. */
function isUnsaid(name: string): boolean {
  return Object.hasOwn(ONE_OF, name) && !Object.hasOwn(LACKS, name);
}

/** Whether words speak of the form of the file rather than of the job. */
function isCoded(words: string): boolean {
  return /[{}<>\\^$]|[a-z][A-Z]|"[^"]*"/.test(words);
}

/** What was found, without the names of members it has. */
function plainFound(found: string): string {
  return /^(an object|a list)/.test(found) || found.length > 60 ? ENGINE.something : found;
}

function lackWords(name: string, path: Issue["path"]): string {
  if (name === "name" && path.includes("client")) return LACKS.client;
  if (name === "name" && path[0] === "boards") return LACKS.boardName;
  return Object.hasOwn(LACKS, name) ? LACKS[name as keyof typeof LACKS] : memberName(name);
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** A place in a file that is no job yet, by its members: "brief, client, name". */
export function filePlace(path: Issue["path"]): string {
  return path.map((step) => (typeof step === "number" ? String(step + 1) : memberName(step))).join(", ");
}
