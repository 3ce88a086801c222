import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { namesKnown, reasonObservations, weigh } from "@good-grounds/judgement";
import { compiledTopic, OWN_TOPICS, topicById } from "@good-grounds/topics";
import {
  drawing,
  lawBreaks,
  lawsBrokenIn,
  namesUnknown,
  severityAt,
  unusedShared,
  warningsOf,
} from "@good-grounds/topics/laws";
import {
  changesOf,
  type Folder,
  hashOf,
  ownTexts,
  readFolder,
  readLibrary,
  type Text,
} from "@good-grounds/topics/texts";
import { describe, expect, test } from "vitest";
import { A_FIRM, withText } from "./folder-texts.ts";

const OURS = ownTexts();
const LIBRARY = readLibrary(OURS);

/** One of our topics that asks something that no other asks, and that fact. */
const ASKING = ((): { readonly topic: string; readonly fact: string } => {
  for (const { kind, id, statements } of LIBRARY.documents)
    for (const one of kind === "topic" ? statements : [])
      if (one.kind === "fact") return { topic: id.text, fact: one.name.text };
  throw new Error("no topic asks anything of its own");
})();

function folderOf(texts: readonly Text[]): Folder {
  const { folder, faults } = readFolder(texts, OURS);
  expect(faults).toEqual([]);
  if (folder === undefined) throw new Error("not read");
  return folder;
}

