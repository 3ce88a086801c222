import { expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../../outside/reports/example.ts";
import { instruments } from "./evidence.ts";

const LEADS = 3;
const leadsOf = (text: string) => instruments(inputOf(text)).rows.map((row) => row[LEADS]);

test("an instrument that read ohms says when its leads were nulled and what had crept in", () => {
  const text = changed((file) => {
    Object.assign((file.instruments as object[])[0] as object, {
      leadsNulled: [
        { at: "2026-10-06T09:15:00+01:00" },
        { at: "2026-10-06T12:01:00+01:00", showed: "0.02 Ω" },
        { at: "2026-10-07T09:00:00+01:00" },
      ],
    });
  });
  expect(leadsOf(text)[0]).toEqual({
    words: "nulled 09:15; nulled 12:01, joined they showed 0.02 Ω before; nulled 7 October 2026, 09:00",
    open: false,
  });
});

test("without a record that is a gap, and a thermometer has no leads to null", () => {
  expect(leadsOf(EXAMPLE)).toEqual([
    { words: "no check recorded", open: true },
    { words: "–", open: false },
  ]);
});
