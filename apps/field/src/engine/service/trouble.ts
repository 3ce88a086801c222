import type { Issue } from "@good-grounds/core";
import { type Installation, parseInspectionData } from "@good-grounds/inspection";
import { placeWords } from "@good-grounds/report";
import { ENGINE, LACKS } from "../../words/engine.ts";
import { draftOf } from "../draft.ts";
import { recordPath } from "../places.ts";
import type { Data, Trouble } from "../protocol.ts";
import type { Desk } from "./desk.ts";

/** What keeps a job from being a finished file: everything the parser says, in plain words. */
export function troublesOf({ weighed }: Desk, data: Data): readonly Trouble[] {
  const parsed = parseInspectionData({ ...draftMarks(data), ...data });
  if (parsed.ok) return [];
  const installation = weighed?.installation;
  return parsed.issues.map((issue) => inWords(issue, data, installation));
}

/** Marks of the format are the program's own and nobody is asked for them. */
function draftMarks(data: Data): Data {
  const draft = draftOf(data)?.file;
  return draft === undefined ? {} : { format: draft.format, version: draft.version };
}

/** An issue of the parser as a plain sentence, at a place a screen can go to. */
export function inWords(issue: Issue, data: unknown, installation: Installation | undefined): Trouble {
  const path = recordPath(issue.path, data);
  const place = installation === undefined ? path : placeWords(issue.path, installation);
  return { path, place, words: sentence(issue) };
}

function sentence({ code, path, found, expected, advice }: Issue): string {
  const name = String(path.at(-1) ?? "");
  switch (code) {
    case "missing":
      return ENGINE.missing(Object.hasOwn(LACKS, name) ? LACKS[name as keyof typeof LACKS] : nameWords(name, path));
    case "unknown-member":
      return ENGINE.unknownMember(found);
    case "unknown-reference":
      return ENGINE.reference(found);
    case "more-issues":
      return ENGINE.more(found);
    default:
      return `${ENGINE.wrong(found, expected)} ${advice.startsWith("write ") ? "" : `${advice}.`}`.trim();
  }
}

/** A member's name as words: "breakingCapacity" as "breaking capacity". */
function nameWords(name: string, path: Issue["path"]): string {
  const words = name.replaceAll(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  if (words === "name" && path.includes("client")) return LACKS.client;
  return words === "name" && path[0] === "boards" ? LACKS.boardName : `"${words}"`;
}
