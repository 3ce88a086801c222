import { isKnownFact } from "@good-grounds/core";
import type { Block, Document, Inline, Words } from "../../document/model.ts";
import { classificationMark } from "../../drawings/classification-mark.ts";
import type { ReportInput } from "../../input.ts";
import { LETTER } from "../../locales/letter-en.ts";
import { earthingOffSince } from "../../pdf/sections/safety.ts";
import { shortened } from "../../pdf/sections/shortened.ts";
import { dangersUnspoken } from "../dangers.ts";
import { headOf } from "../head.ts";
import { notices, paper } from "../paper.ts";
import { dates } from "./dates.ts";
import { type LetterGroup, type LetterPoint, letterGroups } from "./points.ts";

/** Limits named before the rest are counted: the letter stays short, and the report has them all. */
const LIMITS = 4;
const LIMIT_LENGTH = 110;

/** The letter to whoever owns or lets the place: how it came out, what to do and by when, in plain words. */
export function letter(input: ReportInput): Document {
  const head = headOf(input);
  return paper(input, {
    name: LETTER.name,
    size: 9.8,
    blocks: [
      { kind: "title", over: LETTER.over, words: head.address },
      ...notices(input),
      addressed(input),
      { kind: "paragraph", words: [LETTER.opening(head.inspectedOn), ...passOn(input)].join(" ") },
      ...alarm(input),
      { kind: "heading", level: 1, words: LETTER.result, unlisted: true },
      { kind: "frame", as: "stated", blocks: result(input) },
      ...todo(input),
      ...dates(input),
      { kind: "heading", level: 1, words: LETTER.unseen, unlisted: true },
      { kind: "group", as: "together", blocks: [...unseen(input), ...closing(input)] },
    ],
  });
}

function addressed(input: ReportInput): Block {
  const { brief } = input.installation.file;
  const { firm, day } = headOf(input);
  const to = isOwner(input) ? [brief.client.name, ...(brief.client.address ?? [])] : [LETTER.toOwner];
  return {
    kind: "facts",
    names: 22,
    rows: [
      [LETTER.to, to.join(", ")],
      ...(firm.length === 0 ? [] : [[LETTER.from, firm.join(", ")] as const]),
      [LETTER.date, LETTER.day(day)],
    ],
  };
}

const OWNERS: ReadonlySet<string> = new Set(["owner", "landlord", "employer"]);

/** Whether who ordered it is known to be the one it is for. Of whom nothing is recorded, that is taken: they are the client. */
function isOwner({ installation: { letting } }: ReportInput): boolean {
  return !isKnownFact(letting.orderedBy) || OWNERS.has(letting.orderedBy.word);
}

function passOn(input: ReportInput): readonly string[] {
  if (isKnownFact(input.installation.letting.orderedBy) && isOwner(input)) return [];
  return [isOwner(input) ? LETTER.passOnPerhaps : LETTER.passOn];
}

function alarm({ installation }: ReportInput): readonly Block[] {
  if (earthingOffSince(installation.file) === undefined) return [];
  return [{ kind: "frame", as: "alert", blocks: [{ kind: "paragraph", words: LETTER.earthingOff }] }];
}

/** What the inspector states, and what the facts come to: two voices, never one. */
function result(input: ReportInput): readonly Block[] {
  const { outcome, installation } = input;
  const { file } = installation;
  const unspoken = dangersUnspoken(input).length;
  const stated = file.conclusion?.outcome;
  const derived = outcome.outcome;
  const agree = stated === derived;
  const kinds = new Set(outcome.points.map(({ kind }) => kind));
  const nothing = kinds.has("nothing-inspected") && kinds.has("nothing-tested");
  const lines: readonly Words[] = [
    [{ text: stated === undefined ? LETTER.notStated : LETTER.stated[stated], as: "strong" }],
    agree ? LETTER.same : LETTER.derived[derived],
    ...(stated === undefined || agree ? [] : [[{ text: LETTER.differs, as: "alert" } as const]]),
    ...(nothing ? [[{ text: LETTER.nothingInspected, as: "strong" } as const]] : []),
    ...(outcome.points.length === 0 || nothing ? [] : [LETTER.open(outcome.points.length)]),
    ...(unspoken === 0 ? [] : [[{ text: LETTER.unspoken(unspoken), as: "alert" } as const]]),
    ...(outcome.dismissed.length === 0 ? [] : [LETTER.dismissed(outcome.dismissed.length)]),
  ];
  return lines.map((words) => ({ kind: "paragraph", words }));
}

function todo(input: ReportInput): readonly Block[] {
  const groups = letterGroups(input);
  const heading: Block = { kind: "heading", level: 1, words: LETTER.todo, unlisted: true };
  if (groups.length === 0) {
    const kinds = new Set(input.outcome.points.map(({ kind }) => kind));
    // Where nothing was looked at, nothing was found either, and that tells nothing.
    return kinds.has("nothing-inspected") || kinds.has("nothing-tested")
      ? []
      : [heading, { kind: "paragraph", words: LETTER.nothing }];
  }
  return [heading, ...groups.flatMap(groupBlocks), { kind: "paragraph", words: LETTER.who }];
}

function groupBlocks({ group, code, points, left }: LetterGroup): readonly Block[] {
  return [
    {
      kind: "heading",
      level: 2,
      words: LETTER.group[group],
      unlisted: true,
      beside: group === "open" ? LETTER.unclassed : LETTER.classed(code),
      ...(group === "open" ? {} : { mark: { svg: classificationMark(group), alt: code, width: 6 } }),
    },
    ...(points.length === 0
      ? []
      : [
          {
            kind: "list",
            numbers: points.map(({ number }) => String(number)),
            entries: points.map(pointWords),
          } as const,
        ]),
    ...(left === 0
      ? []
      : [{ kind: "paragraph", words: points.length === 0 ? LETTER.only(left) : LETTER.more(left) } as const]),
  ];
}

function pointWords({ place, words, below, safe, done }: LetterPoint): readonly Inline[] {
  return [
    { text: place, as: "strong" },
    { text: ` ${words}` },
    ...(below === "" ? [] : [{ text: ` ${below}`, as: "strong" } as const]),
    ...(safe === "" ? [] : [{ text: ` ${safe}`, as: "alert" } as const]),
    ...(done === "" ? [] : [{ text: ` ${done}` }]),
  ];
}

function unseen({ installation: { file } }: ReportInput): readonly Block[] {
  const all = [
    ...file.limitations.map(({ what }) => what),
    ...(file.limitations.length === 0 && file.extent.notCovered !== undefined ? [file.extent.notCovered] : []),
  ];
  const shown = all.length > LIMITS + 1 ? all.slice(0, LIMITS) : all;
  return [
    all.length === 0
      ? { kind: "paragraph", words: LETTER.noneUnseen }
      : { kind: "list", entries: shown.map((what) => LETTER.closed(shortened(what, LIMIT_LENGTH))) },
    ...(shown.length < all.length
      ? [{ kind: "paragraph", words: LETTER.unseenMore(all.length - shown.length) } as const]
      : []),
  ];
}

function closing(input: ReportInput): readonly Block[] {
  const { signed } = headOf(input);
  const words = [LETTER.ask, ...(signed.length === 0 ? [] : [LETTER.signed(signed)])];
  return [{ kind: "paragraph", words: words.join(" ") }];
}
