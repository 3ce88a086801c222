import type { AgainstEarlier } from "@good-grounds/core";
import { resolveInstallation, type WholeInstallation } from "@good-grounds/inspection";
import { thenAndNow } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import type { TrueInstallation } from "../../examples/simulate/installation.ts";
import { matchCircuits } from "../../packages/readings/src/earlier/match/match.ts";
import { divided, extended, nameless, renamed } from "./later.ts";
import { manyCircuits } from "./many-circuits.ts";
import { inspected, randomHouse } from "./random-house.ts";

const SEEDS = Array.from({ length: 40 }, (_, i) => 5000 + i);
const first = (house: TrueInstallation, seed: number) => inspected(house, { day: "2021-10-05", seed: 2 * seed });
const second = (house: TrueInstallation, seed: number) => inspected(house, { day: "2026-10-06", seed: 2 * seed + 1 });
const against = (now: WholeInstallation, past: WholeInstallation) =>
  thenAndNow(now, [past]).earlier[0] as AgainstEarlier;

/** What was matched, by names, in an order of its own. */
function said(past: WholeInstallation, now: WholeInstallation, swapped = false) {
  const found = swapped ? matchCircuits(now, past) : matchCircuits(past, now);
  const id = ({ id: name }: { readonly id: string }) => name;
  const [splits, merges] = swapped ? [found.merges, found.splits] : [found.splits, found.merges];
  const [gone, added] = swapped ? [found.onlyNow, found.onlyThen] : [found.onlyThen, found.onlyNow];
  const sides = ({
    past: a,
    now: b,
  }: {
    readonly past: readonly { id: string }[];
    readonly now: readonly { id: string }[];
  }) => (swapped ? [b, a] : [a, b]).map((list) => list.map(id).sort().join(" "));
  return {
    pairs: found.pairs
      .map((pair) => (swapped ? `${pair.now.id} ${pair.past.id}` : `${pair.past.id} ${pair.now.id}`))
      .sort(),
    sure: found.pairs.map(({ confidence }) => confidence.toFixed(6)).sort(),
    splits: splits.map(({ whole, pieces }) => [whole.id, ...pieces.map(id).sort()].join(" ")).sort(),
    merges: merges.map(({ whole, pieces }) => [whole.id, ...pieces.map(id).sort()].join(" ")).sort(),
    unsettled: found.unsettled.map((group) => sides(group).join(" | ")).sort(),
    gone: gone.map(id).sort(),
    added: added.map(id).sort(),
  };
}

/** The same inspection with its boards and circuits in another order. */
function shuffled({ file }: WholeInstallation, chance: Chance): WholeInstallation {
  const mixed = <T>(list: readonly T[]) =>
    list
      .map((one) => [chance.uniform(), one] as const)
      .sort(([a], [b]) => a - b)
      .map(([, one]) => one);
  const boards = mixed(file.boards).map((board) => ({ ...board, circuits: mixed(board.circuits) }));
  return resolveInstallation({ ...file, boards });
}

describe("matching of circuits", () => {
  const alter = [
    renamed,
    nameless,
    extended,
    (house: TrueInstallation, chance: Chance) => divided(house, chance) ?? renamed(house, chance),
  ];

  test("is the same in any order of circuits and boards, and with the files exchanged", () => {
    for (const seed of SEEDS.slice(0, 24)) {
      const house = randomHouse(seed);
      const [past, now] = [
        first(house, seed),
        second((alter[seed % alter.length] as typeof renamed)(house, new Chance(seed)).house, seed),
      ];
      const expected = said(past, now);
      const chance = new Chance(seed + 9);
      expect(said(shuffled(past, chance), shuffled(now, chance))).toEqual(expected);
      expect(said(past, now, true)).toEqual(expected);
    }
  });

  test("finds every circuit of a house whose circuits were all renamed and renumbered, and none wrongly", () => {
    let [circuits, right] = [0, 0];
    for (const seed of SEEDS) {
      const house = randomHouse(seed);
      const later = renamed(house, new Chance(seed));
      for (const { past, now } of against(second(later.house, seed), first(house, seed)).circuits) {
        circuits++;
        if (past[0]?.id === later.was.get(now[0]?.id ?? "")?.[0]) right++;
        else expect.fail(`${past[0]?.description} taken for ${now[0]?.description}`);
      }
    }
    expect(right).toBe(circuits);
    expect(right).toBeGreaterThan(
      0.98 * SEEDS.reduce((sum, seed) => sum + randomHouse(seed).boards.flatMap((board) => board.circuits).length, 0),
    );
  });

  test("finds a ring that was divided, and names its parts", () => {
    let [asked, found] = [0, 0];
    for (const seed of SEEDS) {
      const house = randomHouse(seed);
      const later = divided(house, new Chance(seed));
      if (later === null) continue;
      asked++;
      const splits = against(second(later.house, seed), first(house, seed)).circuits.filter(
        ({ kind }) => kind === "split",
      );
      if (splits.length === 1 && splits[0]?.past[0]?.id === later.whole) found++;
      else expect(splits).toEqual([]);
    }
    expect(found).toBeGreaterThan(0.9 * asked);
  });

  test("forces nothing: two circuits alike in everything stay together as one question", () => {
    const house = randomHouse(3);
    const board = house.boards[0] as TrueInstallation["boards"][number];
    const twin = { ...(board.circuits[1] as (typeof board.circuits)[number]), name: "lights" };
    const twins = {
      ...house,
      boards: [
        {
          ...board,
          circuits: [
            { ...twin, id: "c1" },
            { ...twin, id: "c2" },
          ],
        },
      ],
    };
    const bare = (installation: WholeInstallation) =>
      resolveInstallation({
        ...installation.file,
        boards: installation.file.boards.map((one) => ({
          ...one,
          circuits: one.circuits.map(({ readings: _, ...circuit }) => ({ ...circuit, designation: "?" })),
        })),
      });
    const { circuits, unsettled, onlyThen, onlyNow } = against(bare(second(twins, 1)), bare(first(twins, 1)));
    expect(circuits).toEqual([]);
    expect(unsettled.map(({ past, now }) => [past.length, now.length])).toEqual([[2, 2]]);
    expect([onlyThen, onlyNow]).toEqual([[], []]);
  });

  test("a circuit that is new and one that is gone are neither matched nor hidden", () => {
    for (const seed of SEEDS.slice(0, 20)) {
      const house = randomHouse(seed);
      const later = extended(house, new Chance(seed));
      const { circuits, unsettled, onlyNow } = against(second(later.house, seed), first(house, seed));
      expect(circuits.some(({ now }) => now.some(({ id }) => id === "new1"))).toBe(false);
      expect([...onlyNow, ...unsettled.flatMap(({ now }) => now)].map(({ id }) => id)).toContain("new1");
    }
  });

  test("very many circuits are matched by name alone", () => {
    const house = randomHouse(1);
    const past = manyCircuits(house, { day: "2021-10-05", seed: 2 }, 200);
    const result = against(manyCircuits(house, { day: "2026-10-06", seed: 3 }, 200), past);
    expect(result.byNameOnly).toBe(true);
    expect(result.circuits.length).toBe(400);
  });
});