describe("a firm's folder", () => {
  test("brings topics, adds to ours, and leaves the others as they are", () => {
    const { topics, own } = folderOf(A_FIRM);
    expect(topics.byId("socket-behind-stove")?.title).toBe("Socket-outlet behind a stove");
    expect(topics.all).toHaveLength(OWN_TOPICS.all.length + 1);
    expect(own.map(({ topic }) => topic.id)).toEqual(["board-blank-missing", "socket-behind-stove"]);
    expect(Object.keys(topics.byId("board-blank-missing")?.facts ?? {})).toContain("steam");
    expect(topics.byId("board-top-opening")).toEqual(topicById("board-top-opening"));
    expect(topics.find("stove").map(({ id }) => id)).toContain("socket-behind-stove");
    expect(OWN_TOPICS.byId("socket-behind-stove")).toBeUndefined();
  });

  test("keeps the laws", () => {
    expect(lawsBrokenIn(folderOf(A_FIRM))).toEqual([]);
  });

  test("what is added never lowers a class", () => {
    const { topics } = folderOf(A_FIRM);
    const [was, is] = [topicById("board-blank-missing"), topics.byId("board-blank-missing")].map((topic) => {
      if (topic === undefined) throw new Error("no topic");
      return compiledTopic(topic);
    });
    if (was === undefined || is === undefined) throw new Error("not compiled");
    const draw = drawing(7671);
    for (let i = 0; i < 500; i++) {
      const values = is.variables.map(({ cells }) => draw(cells.values.length));
      const same = was.variables.map(({ kind, name }) => values[is.index.get(`${kind} ${name}`) ?? -1] ?? 0);
      const rank = ["none", "C3", "C2", "C1"];
      expect(rank.indexOf(severityAt(is, values))).toBeGreaterThanOrEqual(rank.indexOf(severityAt(was, same)));
    }
  });

  test("is known by a hash over names and bytes, whatever the order they are read in", () => {
    const sorted = [...A_FIRM].sort((a, b) => (a.file < b.file ? -1 : 1));
    const bytes = sorted.flatMap(({ file, text }) =>
      [file, text].map((one) => Buffer.concat([Buffer.from(`${Buffer.byteLength(one)}:`), Buffer.from(one)])),
    );
    const expected = createHash("sha256").update(Buffer.concat(bytes)).digest("hex");
    expect(hashOf(A_FIRM)).toBe(expected);
    expect(hashOf([...A_FIRM].reverse())).toBe(expected);
    expect(folderOf(A_FIRM).topics.folder?.hash).toBe(expected);
    expect(hashOf(withText("views.topics", (text) => `${text}\n`))).not.toBe(expected);
  });

  test("says what it changes, with an example of each other class", () => {
    const changes = changesOf(folderOf(A_FIRM));
    const of = (wanted: string) => changes.filter(({ kind }) => kind === wanted).map(({ topic }) => topic);
    expect(of("more")).toEqual(["board-blank-missing"]);
    expect(of("new")).toEqual(["socket-behind-stove"]);
    const held = OWN_TOPICS.all.filter(({ id, contested }) => id !== "board-blank-missing" && "many-keys" in contested);
    expect(held.length).toBeGreaterThan(1);
    expect(of("views")).toEqual(held.map(({ id }) => id));
    const blank = changes.find(({ kind }) => kind === "more");
    expect(blank?.words).toContain("facts: steam");
    expect(blank?.classes.map(({ from, to }) => `${from} ${to}`)).toContain("C2 C1");
    for (const { example } of blank?.classes ?? [])
      expect(example.join("\n")).toMatch(/^example .*\n {2}.*\n {2}taking .*\n {2}-> C\d \(/);
  });
});

describe("nothing of a folder is used where anything is wrong with it", () => {
  const NEW = "topics/new.topic";
  test.each<[string, readonly Text[], string, number, string]>([
    ["no folder.topics", withText("folder.topics", () => undefined), "folder.topics", 1, "no folder"],
    [
      "another notation",
      withText("folder.topics", (t) => t.replace("notation 1", "notation 2")),
      "folder.topics",
      2,
      "notation 2",
    ],
    ["no release", withText("folder.topics", (t) => t.replace(/.*release.*\n/, "")), "folder.topics", 1, "no release"],
    [
      "nobody answers",
      withText("folder.topics", (t) => t.replace(/.*answered.*\n/, "")),
      "folder.topics",
      1,
      "nobody answers",
    ],
    [
      "a view of no topic",
      withText("views.topics", (t) => t.replace("board-blank-missing", "board-blank-mising")),
      "views.topics",
      1,
      "no topic is called",
    ],
    [
      "a view on no point",
      withText("views.topics", (t) => t.replace("many-keys", "many-kyes")),
      "views.topics",
      5,
      "no contested point",
    ],
    [
      "a view that is no position",
      withText("views.topics", (t) => t.replace(": counts", ": coutns")),
      "views.topics",
      5,
      "no position",
    ],
    ["two views on a point", withText("views.topics", (t) => t + t), "views.topics", 9, "a second view"],
    [
      "a day there is not",
      withText("views.topics", (t) => t.replace("2026-01-31", "2026-02-30")),
      "views.topics",
      2,
      '"2026-02-30"',
    ],
    [
      "a view without its ground",
      withText("views.topics", (t) => t.replace(/ +because keys.*\n/, "")),
      "views.topics",
      1,
      "without its ground",
    ],
    ["more of no topic", withText(NEW, () => "more board-blank-mising\n  uses heat\n"), NEW, 1, "no topic is called"],
    [
      "an id that is taken",
      withText(NEW, () => "topic board-blank-missing: Another\n  in boards\n"),
      NEW,
      1,
      "is the id of a topic there already",
    ],
    [
      "a statement that takes away",
      withText(NEW, () => "more heat-marks\n  given heat none\n"),
      NEW,
      2,
      '"given" begins nothing',
    ],
    ["a shared text among the topics", withText(NEW, () => "shared mine: Mine\n"), NEW, 1, "a shared text"],
    [
      "a text in no place",
      withText("more.topic", () => "topic mine: Mine\n  in boards\n"),
      "more.topic",
      1,
      "not read here",
    ],
    [
      "a shared name there already",
      withText("shared/kitchen.topic", (t) => t.replace("fact steam", "fact heat")),
      "shared/kitchen.topic",
      4,
      "is the name of something in shared/heat.topic",
    ],
    [
      "a misspelt name in what is added",
      withText("topics/board-blank-missing-more.topic", (t) => t.replace("when steam", "when steem")),
      "topics/board-blank-missing-more.topic",
      5,
      'nothing here is called "steem"',
    ],
    [
      "a name of the topic again in what is added",
      withText(
        NEW,
        () => `more ${ASKING.topic}\n  fact ${ASKING.fact}: Is it so?\n    found by glance\n    no: no\n    yes: yes\n`,
      ),
      NEW,
      2,
      `"${ASKING.fact}" a second time`,
    ],
  ])("%s", (_, texts, file, line, found) => {
    const made = readFolder(texts, OURS);
    expect(made.folder).toBeUndefined();
    const told = made.faults.find((one) => one.file === file && one.at.line === line);
    expect(told?.found, JSON.stringify(made.faults)).toContain(found);
  });
});

describe("a law that is broken", () => {
  const STOVE = "topics/socket-behind-stove.topic";
  const broken = (change: (text: string) => string) => {
    const { own, shared } = folderOf(withText(STOVE, change));
    const { topic, document } = own.find((one) => one.topic.id === "socket-behind-stove") ?? {};
    if (topic === undefined || document === undefined) throw new Error("not read");
    return lawBreaks(topic, document, shared);
  };

  test.each<[string, (text: string) => string, string]>([
    ["examples", (t) => t.replace("-> C1 (judged)", "-> C2 (judged)"), "C1 is possible"],
    ["monotone", (t) => t.replaceAll("gone when reached is harmed", "gone when reached is warm"), "which is worse"],
    [
      "matters",
      (t) => t.replace("  departure: the socket cannot be used to switch off [512.2.1]\n    when not pulled\n", ""),
      '"pulled" never changes',
    ],
    ["remedies", (t) => t.replace("makes reached away, pulled yes", "makes pulled no"), "raises"],
    ["remedies", (t) => t.replace(/ {2}remedy:.*\n.*\n/, ""), "no remedy"],
    [
      "remedies",
      (t) => t.replace("    makes reached away", "    fits when reached is away and pulled\n    makes reached away"),
      "lowers nothing where it fits",
    ],
    ["sentences", (t) => t.replace(/ {2}said C1.*\n/, ""), "nothing is said under C1"],
    [
      "sentences",
      (t) =>
        t.replace(
          "It could catch fire.",
          "Deterioration necessitates immediate disconnection notwithstanding inconvenience.",
        ),
      "reading grade",
    ],
    ["sources", (t) => t.replace("[421.1.1]", "[by heart]"), '"by heart"'],
    ["sources", (t) => t.replace(/ {2}example hidden[\s\S]*/, ""), "examples: 2"],
    [
      "compiles",
      (t) => t.replace("  said C1", "  contradiction: never\n    when always\n\n  said C1"),
      "leave nothing",
    ],
  ])("%s: told with what was found", (law, change, found) => {
    const breaks = broken(change);
    expect(breaks.map((one) => one.law)).toContain(law);
    expect(breaks.find((one) => one.law === law)?.found).toContain(found);
  });

  test("a remedy is held to the law where it fits, and nowhere else", () => {
    const makes = (text: string, fits: string) =>
      text.replace("makes reached away, pulled yes", `makes reached away, pulled no${fits}`);
    const laws = (fits: string) => broken((text) => makes(text, fits)).map(({ law, found }) => [law, found]);
    expect(laws("")).toEqual([["remedies", expect.stringContaining("raises none to C3")]]);
    expect(laws("\n    fits when not pulled")).toEqual([]);
  });

  test("a failing example prints its argument in short, each line with its place", () => {
    const [one] = broken((text) => text.replace("-> C1 (judged)", "-> C2 (judged)"));
    expect(one?.at?.line).toBe(42);
    expect(one?.decided).toContain(`${STOVE}:17  route burns: material gone, distance gone → C1`);
  });

  test("the example that is printed shows the fault again where it is pasted", () => {
    const worse = (text: string) => text.replaceAll("gone when reached is harmed", "gone when reached is warm");
    const first = broken(worse).find(({ law }) => law === "monotone");
    const pasted = (first?.example ?? []).map((line) => `  ${line}`).join("\n");
    expect(pasted).toContain("-> C1 (law)");
    const again = broken((text) => `${worse(text)}${pasted}\n`);
    expect(again.map(({ law, found }) => `${law} ${found}`).join("\n")).toContain(
      `examples the example "${first?.example?.[0]?.slice(8)}"`,
    );
  });
});

describe("positions", () => {
  const file = (views: readonly object[]) => {
    const house = JSON.parse(readFileSync(new URL("../../examples/terraced-house.json", import.meta.url), "utf8"));
    const [first] = house.observations;
    Object.assign(first, {
      topic: "board-blank-missing",
      facts: { "gets-in": "finger", "cover-fixing": "hole", "who-comes": "skilled-only" },
      positions: {},
    });
    delete first.choice;
    house.standingViews = views;
    const parsed = parseInspection(JSON.stringify(house));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    const installation = resolveInstallation(parsed.file);
    return (topics = OWN_TOPICS) =>
      reasonObservations(installation, weigh(installation), topics)[0]?.reasoning.taken.get("locked-board");
  };

  test("the more usual, before it the folder's, before it the file's", () => {
    const { topics } = folderOf(A_FIRM);
    expect(file([])()).toBe("counts");
    expect(file([])(topics)).toBe("does-not-count");
    const held = {
      topic: "board-blank-missing",
      point: "locked-board",
      position: "counts",
      reason: "the client keeps the key",
    };
    expect(file([held])(topics)).toBe("counts");
  });
});

describe("what a text names of other parts of the program", () => {
  const known = namesKnown();

  test("is there, in all our texts", () => {
    expect(LIBRARY.documents.flatMap((document) => namesUnknown(document, known))).toEqual([]);
  });

  test("is told at its line where it is not", () => {
    const change = (from: string, to: string) => {
      const { documents } = readLibrary(OURS.map((one) => ({ ...one, text: one.text.replace(from, to) })));
      return documents
        .flatMap((document) => namesUnknown(document, known))
        .map(({ found, advice }) => `${found}, ${advice}`);
    };
    expect(change("answers boards.enclosure\n", "answers boards.enclosur\n")).toContain(
      'no item of the inspection is called "boards.enclosur", is it "boards.enclosure"?',
    );
    expect(change("answered by opening-access:", "answered by opening-acess:")).toContain(
      'no check is called "opening-acess", is it "opening-access"?',
    );
    expect(change("recorded as earthing-system", "recorded as earthing-sytem")).toContain(
      'no property of the file is called "earthing-sytem", is it "earthing-system"?',
    );
  });
});

describe("warnings", () => {
  test("of our own texts become fewer, never more", () => {
    const count = [...OWN_TOPICS.all.flatMap(warningsOf), ...unusedShared(LIBRARY.documents)];
    const of = (kind: string) => count.filter((one) => one.kind === kind).length;
    expect(of("fact-idle") + of("positions-alike") + of("remedy-idle")).toBe(0);
    expect(of("shared-unused")).toBe(0);
  });

  test.each<[string, (text: string) => string, string]>([
    ["a fact", (t) => t.replace("when not pulled", "when reached is harmed"), '"pulled" changes nothing'],
    ["a remedy", (t) => t.replace("makes reached away, pulled yes", "makes pulled no"), "lowers no class"],
  ])("%s that does nothing", (_, change, words) => {
    const { topics } = folderOf(withText("topics/socket-behind-stove.topic", change));
    const topic = topics.byId("socket-behind-stove");
    expect(
      topic === undefined
        ? []
        : warningsOf(topic)
            .map((one) => one.words)
            .join("\n"),
    ).toContain(words);
  });
});
