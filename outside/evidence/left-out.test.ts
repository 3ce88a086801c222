import { readFileSync } from "node:fs";
import type { Finding, Verdict } from "@good-grounds/core";
import { type Installation, readDraft, resolveDraft } from "@good-grounds/inspection";
import { outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { flatWeigh } from "../../bench/flat-loop.ts";
import { requiredPlaces, without } from "./required-members.ts";

const EXAMPLES = ["terraced-house", "farmhouse", "workshop"] as const;

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8"));

function findingsOf(installation: Installation): readonly Finding[] {
  const { supply, boards, circuits } = weigh(installation, false);
  return [...supply, ...boards.flat(), ...circuits.flat()];
}

/** Verdicts by check and by the thing they are about, called by its ids: places in lists move when a thing vanishes. */
function verdictsOf(all: readonly Finding[], installation: Installation): ReadonlyMap<string, Verdict> {
  return new Map(
    all.map(({ check, path, judgement }) => [`${nameOf(path, installation)} ${check}`, judgement.verdict]),
  );
}

function nameOf([head, i, kind, j, ...rest]: Finding["path"], { supply, boards }: Installation): string {
  if (head === "supply") return i === "bonding" ? `bond ${supply.bonding[Number(kind)]?.id}` : "supply";
  const board = boards[Number(i)];
  const part = kind === "circuits" ? board?.circuits[Number(j)]?.id : board?.rcds[Number(j)]?.id;
  return [board?.id, kind, part, ...rest].join(" ");
}

function resolved(data: unknown): Installation {
  const draft = readDraft(data);
  if (draft === undefined) throw new Error("the document could not be read at all");
  return resolveDraft(draft);
}

function outcome(installation: Installation) {
  const weighing = weigh(installation);
  return outcomeOf(installation, weighing, reasonObservations(installation, weighing), []);
}

describe.each(EXAMPLES)("%s with a required member left out", (name) => {
  const document = read(name);
  const asItIs = resolved(document);
  const whole = verdictsOf(findingsOf(asItIs), asItIs);
  const places = requiredPlaces(document);

  test("says at most less, and both writings of the checks say the same", () => {
    expect(places.length).toBeGreaterThan(200);
    const moved: string[] = [];
    for (const place of places) {
      const installation = resolved(without(document, place));
      const weighed = findingsOf(installation);
      // Every finding is what it was, too near to call or not known, or its thing is gone. Another account of the same thing
      // may be less exact; a thing without its id is another in name alone.
      for (const [key, verdict] of verdictsOf(weighed, installation))
        if (whole.has(key) && !["not-known", "too-near", whole.get(key)].includes(verdict))
          moved.push(`${place.join("/")}: ${key} was ${whole.get(key)} and became ${verdict}`);
      // A reading that is left out is looked at once; whatever holds others is weighed by the second writing as well.
      if (["shown", "reason"].includes(String(place.at(-1)))) continue;
      expect(
        flatWeigh(installation).map(({ check, flat }) => `${check} ${flat.verdict}`),
        place.join("/"),
      ).toEqual(weighed.map(({ check, judgement }) => `${check} ${judgement.verdict}`));
    }
    expect(moved).toEqual([]);
  });

  test("is never satisfactory for it", () => {
    const tops = [...new Set(places.map(([first]) => String(first)))];
    const was = outcome(resolved(document)).outcome;
    for (const top of tops) {
      const now = outcome(resolved(without(document, [top]))).outcome;
      if (was !== "satisfactory") expect(now, top).not.toBe("satisfactory");
    }
  });
});

describe("a circuit for lights at home without an RCD", () => {
  const house = read("terraced-house") as { brief: { use?: string }; boards: { circuits: { id: string }[] }[] };
  const findingOf = (data: unknown) => {
    const installation = resolved(data);
    const at = installation.circuits.findIndex(({ load }) => load.kind === "fact" && load.word === "lighting");
    return weigh(installation).circuits[at]?.find(({ check }) => check === "additional-protection");
  };

  test("is not met in a dwelling, and not known while the use of the premises is not recorded", () => {
    expect(findingOf(house)?.judgement.verdict).toBe("not-met");
    const { use: _, ...brief } = house.brief;
    const finding = findingOf({ ...house, brief });
    expect(finding?.judgement.verdict).toBe("not-known");
    expect(JSON.stringify(finding?.judgement)).toContain('"path":["brief","use"]');
  });
});

describe("what an unfinished file does not say", () => {
  test("is nothing: an empty document holds no board, no circuit and no use", () => {
    const installation = resolved({});
    expect(installation).toMatchObject({ boards: [], circuits: [], edition: undefined, inspectedOn: undefined });
    expect(installation.use.kind).toBe("fact-not-known");
    expect(outcome(installation)).toMatchObject({ outcome: "not-determined", edition: null });
  });
});
