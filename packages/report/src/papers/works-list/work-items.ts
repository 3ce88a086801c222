import type { Circuit, WholeInstallation } from "@good-grounds/inspection";
import { spokenOf } from "@good-grounds/inspection";
import type { Photograph } from "../../document/model.ts";
import type { ReportInput } from "../../input.ts";
import { WORDS } from "../../locales/en.ts";
import { CLASSIFICATION } from "../../locales/labels.ts";
import { OPEN } from "../../locales/outcome-en.ts";
import { WORKS } from "../../locales/works-list-en.ts";
import type { Cell } from "../../pdf/cell.ts";
import { capitalised, codeOf } from "../../pdf/sections/observation-order.ts";
import { type Group, type Numbered, numbered, type Observation } from "../../words/observation-number.ts";
import { severityWords } from "../../words/reasoning-lines.ts";
import { cableWords, deviceWords, readingsWords, residualWords } from "../circuit-words.ts";

/** A way to put something right, and what the facts then lead to. */
interface WayOut {
  readonly words: string;
  readonly leads: string;
}

/** Data of one circuit that a work is about. */
export interface CircuitOfWork {
  readonly name: string;
  readonly device: Cell;
  readonly rcd: Cell;
  readonly cable: Cell;
  /** Readings that were taken: what the tests after the work are held against; empty where none was. */
  readonly readings: string;
}

interface PhotographOfWork {
  readonly name: string;
  readonly description: string;
  readonly sha256: string;
  /** Its picture where it is at hand. */
  readonly image: Photograph | undefined;
}

/** One work: an observation as the person who puts it right needs it. */
export interface WorkItem {
  /** The number of the observation in the report. */
  readonly number: number;
  readonly group: Group;
  readonly code: string;
  readonly meaning: string;
  /** Name of the board; empty where it is at none. */
  readonly board: string;
  readonly place: string;
  /** Things it is about with how many of each; empty where nobody counted. */
  readonly quantities: readonly { readonly what: string; readonly quantity: number }[];
  readonly what: string;
  /** What was done before the inspector left; empty where nothing was. */
  readonly madeSafe: string;
  /** That the facts lead to more than was chosen; empty where they do not. */
  readonly below: string;
  /** As the inspector wrote it; empty where nothing was written. */
  readonly remedy: string;
  /** What the facts allow, cheapest first. */
  readonly ways: readonly WayOut[];
  readonly regulations: readonly string[];
  readonly circuits: readonly CircuitOfWork[];
  /** Titles of the checks that have to be met afterwards. */
  readonly checks: readonly string[];
  readonly photographs: readonly PhotographOfWork[];
}

/** Works at one board, or at none, worst first. */
export interface WorkPlace {
  readonly title: string;
  readonly location: string;
  readonly items: readonly WorkItem[];
}

/**
 * Everything to be put right or looked into, by board in the order of the file and worst first, then what is at no board.
 * What needs no work is left out.
 */
export function workPlaces(input: ReportInput): readonly WorkPlace[] {
  const { installation } = input;
  const { boards } = installation.file;
  const works = numbered(installation.file).filter(({ group }) => group !== "none");
  const at = (id: string | undefined) =>
    works.filter(({ observation: { board } }) => board === id).map((one) => workItem(one, input));
  const known = boards.map(({ id, name, location = "" }) => ({ title: name, location, items: at(id) }));
  return [...known, { title: WORKS.atNoBoard, location: "", items: at(undefined) }].filter(
    ({ items }) => items.length > 0,
  );
}

function workItem({ number, group, observation: one }: Numbered, input: ReportInput): WorkItem {
  const { installation, reasoned } = input;
  const ways = reasoned.find(({ observation }) => observation === one.id)?.remedies ?? [];
  return {
    number,
    group,
    code: codeOf(group),
    meaning: capitalised(meaningOf(group, one)),
    board: installation.file.boards.find(({ id }) => id === one.board)?.name ?? "",
    place: capitalised(one.place),
    quantities: quantitiesOf(one, installation),
    what: one.what,
    madeSafe: one.madeSafe?.done ?? "",
    below: input.outcome.below
      .filter(({ observation }) => observation === one.id)
      .map(({ follows, chosen, reason }) => OPEN.belowBeside(follows, chosen, reason))
      .join(" "),
    remedy: one.remedy ?? "",
    ways: ways.map(({ remedy, after }) => ({ words: remedy.words, leads: severityWords(after) })),
    regulations: one.regulations ?? [],
    circuits: circuitsOf(one, installation).map(circuitOfWork),
    checks: checksOf(one, input),
    photographs: (one.photographs ?? []).flatMap((hash) =>
      installation.file.photographs
        .filter(({ sha256 }) => sha256 === hash)
        .map(({ name, description, sha256 }) => ({ name, description, sha256, image: input.photographs?.get(sha256) })),
    ),
  };
}

/** What the classification means here: of danger that was made safe nobody is told that it is there now. */
function meaningOf(group: Group, { madeSafe }: Observation): string {
  if (group === "C1" && madeSafe !== undefined) return WORKS.foundAndSafe;
  return group === "open" ? WORKS.notClassified : CLASSIFICATION[group];
}

function quantitiesOf(one: Observation, installation: WholeInstallation): WorkItem["quantities"] {
  return spokenOf(one, installation).map((spoken) => ({ what: nameOf(spoken), quantity: spoken.quantity }));
}

function nameOf(spoken: ReturnType<typeof spokenOf>[number]): string {
  switch (spoken.kind) {
    case "thing":
      return spoken.thing.name ?? spoken.thing.id;
    case "bond":
      return WORDS.bond(spoken.bond.to ?? spoken.bond.id);
    case "rcd":
      return WORDS.rcd(spoken.rcd.id ?? "");
  }
}

/** The circuit of an observation, and those whose checks it answers, in the order of the file. */
function circuitsOf(
  { board, circuit, answers = [] }: Observation,
  installation: WholeInstallation,
): readonly Circuit[] {
  const named = [{ board, circuit }, ...answers.map((one) => ({ board: one.board ?? board, circuit: one.circuit }))];
  return installation.circuits.filter((one) => named.some((at) => at.circuit === one.id && at.board === one.board.id));
}

function circuitOfWork(circuit: Circuit): CircuitOfWork {
  return {
    name: WORKS.circuit(circuit.designation, circuit.description),
    device: deviceWords(circuit),
    rcd: residualWords(circuit),
    cable: cableWords(circuit),
    readings: readingsWords(circuit),
  };
}

/** What an observation answers, by the title of the check, each once. */
function checksOf({ answers = [] }: Observation, { checks }: ReportInput): readonly string[] {
  const titles = answers.map(({ check }) => checks.find(({ id }) => id === check)?.title ?? check);
  return [...new Set(titles)];
}
