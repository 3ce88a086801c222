import { paperOf } from "@good-grounds/report/papers";
import { TOPICS } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { type Data, dataOf, EXAMPLES, inputOf, nothingInspected, said } from "./jobs.ts";
import { gradeOf, gradeOfText } from "./reading-grade.ts";

/** Years of school: what somebody of eleven reads. */
const GRADE = 6;

const danger = (data: Data) => data.observations.find((one: Data) => one.choice.classification === "C1");

describe("the measure itself", () => {
  test("gives plain words little and long words much", () => {
    expect(gradeOfText("The cat sat on the mat. It was a hot day.")).toBeLessThan(1);
    expect(
      gradeOfText(
        "Notwithstanding considerable investigation, insulation deterioration necessitates immediate precautionary disconnection of the aforementioned distribution circuit.",
      ),
    ).toBeGreaterThan(18);
  });
});

describe("the letter reads easily", () => {
  test.each(EXAMPLES)("%s", (name) => {
    expect(gradeOf(paperOf("letter", inputOf(dataOf(name))))).toBeLessThanOrEqual(GRADE);
  });

  /** So many observations stand in a letter in full. */
  const AT_ONCE = 10;
  const batches = Array.from({ length: Math.ceil(TOPICS.length / AT_ONCE) }, (_, i) => i);

  test.each(["best", "worst"] as const)("with every topic at its %s, ten in a letter", (end) => {
    for (const batch of batches) {
      const data = dataOf("terraced-house", (changed) => {
        changed.signatures = [];
        changed.observations = TOPICS.slice(batch * AT_ONCE, (batch + 1) * AT_ONCE).map((topic, i) => ({
          id: `t${i}`,
          place: "hall",
          what: "It is broken.",
          topic: topic.id,
          facts: factsOf(topic, end),
        }));
        changed.inspected = changed.inspected.map((one: Data) => ({ item: one.item, outcome: "in-order" }));
      });
      expect(gradeOf(paperOf("letter", inputOf(data))), `from topic ${batch * AT_ONCE}`).toBeLessThanOrEqual(GRADE);
    }
  });

  test("with every duty of every nation and tenure", () => {
    for (const nation of ["england", "wales", "scotland", "northern-ireland"])
      for (const tenure of ["private-rented", "social-rented", "commercial-lease"])
        for (const use of ["dwelling", "house-in-multiple-occupation", "shop"]) {
          const input = inputOf(dataOf("terraced-house", (data) => Object.assign(data.brief, { nation, tenure, use })));
          expect(gradeOf(paperOf("letter", input)), `${nation}, ${tenure}, ${use}`).toBeLessThanOrEqual(GRADE);
        }
  });
});

function factsOf(topic: (typeof TOPICS)[number], end: "best" | "worst"): Data {
  return Object.fromEntries(
    Object.entries(topic.facts).flatMap(([name, fact]): [string, string | boolean][] => {
      if (fact.kind === "quantity") return [];
      if (fact.kind === "yes-no") return [[name, (fact.worse === "yes") === (end === "worst")]];
      const value = Object.keys(fact.values).at(end === "best" ? 0 : -1);
      return value === undefined ? [] : [[name, value]];
    }),
  );
}

describe("the letter is true", () => {
  test("of danger that was made safe it does not say that it is there now", () => {
    const words = said("letter", inputOf(dataOf("terraced-house")));
    expect(words).toContain("We made it safe on 6 October 2026.");
    expect(words).not.toContain("Danger now");
    expect(words).not.toContain("Do not use it. Have it put right at once.");
  });

  test("of danger that was not made safe it says not to use it, and that nobody told of it is not written down", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        delete danger(data).madeSafe;
      }),
    );
    const words = said("letter", input);
    expect(words).toContain("Do not use it. Have it put right at once.");
    expect(words).toContain("Whether it was made safe is not written down. Treat it as live.");
    expect(words).not.toContain("We made it safe");
  });

  test("it says what the inspector states and what the facts come to as two things", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        data.conclusion.outcome = "satisfactory";
      }),
    );
    const words = said("letter", input);
    expect(words).toContain("The inspector calls it satisfactory.");
    expect(words).toContain("The facts in the report come out as unsatisfactory.");
    expect(words).toContain("The two do not agree.");
  });

  test("a class is the inspector's, and what the facts point to stands beside it", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        const one = danger(data);
        delete one.madeSafe;
        one.choice = { classification: "C3", reason: "A blank plate will be fitted.", by: "inspector" };
      }),
    );
    const words = said("letter", input);
    expect(words).toContain("The inspector's class: C3");
    expect(words).toContain("The facts point to C1. The inspector chose C3. Ask why.");
  });

  test("nothing stated and nothing inspected does not read as safe", () => {
    const words = said("letter", inputOf(dataOf("terraced-house", nothingInspected)));
    expect(words).toContain("The inspector has not yet said how it comes out.");
    expect(words).toContain("So this letter does not say that it is safe.");
    expect(words).not.toContain("We found nothing that needs work");
  });

  test("an earthing conductor that may still be off stands first", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        data.earthingOff = [{ off: { at: "2026-10-06T09:30:00+01:00" } }];
      }),
    );
    const words = said("letter", input);
    expect(words.indexOf("The main earth wire may still be off.")).toBeGreaterThan(-1);
    expect(words.indexOf("The main earth wire may still be off.")).toBeLessThan(words.indexOf("The result"));
  });

  test("it gives the dates of the law, says they only remind, and marks what nobody read in the law", () => {
    const house = said("letter", inputOf(dataOf("terraced-house")));
    expect(house).toContain("By 2 November 2026 | Have the work and the checks done.");
    expect(house).toContain("They are not legal advice.");
    const farm = said("letter", inputOf(dataOf("farmhouse")));
    expect(farm).toContain("Have it tested again. Check this one.");
  });

  test("a period the inspector sets counts its first day", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        data.conclusion.workWithin = { days: 7 };
      }),
    );
    expect(said("letter", input)).toContain("to be done in 7 days: by 12 October 2026.");
  });

  test("of many the worst stand in full and the rest are counted", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        const one = danger(data);
        const more = Array.from({ length: 60 }, (_, i) => ({
          ...one,
          id: `m${i}`,
          choice: { ...one.choice, classification: "C2" },
        }));
        data.observations.push(...more);
      }),
    );
    const words = said("letter", input);
    expect(words).toContain("1 Living room, socket beside the window.");
    // 60 more beside the two of the example; one danger and eleven of these stand in full.
    expect(words).toContain("And 51 more of this kind.");
  });

  test("whoever only ordered it is asked to pass it on", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        data.brief.letting = { orderedBy: "tenant" };
      }),
    );
    const words = said("letter", input);
    expect(words).toContain("To: Whoever owns or lets the place");
    expect(words).toContain("Please pass this on to whoever owns or lets the place.");
    expect(words).not.toContain("A. N. Landlord");
  });
});
