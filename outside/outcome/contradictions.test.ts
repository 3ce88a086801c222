import { readFileSync } from "node:fs";
import { CONTRADICTIONS, type ContradictionId, type OpenPoint } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { randomInstallation, writtenFile } from "../diagnosis/random-installation.ts";
import { complete, outcomeOfData } from "./complete.ts";

// A file as plain data that each case changes as somebody would write it.
type Loose = { [name: string]: Loose } & Loose[] & { id?: string };

const SOUND = complete(writtenFile(randomInstallation(4001, new Chance(4001))));

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8"));

/** Kinds of contradiction among points and what stands with them. */
function kindsOf(points: readonly OpenPoint[]): readonly ContradictionId[] {
  return points.flatMap((point) => [
    ...(point.kind === "contradiction" ? [point.about] : []),
    ...kindsOf(point.follow ?? []),
  ]);
}

function found(edit: (file: Loose) => void): readonly ContradictionId[] {
  const data = structuredClone(SOUND) as unknown as Loose;
  edit(data);
  return kindsOf(outcomeOfData(JSON.parse(JSON.stringify(data))).points);
}

const tick = (file: Loose, item: string, outcome: string, more: object = {}) =>
  Object.assign((file.inspected as Loose[]).find((one) => (one.item as unknown) === item) as object, {
    outcome,
    ...more,
  });
const observe = (file: Loose, more: object) =>
  Object.assign(file, {
    observations: [
      {
        id: "o1",
        board: file.boards?.[0]?.id,
        place: "hall",
        what: "Seen.",
        choice: { classification: "C3", reason: "Of no consequence where it is, and marked.", by: "inspector" },
        ...more,
      },
    ],
  });
const named = (file: Loose) => tick(file, "boards.enclosure", "observed", { observations: ["o1"] });
const C1 = { choice: { classification: "C1", reason: "Live metal in reach.", by: "inspector" } };
const madeSafe = { done: "Covered and locked.", told: "the owner", at: "2026-10-06T11:00:00+01:00" };
const surge =
  (...fitted: readonly boolean[]) =>
  (file: Loose) =>
    Object.assign(file, {
      things: { surgeDevices: fitted.map((one, i) => ({ id: `s${i}`, board: file.boards?.[0]?.id, fitted: one })) },
    });
const rcd = (file: Loose, more: object) => Object.assign(file.boards?.[0]?.rcds?.[0] as object, more);
const limitation = (what: string) => (file: Loose) =>
  Object.assign(file, {
    limitations: [{ id: "l1", kind: "agreed", what, why: "Asked for by the client.", agreedWith: "the client" }],
  });
const stated = (outcome: string) => (file: Loose) => Object.assign(file, { conclusion: { outcome } });

/** A contradiction as it comes about on a job, and what is close by and none. */
const CASES: Readonly<
  Record<
    ContradictionId,
    { readonly is: Record<string, (file: Loose) => void>; readonly not: Record<string, (file: Loose) => void> }
  >
