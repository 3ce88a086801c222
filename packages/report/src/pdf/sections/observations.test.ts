import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../../outside/reports/example.ts";
import { Drawings } from "../drawings.ts";
import { observations } from "./observations.ts";

type Edit = Parameters<typeof changed>[0];
const listOf = (edit?: Edit) =>
  observations(inputOf(edit === undefined ? EXAMPLE : changed(edit)), new Drawings()).list;
/** The observation that the file knows by an id. */
const find = (list: ReturnType<typeof listOf>, id: string) =>
  list.find(({ number }) => number.endsWith(`number ${id.slice(1)} in the file`));
const rowOf = (one: ReturnType<typeof find>, label: string) => one?.details.find(([name]) => name === label)?.[1];
const edited =
  (id: string, edit: (one: Record<string, unknown>) => void): Edit =>
  ({ observations: all }) => {
    for (const one of all) if (one.id === id) edit(one);
  };

describe("an observation", () => {
  test("has its place, reason, regulations, remedy, photographs and circuit", () => {
    const one = find(listOf(), "o1");
    expect(one?.place).toBe("Loft, above the bathroom");
    expect(rowOf(one, "Classification")?.words).toContain("Reason: A dangerous overload cannot be ruled out");
    expect(rowOf(one, "Regulations")?.words).toBe("BS 7671 433.1.1, 523.9");
    expect(rowOf(one, "What would put it right")?.words).toMatch(/^Clear the loft/);
    expect(rowOf(one, "Photographs")?.words).toBe("loft.jpg: loft hatch and boards");
    expect(rowOf(one, "Circuit")?.words).toBe("Consumer unit, circuit 4 shower 8.5 kW");
  });

  test("without regulations or photographs says so", () => {
    const one = find(
      listOf(
        edited("o1", (each) => {
          delete each.photographs;
          delete each.regulations;
        }),
      ),
      "o1",
    );
    expect(rowOf(one, "Photographs")).toEqual({ words: "none recorded", open: true });
    expect(rowOf(one, "Regulations")?.open).toBe(true);
  });

  test("without a topic says that no line of reasoning stands behind it", () => {
    const one = find(
      listOf(
        edited("o1", (each) => {
          delete each.topic;
        }),
      ),
      "o1",
    );
    expect(one?.reasoning.none).toMatch(/^No topic is named/);
    expect(one?.reasoning.headline).toBe("");
  });

  test("of which the choice differs from what follows says so, and only that one", () => {
    const list = listOf(edited("o5", (each) => Object.assign(each.choice as object, { classification: "C3" })));
    expect(list.filter(({ reasoning }) => reasoning.differs).map(({ number }) => number)).toEqual([
      expect.stringContaining("number 5 in the file"),
    ]);
  });

  test("has the reason for a position taken, and for the firm's standing view where it has none of its own", () => {
    const point = "small-bond";
    const own = find(
      listOf(
        edited("o2", (each) => {
          each.positions = { [point]: { position: "nothing", reason: "Never hot in thirty years" } };
        }),
      ),
      "o2",
    );
    expect(rowOf(own, "Position taken")?.words).toBe(
      "It is not worth an observation. Reason: Never hot in thirty years.",
    );
    const firm = find(
      listOf((file) => {
        file.standingViews = [
          { topic: "main-bonding-undersized", point, position: "nothing", reason: "As always held" },
        ];
      }),
      "o2",
    );
    expect(rowOf(firm, "Position taken")?.words).toBe(
      "It is not worth an observation: a standing view of the firm. Reason: As always held.",
    );
  });

  test("does not tell twice what cannot be settled", () => {
    const parts = find(listOf(), "o1")?.reasoning.parts ?? [];
    const open = parts.flatMap(({ lines }) => lines.filter(({ tag }) => tag === "not known").map(({ words }) => words));
    expect(open.length).toBeGreaterThan(0);
    expect(new Set(open).size).toBe(open.length);
  });

  test("that nobody was told of has the reason where the making safe would stand", () => {
    const one = find(
      listOf(
        edited("o6", (each) => {
          delete each.madeSafe;
          each.untold = "The house was empty";
        }),
      ),
      "o6",
    );
    expect(rowOf(one, "Not told")?.words).toBe(
      "Not recorded as made safe. Nobody was told before leaving: The house was empty.",
    );
  });
});
