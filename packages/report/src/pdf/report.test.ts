import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ITEM_GROUPS } from "@good-grounds/inspection";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf, nearlyNothing } from "../../../../outside/reports/example.ts";
import { needTool } from "../../../../outside/tools.ts";
import { writeReportPdf } from "./index.ts";
import { reportModel } from "./model.ts";

const hasTools = needTool("qpdf") && needTool("pdfinfo");

let folder = "";
let report = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-report-"));
  report = written("report.pdf", EXAMPLE);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function written(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, writeReportPdf(inputOf(text), { json: text }));
  return path;
}

const tool = (command: string, ...args: string[]) =>
  execFileSync(command, args, { encoding: "utf8", maxBuffer: 1e8, stdio: ["ignore", "pipe", "ignore"] });
const pagesOf = (path: string) => Number(/Pages:\s+(\d+)/.exec(tool("pdfinfo", path))?.[1]);
/** The words of a document on one line, without places where a long word may break. */
const wordsOf = (path: string, ...range: string[]) =>
  tool("pdftotext", ...range, "-layout", path, "-")
    .replaceAll("\u200b", "")
    .replaceAll(/\s+/g, " ");

/** Words of a document that reach beyond the edge of their page. */
function beyondThePage(path: string): string[] {
  const beyond: string[] = [];
  let [width, height] = [0, 0];
  for (const line of tool("pdftotext", "-bbox", path, "-").split("\n")) {
    const page = /<page width="([\d.]+)" height="([\d.]+)"/.exec(line);
    if (page !== null) [width, height] = [Number(page[1]), Number(page[2])];
    const word = /xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)</.exec(line);
    if (word === null) continue;
    const [xMin = 0, yMin = 0, xMax = 0, yMax = 0] = word.slice(1, 5).map(Number);
    if (xMin < 0 || yMin < 0 || xMax > width || yMax > height) beyond.push(word[5] ?? "");
  }
  return beyond;
}

