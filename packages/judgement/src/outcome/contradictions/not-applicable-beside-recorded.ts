import {
  isKnown,
  isKnownFact,
  type OtherSource,
  type Path,
  type PlaceKind,
  type SpecialLocation,
} from "@good-grounds/core";
import type { Installation, ItemId } from "@good-grounds/inspection";
import type { ContradictionRow } from "./row.ts";
import { ticked } from "./ticked.ts";

type Find = (installation: Installation) => readonly Path[];

const loads =
  (...kinds: readonly string[]): Find =>
  ({ circuits }) =>
    circuits.filter(({ load }) => isKnownFact(load) && kinds.includes(load.word)).map(({ path }) => path);

const sources =
  (...kinds: readonly OtherSource[]): Find =>
  ({ supply }) =>
    supply.otherSources.filter(({ kind }) => kinds.length === 0 || kinds.includes(kind)).map(({ path }) => path);

const places =
  (kinds: readonly PlaceKind[], special: readonly SpecialLocation[]): Find =>
  ({ things }) =>
    things
      .ofKind("places")
      .filter(
        ({ state }) =>
          (isKnownFact(state.kind) && kinds.includes(state.kind.word)) ||
          state.special.some((one) => isKnownFact(one) && special.includes(one.word)),
      )
      .map(({ path }) => path);

const electrodes: Find = ({ supply, things }) => [
  ...((isKnownFact(supply.earthing) && supply.earthing.word === "TT") || isKnown(supply.ra) ? [supply.path] : []),
  ...things.ofKind("electrodes").map(({ path }) => path),
];

/** What is recorded of an installation, by the items that arise where it is there. */
const RECORDED: readonly { readonly item: ItemId; readonly find: Find }[] = [
  { item: "earthing.electrode", find: electrodes },
  { item: "boards.rcd", find: ({ boards }) => boards.flatMap(({ rcds }) => rcds.map(({ path }) => path)) },
  {
    item: "boards.surge",
    find: ({ things }) =>
      things
        .ofKind("surgeDevices")
        .filter(({ state }) => isKnownFact(state.fitted) && state.fitted.word)
        .map(({ path }) => path),
  },
  {
    item: "boards.arc-fault",
    find: ({ things }) =>
      things
        .ofKind("arcDevices")
        .filter(({ state }) => isKnownFact(state.fitted) && state.fitted.word)
        .map(({ path }) => path),
  },
  {
    item: "earthing.main-bonding",
    find: ({ supply }) =>
      supply.bonding.filter((bond) => isKnownFact(bond.extraneous) && bond.extraneous.word).map(({ path }) => path),
  },
  {
    item: "earthing.supplementary",
    find: ({ things }) => things.ofKind("supplementaryBonds").map(({ path }) => path),
  },
  ...(["bathrooms.rcd", "bathrooms.ip", "bathrooms.equipment"] as const).map((item) => ({
    item,
    find: (one: Installation) => [...loads("shower")(one), ...places([], ["bath-or-shower"])(one)],
  })),
  { item: "outdoors.outbuildings", find: places(["outbuilding"], []) },
  { item: "special.pools", find: places([], ["pool"]) },
  { item: "special.farms", find: places([], ["farm"]) },
  { item: "special.conducting-places", find: places([], ["conducting-place"]) },
  { item: "special.medical", find: places([], ["medical"]) },
  { item: "special.caravans-boats", find: places([], ["caravan-site", "marina"]) },
  { item: "sources.generators", find: sources("generator") },
  { item: "sources.photovoltaic", find: sources("photovoltaic") },
  { item: "sources.storage", find: sources("battery") },
  { item: "sources.vehicle-charging", find: loads("vehicle-charging") },
  { item: "notices.other-sources", find: sources() },
];

/** An item that does not arise, and a record of the thing it asks about. */
export const NOT_APPLICABLE_BESIDE_RECORDED: ContradictionRow = {
  id: "not-applicable-beside-recorded",
  find: ({ installation }) => {
    // One thing may speak to several items, and is one clash with all of them.
    const clashes = new Map<string, { readonly items: Path[]; readonly recorded: readonly Path[] }>();
    for (const { item, find } of RECORDED) {
      const tick = ticked(installation, item, "not-applicable");
      const recorded = tick === undefined ? [] : find(installation);
      if (tick === undefined || recorded.length === 0) continue;
      const key = JSON.stringify(recorded);
      const clash = clashes.get(key) ?? { items: [], recorded };
      clash.items.push(tick.path);
      clashes.set(key, clash);
    }
    // Why it does not arise is written at every such item anyway, so it is no answer to a record of the thing.
    return [...clashes.values()].map(({ items, recorded }) => ({ places: [...items, ...recorded] }));
  },
};
