import { describe, expect, test } from "vitest";
import { pointsOf } from "./cautions.ts";
import { DANGER } from "./observations.ts";

const notice = (nation: string) =>
  DANGER.text({ address: "", date: "", where: "", what: "", done: "", by: "", nation });
const everywhere = (nation: string) => [
  pointsOf("start", nation).join(" "),
  pointsOf("danger", nation).join(" "),
  DANGER.intro(nation),
  notice(nation),
];

describe("whom to call about danger on the supply side", () => {
  test.each(["england", "wales", "scotland"])("%s: 105", (nation) => {
    for (const words of everywhere(nation)) expect(words).toContain("105");
  });

  test.each(["northern-ireland", ""])("“%s”: the number at the meter or on the bill", (nation) => {
    for (const words of everywhere(nation)) {
      expect(words).not.toContain("105");
      expect(words).toMatch(/number.* at the meter or on the bill/);
    }
  });

  test("fire, smell or shock is 999 whatever the nation", () => {
    for (const nation of ["england", "northern-ireland", ""]) {
      expect(pointsOf("start", nation).join(" ")).toContain("999");
      expect(notice(nation)).toContain("999");
    }
  });
});