> = {
  "stated-against-file": {
    is: {
      "no RCD is stated where the file has one": (file) => {
        const board = file.boards?.[0] as Loose;
        observe(file, {
          circuit: board.circuits?.[0]?.id,
          topic: "sockets-no-rcd",
          facts: { "rcd-30ma": false },
          choice: undefined,
        });
      },
    },
    not: {
      "as the file has it": (file) => {
        const board = file.boards?.[0] as Loose;
        observe(file, { circuit: board.circuits?.[0]?.id, topic: "sockets-no-rcd", facts: { "rcd-30ma": true } });
      },
    },
  },
  "danger-unnamed": {
    is: { "C1 on a board whose items are all in order": (file) => observe(file, { ...C1, madeSafe }) },
    not: {
      "C1 that an item names": (file) => {
        observe(file, { ...C1, madeSafe });
        named(file);
      },
      "an improvement that no item names": (file) => observe(file, {}),
    },
  },
  "made-safe-and-to-make-safe": {
    is: {
      "have it made safe now": (file) => {
        observe(file, { ...C1, madeSafe, remedy: "Have it made safe now and repaired." });
        named(file);
      },
      "at once": (file) => {
        observe(file, { ...C1, madeSafe, remedy: "At once have an electrician make it safe." });
        named(file);
      },
    },
    not: {
      "what is left to do": (file) => {
        observe(file, { ...C1, madeSafe, remedy: "Made safe; fit a new socket soon." });
        named(file);
      },
    },
  },
  "told-and-untold": {
    is: {
      both: (file) => {
        observe(file, { ...C1, madeSafe, untold: "Nobody was in." });
        named(file);
      },
    },
    not: {
      one: (file) => {
        observe(file, { ...C1, untold: "Nobody was in, and no number is known." });
        named(file);
      },
    },
  },
  "in-order-beside-none": {
    is: {
      "surge protection that is fitted nowhere": surge(false),
      "a main switch that is missing": (file) =>
        Object.assign(file.boards?.[0] as object, { mainSwitch: { fitted: false } }),
    },
    not: {
      "surge protection that is fitted at one board": surge(true, false),
      "not applicable": (file) => {
        surge(false)(file);
        tick(file, "boards.surge", "not-applicable", { reason: "none fitted and none asked for" });
      },
      "in order, and why": (file) => {
        surge(false)(file);
        tick(file, "boards.surge", "in-order", { reason: "The risk was worked out: none is needed here." });
      },
    },
  },
  "in-order-beside-failed-check": {
    is: {
      "polarity of the supply": (file) => Object.assign(file.supply?.readings as object, { polarity: "incorrect" }),
    },
    not: {
      "named at its item": (file) => {
        Object.assign(file.supply?.readings as object, { polarity: "incorrect" });
        tick(file, "intake.polarity", "observed", { observations: ["o1"] });
        observe(file, { board: undefined, answers: [{ check: "supply-polarity" }] });
      },
    },
  },
  "not-applicable-beside-recorded": {
    is: {
      "an electrode on TT": (file) =>
        tick(file, "earthing.electrode", "not-applicable", { reason: "nothing of the kind here" }),
      "a battery": (file) =>
        Object.assign(file.supply as object, { otherSources: [{ id: "b", kind: "battery", notice: true }] }),
      "a vehicle charging circuit": (file) =>
        Object.assign(file.boards?.[0]?.circuits?.[2] as object, { load: "vehicle-charging" }),
    },
    not: {
      "what is not there": (file) =>
        tick(file, "sources.storage", "not-applicable", { reason: "nothing of the kind here" }),
    },
  },
  "polarity-beside-readings": {
    is: {
      "confirmed at every circuit behind a reversed supply": (file) =>
        Object.assign(file.supply?.readings as object, { polarity: "incorrect" }),
    },
    not: {
      "incorrect at one circuit": (file) =>
        Object.assign(file.boards?.[0]?.circuits?.[2]?.readings as object, { polarity: "incorrect" }),
    },
  },
  "button-beside-failed-time": {
    is: {
      "a button that trips and a time that ran out": (file) =>
        rcd(file, { readings: { atRated: { shown: ">1999 ms" }, button: "trips" } }),
    },
    not: {
      "a dead button": (file) => rcd(file, { readings: { atRated: { shown: ">1999 ms" }, button: "does-not-trip" } }),
    },
  },
  "cannot-be-tested-beside-time": {
    is: {
      "a time of what cannot be tested": (file) =>
        rcd(file, { testability: "cannot-be-tested", whyNotTested: "the freezers may not be switched off" }),
    },
    not: {
      "no time": (file) =>
        rcd(file, {
          testability: "cannot-be-tested",
          whyNotTested: "the freezers may not be switched off",
          readings: { atRated: { notTaken: "limited", reason: "the freezers may not be switched off" } },
        }),
    },
  },
  "limitation-over-measured": {
    is: {
      "no insulation test, with readings": limitation("Insulation resistance not tested"),
      "no polarity at all": limitation("No polarity test of any kind"),
    },
    not: {
      "of one circuit": limitation("Insulation resistance of the alarm circuit not tested"),
      "of something else": limitation("Loft space beyond the hatch not entered"),
    },
  },
  "outcome-stated-otherwise": {
    is: {
      "satisfactory over danger": (file) => {
        stated("satisfactory")(file);
        observe(file, { ...C1, madeSafe });
        named(file);
      },
      "unsatisfactory over nothing": stated("unsatisfactory"),
    },
    not: {
      "unsatisfactory over danger": (file) => {
        stated("unsatisfactory")(file);
        observe(file, { ...C1, madeSafe });
        named(file);
      },
      "satisfactory over nothing": stated("satisfactory"),
    },
  },
};

describe.each(CONTRADICTIONS)("%s", (id) => {
  const { is, not } = CASES[id];
  test.each(Object.entries(is))("is shown: %s", (_, edit) => {
    expect(found(edit)).toContain(id);
  });
  test.each(Object.entries(not))("is not shown: %s", (_, edit) => {
    expect(found(edit)).not.toContain(id);
  });
});

describe("no contradiction", () => {
  test("on a sound installation, tested and answered in full", () => {
    expect(found(() => undefined)).toEqual([]);
  });
  test.each(["terraced-house", "farmhouse", "workshop"])("in the example %s", (name) => {
    expect(kindsOf(outcomeOfData(read(name)).points)).toEqual([]);
  });
});