describe("the printed report", () => {
  test("is byte for byte the same for the same input", () => {
    expect(Buffer.from(writeReportPdf(inputOf(EXAMPLE), { json: EXAMPLE })).equals(readFileSync(report))).toBe(true);
  });

  test.skipIf(!hasTools)("says DRAFT on every page of a draft, and on no other", () => {
    const draft = join(folder, "draft.pdf");
    writeFileSync(draft, writeReportPdf({ ...inputOf(EXAMPLE), draft: true }, { json: EXAMPLE }));
    expect(pagesOf(draft)).toBe(pagesOf(report));
    for (let page = 1; page <= pagesOf(draft); page++)
      expect(wordsOf(draft, "-f", String(page), "-l", String(page))).toContain("DRAFT: not issued");
    expect(wordsOf(report)).not.toContain("DRAFT");
  });

  test("rests on one version each of the typesetter and the print face, since their bytes are in it", () => {
    const { dependencies } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
    const outside = Object.entries(dependencies).filter(([name]) => !name.startsWith("@good-grounds/"));
    // The third packs workbooks and is in no page.
    expect(outside.length).toBe(3);
    for (const [name, version] of outside) expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
  });

  test("bears the day of the last signature", () => {
    expect(readFileSync(report, "latin1")).toContain("<xmp:CreateDate>2026-10-07");
  });

  test.skipIf(!hasTools)("is a sound PDF file", () => {
    expect(tool("qpdf", "--check", report)).toContain("No syntax or stream encoding errors found");
  });

  test.skipIf(!hasTools)(
    "says that it is PDF/A-3a, is tagged, in British English, with output intent and title",
    () => {
      const meta = tool("pdfinfo", "-meta", report);
      expect(meta).toMatch(/pdfaid:part>3</);
      expect(meta).toMatch(/pdfaid:conformance>A</i);
      const info = tool("pdfinfo", report);
      expect(info).toMatch(/Title:\s+Electrical condition report, 12 Example Terrace/);
      expect(info).toMatch(/Tagged:\s+yes/);
      const plain = tool("qpdf", "--qdf", "--object-streams=disable", report, "-");
      expect(plain).toContain("/OutputIntents");
      expect(plain).toMatch(/\/Lang \(en-GB\)/i);
    },
  );

  test.skipIf(!hasTools)("skips no level of headings", () => {
    const structure = tool("pdfinfo", "-struct", report);
    const levels = [...structure.matchAll(/^\s*H(\d)\b/gm)].map(([, level]) => Number(level));
    expect(levels.length).toBeGreaterThan(30);
    expect(levels.filter((level, i) => level > (levels[i - 1] ?? 0) + 1)).toEqual([]);
  });

  test.skipIf(!hasTools)("has table headers and figures in the structure", () => {
    const structure = tool("pdfinfo", "-struct", report);
    expect(structure).toMatch(/^\s*TH\b/m);
    expect(structure).toMatch(/^\s*Figure\b/m);
  });

  test.skipIf(!hasTools)("carries the inspection file unchanged and the whole working beside it", () => {
    tool("pdfdetach", "-saveall", "-o", folder, report);
    expect(readFileSync(join(folder, "inspection.json"), "utf8")).toBe(EXAMPLE);
    const workings = readFileSync(join(folder, "workings.html"), "utf8");
    for (const { title } of inputOf(EXAMPLE).checks.filter(({ id }) => id === "maximum-zs" || id === "polarity")) {
      expect(workings).toContain(title);
    }
    const plain = tool("qpdf", "--qdf", "--object-streams=disable", report, "-");
    expect(plain).toContain("/AFRelationship /Source");
  });

  test.skipIf(!hasTools)("embeds every font and uses no other face than its own", () => {
    const rows = tool("pdffonts", report).trim().split("\n").slice(2);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+SourceSans3-\S+\s.*\s(yes)\s+(yes)\s+(yes)\s+\d+\s+0$/);
  });

  test.skipIf(!hasTools)("shows on its first page what a landlord needs", () => {
    const first = wordsOf(report, "-l", "1");
    for (const words of [
      "Inspected 6 October 2026",
      "BS 7671:2018+A4:2026",
      "As the inspector states it",
      "As it follows from what is recorded",
      "Unsatisfactory",
      "INVENTED EXAMPLE",
      "C1 – danger now",
      "Done about it on 6 October 2026",
      "To do: Fit a new socket.",
      "FI – could not be settled",
      "What was not seen",
      "Accessories opened: 10 of 46",
      "By 5 October 2031. Let house in fair condition",
      "J. Sample (invented)",
      "You may question anything here",
      `GG-2026-0417, ${pagesOf(report)} pages`,
      "1 point stands open",
    ]) {
      expect(first).toContain(words);
    }
  });

  test.skipIf(!hasTools)("has its id and its page number on every page", () => {
    const pages = pagesOf(report);
    for (let page = 1; page <= pages; page++) {
      const words = wordsOf(report, "-f", String(page), "-l", String(page));
      expect(words).toContain("Report GG-2026-0417, 7 October 2026");
      expect(words).toContain(`page ${page} of ${pages}`);
    }
  });

  test.skipIf(!hasTools)("keeps every word on its page", () => {
    expect(beyondThePage(report)).toEqual([]);
  });
});

