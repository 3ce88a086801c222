import { findTopics, TOPICS } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { DANGER_COMBINATIONS } from "./danger-combinations.ts";
import { HELD_OUT_PHRASES, LATER_PHRASES, PHRASES, type RoughPhrase } from "./rough-phrases.ts";
import { SEARCHED_WORDS } from "./searched-words.ts";

const found = (typed: string) => findTopics(typed).map(({ id }) => id);

describe("a subject is found by what an electrician types", () => {
  test.each(SEARCHED_WORDS)("%s: %s", (typed, ...subjects) => {
    const first = found(typed).slice(0, 5);
    expect(
      first.some((id) => subjects.includes(id)),
      `${typed} gives ${first.join(", ")}`,
    ).toBe(true);
  });

  test("the subjects named here exist", () => {
    const ids = new Set(TOPICS.map(({ id }) => id));
    expect(SEARCHED_WORDS.flatMap(([, ...subjects]) => subjects).filter((id) => !ids.has(id))).toEqual([]);
  });

  test.each(TOPICS.map(({ id, title }) => [title, id]))("%s is found by its own title first", (title, id) => {
    expect(found(title)[0]).toBe(id);
  });

  test.each(["", "   ", "of the", "qqqq", "__proto__", "constructor", "toString", "😀"])(
    "%j finds nothing",
    (typed) => {
      expect(found(typed)).toEqual([]);
    },
  );
});

/** Phrases for which no accepted topic is among the first three. */
function missed(phrases: readonly RoughPhrase[]): readonly string[] {
  return phrases
    .filter(
      ({ typed, accepted }) =>
        !found(typed)
          .slice(0, 3)
          .some((id) => accepted.includes(id)),
    )
    .map(({ typed }) => typed);
}

describe("a topic is among the first three for what is typed roughly", () => {
  test.each([
    ["phrases the search was made with", 0.95, PHRASES, 894],
    ["phrases it was not made with", 0.95, HELD_OUT_PHRASES, 184],
    // 54 of 60 and, written later, 39 of 40 when they were first tried.
    ["phrases of a new day", 0.95, LATER_PHRASES, 100],
  ] as const)("%s: %d or more", (_, least, phrases, count) => {
    expect(phrases.length).toBeGreaterThanOrEqual(count);
    const misses = missed(phrases);
    expect(1 - misses.length / phrases.length, misses.join("; ")).toBeGreaterThanOrEqual(least);
  });

  test("the phrases speak of every topic, of none that does not exist, and none is there twice", () => {
    const all = [...PHRASES, ...HELD_OUT_PHRASES, ...LATER_PHRASES];
    expect(new Set(all.flatMap(({ accepted }) => accepted))).toEqual(new Set(TOPICS.map(({ id }) => id)));
    expect(new Set(all.map(({ typed }) => typed)).size).toBe(all.length);
  });
});

/** Two letters in the middle of the longest word swapped; as it is where they are the same. */
function slipped(title: string): string {
  const longest = title.split(/[^A-Za-z]+/).reduce((most, word) => (word.length > most.length ? word : most), "");
  const at = Math.floor(longest.length / 2) - 1;
  const [one = "", other = ""] = longest.slice(at, at + 2);
  return title.replace(longest, `${longest.slice(0, at)}${other}${one}${longest.slice(at + 2)}`);
}

describe("a slip of the keyboard does not hide a topic", () => {
  test.each(TOPICS.map(({ id, title }) => [slipped(title), id]))("%s: %s is among the first three", (typed, id) => {
    expect(found(typed).slice(0, 3)).toContain(id);
  });

  test.each([
    ["expossed tails", "meter-tails-exposed"],
    ["scortched mcb", "board-overheating"],
    ["sokcet loose", "accessory-loose"],
    ["mising blnaks", "board-blank-missing"],
    ["luminare hangin by wires", "luminaire-unsupported"],
    ["undreground cabel", "cable-buried"],
  ])("%s: %s", (typed, id) => {
    expect(found(typed).slice(0, 3)).toContain(id);
  });

  test.each([
    ["scorc", "accessory-overheated"],
    ["consumer u", "board-cover-missing"],
    ["genera", "generator-changeover"],
  ])("%s, still being typed, shows %s", (typed, id) => {
    expect(found(typed)).toContain(id);
  });
});

describe("a danger told by state, thing and place is among the first three", () => {
  test.each(DANGER_COMBINATIONS)("$states, $things, $places", ({ states, things, places, topics }) => {
    const typed = states.flatMap((state) =>
      things.flatMap((thing) => ["", ...places].map((place) => `${state} ${thing} ${place}`.trim())),
    );
    const misses = typed.filter(
      (one) =>
        !found(one)
          .slice(0, 3)
          .some((id) => topics.includes(id)),
    );
    expect(misses).toEqual([]);
  });
});
