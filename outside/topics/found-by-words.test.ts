import { findTopics, TOPICS } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
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