describe("pages", () => {
  /** Words of each page besides its header and footer. */
  const wordsOfPages = (path: string) =>
    Array.from({ length: pagesOf(path) }, (_, i) => wordsOf(path, "-f", String(i + 1), "-l", String(i + 1)).length);

  test.skipIf(!hasTools)("the first is one page with 60 observations and every text as long as it may be", () => {
    const long = "Words that go on and on without coming to an end. ".repeat(80).slice(0, 3900).trim();
    const text = changed((file) => {
      const [first] = file.observations;
      file.observations.push(
        ...Array.from({ length: 60 }, (_, i) => ({ ...first, id: `more-${i}`, what: long, remedy: long })),
      );
      Object.assign(file.conclusion as object, { generalCondition: long });
      const [one] = file.limitations as object[];
      (file.limitations as object[]).push(
        ...Array.from({ length: 20 }, (_, i) => ({ ...one, id: `l-${i}`, why: long })),
      );
    });
    const path = written("sixty.pdf", text);
    expect(wordsOf(path, "-l", "1")).toContain("In this report, by page:");
    expect(wordsOf(path, "-l", "1")).toMatch(/And \d+ more, observations \d+ to \d+/);
    expect(wordsOf(path, "-f", "2", "-l", "2")).toMatch(/What stands open|Extent, sampling and limitations/);
    for (const length of wordsOfPages(path)) expect(length).toBeGreaterThan(200);
  });

  test.skipIf(!hasTools)("the first stands alone where all of it fits", () => {
    expect(wordsOf(report, "-l", "1")).not.toContain("Each observation has the classification");
    expect(wordsOf(report, "-f", "2", "-l", "2")).toContain("Extent, sampling and limitations");
  });
});

describe("what must not look better than it is", () => {
  test.skipIf(!hasTools)(
    "a signature with a hash of nothing but zeros is none, on the first page and at the end",
    () => {
      const text = changed((file) => {
        file.signatures = (file.signatures as object[]).map((one) => ({ ...one, content: "0".repeat(64) }));
      });
      const path = written("zeros.pdf", text);
      const words = wordsOf(path);
      expect([...words.matchAll(/does not count as signed for this content/g)].length).toBeGreaterThanOrEqual(4);
      expect(wordsOf(path, "-l", "1")).toContain("Not signed yet: a draft until it is");
      expect(words).toContain("Nobody has signed this content");
      expect(words).not.toContain("content 0000");
    },
  );

  test.skipIf(!hasTools)(
    "a C3 where C1 follows is told on the first page, near the outcome and at its observation",
    () => {
      const text = changed(({ observations }) => {
        const o6 = observations.find(({ id }) => id === "o6") as { choice: object };
        o6.choice = { ...o6.choice, classification: "C3", reason: "The room is locked." };
      });
      const first = wordsOf(written("below.pdf", text), "-l", "1");
      expect(first).toContain("by the facts stated C1 follows; classified C3.");
      expect(first).toContain("By the facts stated C1 follows; classified C3: reason: The room is locked.");
    },
  );

  test.skipIf(!hasTools)("“satisfactory” by the inspector stands beside “not determined”, with what is open", () => {
    const text = changed((file) => {
      nearlyNothing(file);
      file.conclusion = { outcome: "satisfactory" };
    });
    const first = wordsOf(written("stated.pdf", text), "-l", "1");
    for (const said of ["Satisfactory", "Not determined yet", "The two differ.", "No test of any circuit is recorded."])
      expect(first).toContain(said);
  });
});

