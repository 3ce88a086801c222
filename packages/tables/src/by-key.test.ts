import { expect, test } from "vitest";
import { byKey } from "./by-key.ts";
import { remembered } from "./remembered.ts";

test("two rows with the same key are refused, and named", () => {
  expect(() =>
    byKey([
      ["6 A", 1],
      ["10 A", 2],
      ["6 A", 1],
    ]),
  ).toThrow("two rows for 6 A");
});

test("rows are found by their key", () => {
  expect(byKey([[6, "a"] as const, [10, "b"] as const]).get(10)).toBe("b");
});

test("an answer is made once for each number, NaN too, and only so many are kept", () => {
  let made = 0;
  const answer = remembered((key) => ({ key, number: ++made }), 2);
  expect(answer(1)).toBe(answer(1));
  expect(answer(Number.NaN)).toBe(answer(Number.NaN));
  expect(made).toBe(2);
  expect(answer(3)).not.toBe(answer(3));
  expect(answer(1)).toMatchObject({ key: 1, number: 1 });
});
