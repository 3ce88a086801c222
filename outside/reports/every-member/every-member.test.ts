import { assemble } from "@good-grounds/assembly";
import { resolveInstallation } from "@good-grounds/inspection";
import type { ReportInput } from "@good-grounds/report";
import { plainText } from "@good-grounds/report/document";
import { describe, expect, test } from "vitest";
import { reportOf } from "../../../packages/report/src/pages/report.ts";
import { Drawings } from "../../../packages/report/src/pdf/drawings.ts";
import { reportSections } from "../../../packages/report/src/pdf/model.ts";
import { memberOf, opened, withAt } from "./filled.ts";
import { filledJob } from "./job.ts";
import { WITHHELD } from "./withheld.ts";

/** The report in bare words. */
function wordsOf(input: ReportInput): string {
  const drawings = new Drawings();
  return plainText(reportOf(reportSections(input, drawings), drawings, []));
}

const withheld = (member: string) => WITHHELD.some(({ members }) => members.test(member));

describe("every member that can be recorded", () => {
  const { data, file, found } = filledJob("known");
  const input = assemble(file, true);
  const words = wordsOf(input);

  test("is filled", () => {
    expect(found.length).toBeGreaterThan(600);
  });

  test("changes the report where it is changed, or is withheld for a reason", () => {
    const silent = new Set<string>();
    for (const { member, path, other } of found) {
      if (other === undefined || withheld(member)) continue;
      const changed = opened(withAt(data, path, other));
      // What leads elsewhere cannot be changed alone.
      if (changed === undefined) continue;
      // Only what was recorded is new: what was worked out from it stays, so nothing is printed by way of a conclusion.
      if (wordsOf({ ...input, installation: resolveInstallation(changed) }) === words) silent.add(member);
    }
    expect([...silent]).toEqual([]);
  });

  test("is printed in its own words, none of them cut", () => {
    const cut = found.filter(
      ({ member, value }) =>
        typeof value === "string" && value.startsWith("Zq") && !withheld(member) && !words.includes(value),
    );
    expect(cut.map(({ member }) => member)).toEqual([]);
  });

  test("that is withheld is there to be withheld", () => {
    const members = new Set(found.map(({ member }) => member));
    for (const { members: pattern, why } of WITHHELD)
      expect(
        [...members].some((member) => pattern.test(member)),
        `${why}: ${pattern.source}`,
      ).toBe(true);
  });
});

test("why something is not known is printed wherever it can be said", () => {
  const { file, found } = filledJob("not-known");
  const words = wordsOf(assemble(file, true));
  const unsaid = found.filter(
    ({ path, value }) => path.at(-1) === "reason" && typeof value === "string" && !words.includes(value),
  );
  expect(unsaid.map(({ path }) => memberOf(path)).filter((member) => !withheld(member))).toEqual([]);
});