describe("the opening that an observation's figures describe", () => {
  const file = (figures: Record<string, string>) =>
    changed(({ observations }) => {
      Object.assign(observations[0] as object, {
        topic: "board-blank-missing",
        facts: { access: "anyone", ...figures },
        positions: {},
      });
    });
  const OPENING = {
    shape: "rectangular",
    width: "17.5 mm",
    height: "45 mm",
    offset: "0 mm",
    "barrier-behind": "none",
    face: "front",
  };
  const drawingsOf = (text: string) =>
    reportModel(inputOf(text)).drawings.filter(({ svg }) => svg.includes("jointed finger"));

  test("is drawn beside the argument, with what it shows", () => {
    const [reached, ...others] = drawingsOf(file({ ...OPENING, depth: "25 mm" }));
    expect(others).toEqual([]);
    expect(reached?.svg).toContain("depth 25 mm");
    expect(reached?.svg).toContain("touches the live part");
    expect(drawingsOf(file({ ...OPENING, depth: "120 mm" }))[0]?.svg).toContain("stays clear");
  });

  test("says so where more has to be known", () => {
    const [drawn] = drawingsOf(
      file({ shape: "rectangular", width: "17.5 mm", height: "45 mm", offset: "0 mm", depth: "25 mm" }),
    );
    expect(drawn?.svg).toContain("Not settled");
  });

  test("is not drawn where its figures are not complete, or none are given", () => {
    expect(drawingsOf(file({ shape: "rectangular", width: "17.5 mm" }))).toEqual([]);
    expect(drawingsOf(file({ gap: "in-line" }))).toEqual([]);
  });

  test.each(["0 mm", "1 mm", "12 mm", "60 mm", "900 mm"])("a width of %s is drawn without harm", (width) => {
    for (const depth of ["0 mm", "3 m"])
      for (const offset of ["0 mm", "70 mm", "2 m"]) {
        const drawn = drawingsOf(file({ ...OPENING, width, depth, offset }));
        expect(drawn.length).toBeLessThanOrEqual(1);
        for (const { svg } of drawn) expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      }
  });

  test.skipIf(!hasTools)("stands in the printed report and leaves its words on the page", () => {
    const path = written("opening.pdf", file({ ...OPENING, depth: "25 mm" }));
    expect(wordsOf(path)).toContain("touches the live part");
    expect(tool("pdfinfo", "-struct-text", path)).toContain("Section through the opening to scale");
    const plain = tool("qpdf", "--qdf", "--object-streams=disable", path, "-");
    expect(plain).toContain("/Alt (jointed finger; opening 17.5 mm; live part 25 mm deep");
    expect(beyondThePage(path)).toEqual([]);
  });
});

describe("the layers between live metal and a person", () => {
  /** One observation is reasoned about alone, so that no other has layers to draw. */
  const file = (facts: Record<string, string>, topic = "basic-protection") =>
    changed(({ observations: [first, ...others] }) => {
      for (const other of others) {
        delete other.topic;
        delete other.facts;
        delete other.positions;
      }
      Object.assign(first as object, { topic, facts, positions: {} });
    });
  const layersOf = (text: string) =>
    reportModel(inputOf(text)).drawings.filter(({ svg }) => svg.includes("Layers between live metal and a person"));

  test("are drawn beside the argument", () => {
    const [drawn, ...others] = layersOf(file({ "live-covering": "bare", "gets-in": "hand" }));
    expect(others).toEqual([]);
    expect(drawn?.svg).toContain("1 the covering of the live part: gone");
    expect(drawn?.svg).toContain("Not known");
    const door = {
      "cover-opens": "hand",
      "cover-fixing": "whole",
      "hinges-carry": "yes",
      "barrier-behind": "no",
      "gets-in": "nothing",
    };
    const tails = {
      "live-covering": "basic-sound",
      wears: "moved",
      "who-comes": "named-keeper",
      "allowed-opening": "no",
    };
    const [whole] = layersOf(file({ ...door, ...tails, "arms-reach": "within", obstacle: "none" }));
    expect(whole?.svg).toContain("gets past what is around it");
    expect(whole?.svg).not.toContain("…");
  });

  test("are not drawn for a topic that does not ask what they rest on", () => {
    expect(layersOf(file({}, "circuit-chart-missing"))).toEqual([]);
  });

  test.skipIf(!hasTools)("stand in the printed report", () => {
    const path = written("layers.pdf", file({ "live-covering": "double-or-reinforced" }));
    expect(wordsOf(path)).toContain("1 the covering of the live part: holds");
    expect(tool("pdfinfo", "-struct-text", path)).toContain("Layers between the live part");
    expect(beyondThePage(path)).toEqual([]);
  });
});

