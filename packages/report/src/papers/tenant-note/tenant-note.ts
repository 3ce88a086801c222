import { isKnownFact } from "@good-grounds/core";
import type { Block, Document, Inline } from "../../document/model.ts";
import type { ReportInput } from "../../input.ts";
import { TENANT } from "../../locales/tenant-note-en.ts";
import { capitalised } from "../../pdf/sections/observation-order.ts";
import { earthingOffSince } from "../../pdf/sections/safety.ts";
import { shortened } from "../../pdf/sections/shortened.ts";
import { numbered, type Observation } from "../../words/observation-number.ts";
import { placeWords } from "../../words/place.ts";
import { clientWords } from "../../words/reasoning.ts";
import { dangersOf, dangersUnspoken } from "../dangers.ts";
import { headOf } from "../head.ts";
import { notices, paper } from "../paper.ts";
import { withoutOwner } from "./without-owner.ts";

const GROUPS = ["C1", "C2", "FI", "open"] as const;
type NoteGroup = (typeof GROUPS)[number];

/** Places named before the rest are counted: the note is one page. */
const SHOWN = 8;
/** Up to so many, and the letters are larger. */
const FEW = 4;
const PLACE_LENGTH = 70;
const WORDS_LENGTH = 170;

/** The note for whoever lives there: what to stay away from, what may be used, the test button, whom to call. One page. */
export function tenantNote(input: ReportInput): Document {
  const { address, inspectedOn, firm } = headOf(input);
  return paper(input, {
    name: TENANT.name(isHome(input)),
    size: places(input).length > FEW ? 10.5 : 12,
    blocks: [
      { kind: "title", over: TENANT.over, words: address },
      ...notices(input),
      paragraph(TENANT.opening(inspectedOn)),
      ...alarm(input),
      heading(TENANT.foundTitle),
      ...found(input),
      heading(TENANT.useTitle),
      paragraph(useWords(input)),
      paragraph(TENANT.stopIf),
      ...button(input),
      heading(TENANT.callTitle),
      { kind: "list", entries: callWords(input) },
      ...(firm[0] === undefined ? [] : [{ kind: "paragraph", words: TENANT.by(firm[0]), as: "small" } as const]),
    ],
  });
}

function paragraph(words: string): Block {
  return { kind: "paragraph", words };
}

function heading(words: string): Block {
  return { kind: "heading", level: 1, words, unlisted: true };
}

function isHome({ installation: { use } }: ReportInput): boolean {
  return !isKnownFact(use) || use.word === "dwelling" || use.word === "house-in-multiple-occupation";
}

function alarm({ installation: { file } }: ReportInput): readonly Block[] {
  if (earthingOffSince(file) === undefined) return [];
  return [{ kind: "frame", as: "alert", blocks: [paragraph(TENANT.earthingOff)] }];
}

/** Whether nobody looked at anything, or tested nothing, as far as is recorded. */
function isUnseen({ outcome: { points } }: ReportInput): boolean {
  return points.some(({ kind }) => kind === "nothing-inspected" || kind === "nothing-tested");
}

/** What is named, worst first; danger that the facts show counts as danger, whatever was chosen. */
function places(input: ReportInput) {
  const dangers = new Set(dangersOf(input).map(({ observation }) => observation.id));
  const members = numbered(input.installation.file).flatMap(({ group, observation }) => {
    const as: NoteGroup | "C3" | "none" = dangers.has(observation.id) ? "C1" : group;
    return as === "C3" || as === "none" ? [] : [{ group: as, observation }];
  });
  return GROUPS.flatMap((group) => members.filter((one) => one.group === group));
}

/** Where to stay away from and where to take care. */
function found(input: ReportInput): readonly Block[] {
  const ordered = places(input);
  const shown = ordered.slice(0, SHOWN);
  const left = ordered.length - shown.length;
  const unspoken = dangersUnspoken(input).flatMap(({ places: paths }) => paths.slice(0, SHOWN));
  if (ordered.length + unspoken.length === 0)
    return [paragraph(isUnseen(input) ? TENANT.nothingInspected : TENANT.nothing)];
  return [
    {
      kind: "list",
      entries: [
        ...unspoken.map((path) => unspokenEntry(placeWords(path, input.installation))),
        ...shown.map(({ group, observation }) => entry(group, observation, input)),
      ],
    },
    ...(left > 0 ? [paragraph(TENANT.more(left))] : []),
    ...(isUnseen(input) ? [paragraph(TENANT.nothingInspected)] : []),
  ];
}

/** Danger that the record shows and nobody wrote of: where, and no more than that. */
function unspokenEntry(place: string): readonly Inline[] {
  return [
    { text: `${TENANT.group.C1}: ${TENANT.closed(capitalised(place))}`, as: "strong" },
    { text: ` ${TENANT.plain.C1} ${TENANT.stop}` },
  ];
}

function entry(group: NoteGroup, one: Observation, input: ReportInput): readonly Inline[] {
  const { file } = input.installation;
  const place = TENANT.closed(capitalised(shortened(withoutOwner(one.place, file), PLACE_LENGTH)));
  return [
    { text: `${one.madeSafe === undefined ? TENANT.group[group] : TENANT.left}: ${place}`, as: "strong" },
    { text: ` ${entryWords(group, one, input)}` },
  ];
}

/** What was made safe is told as safe; else a plain sentence that is known to be true, or one that says no more than the class. */
function entryWords(group: NoteGroup, one: Observation, input: ReportInput): string {
  if (one.madeSafe !== undefined) {
    const done = withoutOwner(one.madeSafe.done, input.installation.file);
    return done === one.madeSafe.done ? TENANT.safe(shortened(done, WORDS_LENGTH)) : TENANT.safePlain;
  }
  const topic = input.reasoned.find(({ observation }) => observation === one.id);
  const plain = topic === undefined || group === "open" ? "" : clientWords(topic, group);
  const sentence = plain === "" ? TENANT.plain[group] : plain;
  return group === "C1" ? `${sentence} ${TENANT.stop}` : sentence;
}

function useWords(input: ReportInput): string {
  if (isUnseen(input) || earthingOffSince(input.installation.file) !== undefined) return TENANT.useNone;
  return input.outcome.points.length > 0 ? TENANT.useOpen : TENANT.use;
}

/** The test button, where there is one or may be one. */
function button({ installation: { boards, circuits } }: ReportInput): readonly Block[] {
  const isThere =
    boards.some(({ rcds }) => rcds.length > 0) || circuits.some(({ residual }) => residual.devices.length > 0);
  const isNone =
    !isThere &&
    circuits.length > 0 &&
    circuits.every(
      ({ residual: { present, unseen } }) => unseen === undefined && isKnownFact(present) && !present.word,
    );
  if (isNone) return [];
  return [
    heading(TENANT.buttonTitle),
    paragraph(`${TENANT.buttonFirst} ${isThere ? TENANT.button : TENANT.buttonPerhaps}`),
  ];
}

function callWords({ installation: { nation } }: ReportInput): readonly string[] {
  return [TENANT.fire, TENANT.network(isKnownFact(nation) ? nation.word : undefined), TENANT.call];
}
