import { expect, test } from "vitest";
import { spoken } from "./spoken.ts";

test.each([
  ["flat-twin-and-cpc", "flat twin and cpc"],
  ["70C-thermoplastic", "70 °C thermoplastic"],
  ["does-not-trip", "does not trip"],
  [
    "no figure in the capacity tables for copper armoured, 90C-thermosetting, 4 mm²",
    "no figure in the capacity tables for copper armoured, 90 °C thermosetting, 4 mm²",
  ],
])("%s is said as %s", (word, words) => {
  expect(spoken(word)).toBe(words);
});

test.each(["BS 88-2.2", "TN-C-S", "BS EN 60947-2", "gG", "100", "R1+R2", "socket-outlets"])(
  "%s stays as it is",
  (word) => {
    expect(spoken(word)).toBe(word);
  },
);
