/**
 * Writes docs/glossary.md from the terms in code, so that the two cannot drift apart. With `--check` it only tells
 * whether the file is current.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { TERM, UNIT_SYMBOL } from "@good-grounds/core";
import { type Field, THING_KIND_IDS, THING_KINDS } from "@good-grounds/inspection";

const root = new URL("..", import.meta.url);
const folder = new URL("packages/core/src/terms/", root);

/** Where each identifier is defined, read from the sources. */
function definitions(): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  for (const name of readdirSync(folder)) {
    if (!name.endsWith(".ts") || name.endsWith(".test.ts")) continue;
    const text = readFileSync(new URL(name, folder), "utf8");
    for (const [, key] of text.matchAll(/^ {2}(\w+): term\(/gm)) places.set(key as string, `core/src/terms/${name}`);
  }
  return places;
}

const WORDS: readonly (readonly [string, string])[] = [
  ["observation", "one thing seen or measured during an inspection that is worth a line in the report"],
  ["classification", "C1, C2, C3, FI or none: how an observation bears on safety; chosen by the inspector"],
  ["condition report", "the report of a periodic inspection and test of an existing installation"],
  ["extent", "what the inspection covers, agreed before the work"],
  ["limitation", "a part or test left out, with the reason and the person it was agreed with"],
  ["grounds", "what a conclusion rests on: a tree whose leaves are seen, measured, published, assumed or not known"],
  ["band", "the interval in which a true value is taken to lie"],
  ["too near to call", "the band of a reading lies across the limit"],
  ["margin", "the part of a limit that is left: 0 at the limit, negative beyond it, 1 with nothing used"],
  ["agreement", "two accounts of the same quantity whose bands meet"],
  ["basis", "how well a figure is founded: published, derived, common practice or from memory"],
  ["edition", "the amendment state of BS 7671 that a report is made to"],
  ["outcome", "satisfactory or unsatisfactory, as it follows from the classifications under one edition"],
  ["origin", "where the distributor's supply enters the installation"],
  ["final circuit", "a circuit that supplies equipment or socket-outlets directly"],
  ["distribution circuit", "a circuit that feeds another board"],
  ["cpc", "circuit protective conductor"],
  ["PME", "protective multiple earthing, the usual form of TN-C-S"],
];

/** Words of this project for how it reasons, none of them the trade's. */
const HOUSE: readonly (readonly [string, string])[] = [
  ["topic", "one subject of observation: what to ask, how harm could come about, what stands in the way"],
  ["text", "a topic, or what topics share, as it is written: `packages/topics/text`, one file each"],
  ["shared", "defined once for all topics that name it: a fact, a state, a contested point, a danger"],
  ["fact", "a question with a few answers, or a quantity, from which a classification follows"],
  ["given", "a fact that the subject itself answers, so that it is not asked"],
  ["state", "what is so of a thing, worked out from facts in one place and never asked"],
  ["route", "a way from a hazard to a person"],
  ["layer", "what stands in the way on a route: gone, there until one event, or sound"],
  ["departure", "a way of falling short of the edition in force; alone an improvement"],
  ["danger", "a statement with a least classification that no other answer takes away"],
  ["contradiction", "statements that cannot all be true"],
  ["contested point", "a matter on which competent inspectors differ; its positions are never averaged"],
  ["standing view", "a position that a firm holds in all its inspections"],
  ["law", "what every topic has to keep, tried on all of them"],
  ["finding", "what one check says of one thing, as the root of its argument"],
  ["open point", "what stands open and decides: no outcome is satisfactory while there is one"],
  ["ledger", "all open points of an inspection in order, danger first; the outcome follows from it"],
  ["duty", "what the law asks of somebody because of an inspection; a reminder, never part of the outcome"],
  ["would apply", "said of a duty that rests on something not known: named with what would have to be so"],
  ["thing", "a part of the installation with properties and states, of which an observation speaks"],
  ["folder", "a firm's own topics and standing views, known by its hash"],
];

/** What a field holds, in a word or a few. */
function held({ kind, about, words }: Field): string {
  if (words !== undefined) return Object.values(words).join("; ");
  if ("unit" in about) return UNIT_SYMBOL[about.unit] || "a number";
  return kind === "yes-no" ? "yes or no" : "–";
}

export function glossary(): string {
  const places = definitions();
  const rows = Object.entries(TERM)
    .map(
      ([key, term]) =>
        `| ${term.name} | ${term.symbol || "–"} | ${UNIT_SYMBOL[term.unit] || "–"} | \`${key}\` | \`${places.get(key) ?? "?"}\` |`,
    )
    .sort((a, b) => (a < b ? -1 : 1));
  return [
    "# Glossary",
    "",
    "Written by `npm run glossary`; edit the sources, not this file. One concept has one word, and one word one concept.",
    "",
    "## Quantities",
    "",
    "| term | symbol | unit | identifier | defined in |",
    "|---|---|---|---|---|",
    ...rows,
    "",
    "## Things",
    "",
    "What may be recorded of each kind of thing in an inspection file, beside its id and where it is.",
    "",
    "| thing | property | as | member |",
    "|---|---|---|---|",
    ...THING_KIND_IDS.flatMap((kind) =>
      Object.entries(THING_KINDS[kind].fields).map(
        ([name, field]) => `| ${THING_KINDS[kind].noun} | ${field.about.name} | ${held(field)} | \`${kind}/${name}\` |`,
      ),
    ),
    "",
    "## Words",
    "",
    "| word | meaning here |",
    "|---|---|",
    ...WORDS.map(([word, meaning]) => `| ${word} | ${meaning} |`),
    "",
    "## Words of the house",
    "",
    "| word | meaning here |",
    "|---|---|",
    ...HOUSE.map(([word, meaning]) => `| ${word} | ${meaning} |`),
    "",
  ].join("\n");
}

const file = new URL("docs/glossary.md", root);
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = glossary();
  if (process.argv.includes("--check")) {
    const current = readFileSync(file, "utf8") === text;
    process.stdout.write(
      current ? "docs/glossary.md is current\n" : "docs/glossary.md is out of date: run npm run glossary\n",
    );
    process.exitCode = current ? 0 : 1;
  } else writeFileSync(file, text);
}