describe("hostile and empty input", () => {
  test.skipIf(!hasTools)("text that looks like markup stays text", () => {
    const nasty =
      '#import "x": * $sum$ [*bold*] _it_ `raw` @ref <label> \\ // /* */ "quoted" #{panic()} = & 🙂 שלום \u202egnp';
    const text = changed(({ observations: [first], ...file }) => {
      Object.assign(first as object, { what: nasty, place: nasty, remedy: nasty });
      Object.assign((file.boards as object[])[0] as object, { name: nasty });
      Object.assign((file.people as object[])[0] as object, { name: nasty });
    });
    const path = written("hostile.pdf", text);
    const words = wordsOf(path);
    expect(words).toContain('#import "x": * $sum$ [*bold*] _it_ `raw` @ref <label>');
    expect(words).toContain("#{panic()}");
    expect(words).toContain("[U+1F642]");
    expect(words).toContain("[U+202E]gnp");
    expect(tool("pdffonts", path)).not.toMatch(/DejaVu|Libertinus/);
    tool("pdfdetach", "-save", "1", "-o", join(folder, "hostile.json"), path);
    expect(readFileSync(join(folder, "hostile.json"), "utf8")).toBe(text);
  });

  test.skipIf(!hasTools)("an inspection of which next to nothing is known says so everywhere", () => {
    const path = written("nothing.pdf", changed(nearlyNothing));
    const words = wordsOf(path);
    const items = ITEM_GROUPS.reduce((sum, group) => sum + group.items.length, 0);
    expect([...words.matchAll(/NOT ANSWERED/g)].length).toBe(items);
    for (const said of [
      "Not determined yet",
      "No circuits are recorded on this board.",
      "No instruments are recorded.",
      "No observations were recorded.",
      "Not signed yet",
    ]) {
      expect(words).toContain(said);
    }
    expect(words).toMatch(/calculations arise here: 0 not met, 0 too near to call, \d+ not known, 0 met/);
  });

  test.skipIf(!hasTools)("has its headings in the structure in the order of the pages, however little is known", () => {
    const structure = tool("pdfinfo", "-struct-text", written("headings.pdf", changed(nearlyNothing)));
    const places = [
      "12 Example Terrace",
      "What was found and what to do",
      "What was not seen",
      "Next inspection",
      "Extent, sampling and limitations",
      "Observations and their reasons",
      "Supply, earthing and bonding",
      "What the calculations say, worst first",
      "Circuits and readings",
      "The installation from the origin outwards",
      "What was inspected",
      "How the work was made safe",
      "Instruments",
      "For whoever receives this report",
      "Declaration and signatures",
    ].map((heading) => new RegExp(`\\bH\\d[^\\n]*\\n\\s+"${heading}`).exec(structure)?.index ?? -1);
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  test.skipIf(!hasTools)("very long words and paragraphs are laid out whole and stay on their pages", () => {
    const text = changed((file) => {
      const [first, second] = file.observations;
      Object.assign(first as object, { what: "Ж".repeat(4000), place: "Щ".repeat(300), remedy: "word ".repeat(799) });
      Object.assign(second as object, { what: "one\n\ntwo\tthree" });
      (file.brief as { premises: { address: string[] } }).premises.address = Array.from({ length: 6 }, () =>
        "Ю".repeat(300),
      );
      Object.assign((file.boards as object[])[0] as object, { name: "Ы".repeat(300) });
    });
    const path = written("long.pdf", text);
    const words = wordsOf(path).replaceAll(" ", "");
    // Once in full among the observations, once cut on the first page.
    expect([...words.matchAll(/Ж/g)].length).toBeGreaterThan(4000);
    expect(beyondThePage(path)).toEqual([]);
    expect(wordsOf(path)).toContain("one two three");
  });

  test("lists without an end in sight are laid out", () => {
    const text = changed((file) => {
      const [first] = file.observations;
      file.observations.push(...Array.from({ length: 200 }, (_, i) => ({ ...first, id: `more-${i}` })));
    });
    expect(writeReportPdf(inputOf(text), { json: text }).length).toBeGreaterThan(500_000);
  });
});
