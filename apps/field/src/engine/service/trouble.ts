import type { Issue } from "@good-grounds/core";
import { FORMAT, type Installation, parseInspectionData, VERSION } from "@good-grounds/inspection";
import { placeWords } from "@good-grounds/report";
import { filePlace, issueWords } from "../issue-words.ts";
import { recordPath } from "../places.ts";
import type { Data } from "../protocol.ts";
import type { Trouble } from "../view.ts";
import type { Desk } from "./desk.ts";

/** What keeps a job from being a finished file: everything the parser says, in plain words. */
export function troublesOf({ weighed }: Desk, data: Data): readonly Trouble[] {
  // Marks of the format are the program's own and nobody is asked for them.
  const parsed = parseInspectionData({ format: FORMAT, version: VERSION, ...data });
  if (parsed.ok) return [];
  const installation = weighed?.installation;
  return parsed.issues.map((issue) => inWords(issue, data, installation));
}

/** An issue of the parser as a plain sentence, at a place a screen can go to. */
export function inWords(issue: Issue, data: unknown, installation: Installation | undefined): Trouble {
  const path = recordPath(issue.path, data);
  const place = installation === undefined ? filePlace(issue.path) : placeWords(issue.path, installation);
  return { path, place, words: issueWords(issue) };
}
