import { type Fact, isKnownFact, type Path } from "@good-grounds/core";
import type { Installation, ItemId } from "@good-grounds/inspection";
import type { ContradictionRow } from "./row.ts";
import { ticked } from "./ticked.ts";

const isNo = (fact: Fact<boolean>) => isKnownFact(fact) && !fact.word;
const isYes = (fact: Fact<boolean>) => isKnownFact(fact) && fact.word;

/** Devices that were looked for and are nowhere: what is fitted at one board may be what is in order. */
function noneFitted(devices: readonly { readonly path: Path; readonly state: { readonly fitted: Fact<boolean> } }[]) {
  if (devices.some(({ state }) => isYes(state.fitted))) return [];
  return devices.filter(({ state }) => isNo(state.fitted)).map(({ path }) => path);
}

/** What is recorded as absent, by the item that cannot be in order beside it. */
const ABSENT: readonly { readonly item: ItemId; readonly find: (one: Installation) => readonly Path[] }[] = [
  { item: "boards.surge", find: ({ things }) => noneFitted(things.ofKind("surgeDevices")) },
  { item: "boards.arc-fault", find: ({ things }) => noneFitted(things.ofKind("arcDevices")) },
  {
    item: "boards.main-switch",
    find: ({ boards }) => boards.filter((board) => isNo(board.mainSwitchFitted)).map(({ path }) => path),
  },
  {
    item: "notices.other-sources",
    find: ({ supply }) => supply.otherSources.filter(({ notice }) => isNo(notice)).map(({ path }) => path),
  },
  {
    item: "earthing.main-bonding",
    find: ({ supply }) =>
      supply.bonding.filter((bond) => isYes(bond.extraneous) && isNo(bond.connected)).map(({ path }) => path),
  },
];

/** An item in order, and the thing it asks about recorded as absent. */
export const IN_ORDER_BESIDE_NONE: ContradictionRow = {
  id: "in-order-beside-none",
  find: ({ installation }) =>
    ABSENT.flatMap(({ item, find }) => {
      const tick = ticked(installation, item, "in-order");
      const absent = tick === undefined ? [] : find(installation);
      return tick === undefined || absent.length === 0 ? [] : [{ places: [tick.path, ...absent], reason: tick.reason }];
    }),
};
