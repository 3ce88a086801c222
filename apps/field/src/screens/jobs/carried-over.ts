import type { InspectionFile } from "@good-grounds/inspection";

type Board = InspectionFile["boards"][number];
type Circuit = Board["circuits"][number];
type Rcd = NonNullable<Board["rcds"]>[number];

/** What of last time's file a new inspection starts from. */
export type CarriedOver = Pick<InspectionFile, "title" | "supply" | "boards" | "things"> & {
  readonly brief: Omit<InspectionFile["brief"], "purpose">;
};

/**
 * What was built and is likely to be there still: the premises, the supply, boards and circuits. Nothing that was
 * measured, found or judged: readings, connections, findings and remarks belong to the day on which they were made.
 */
export function carriedOver(file: InspectionFile): CarriedOver {
  const { purpose: _, ...brief } = file.brief;
  const { readings: __, note: ___, bonding, otherSources, ...supply } = file.supply;
  return {
    ...(file.title === undefined ? {} : { title: file.title }),
    brief: {
      ...brief,
      records: [{ kind: "condition report", date: file.inspectedOn, reference: file.id }],
      lastInspection: file.inspectedOn,
    },
    supply: {
      ...supply,
      bonding: bonding.map(({ resistance, partResistance, connected, condition, heatDamage, ...bond }) => bond),
      ...(otherSources === undefined ? {} : { otherSources: otherSources.map(({ notice, ...source }) => source) }),
    },
    boards: file.boards.map(board),
    ...(file.things === undefined ? {} : { things: things(file.things) }),
  };
}

/** Things as they were built: without their state, what wears on them and what was measured. */
function things(lists: NonNullable<InspectionFile["things"]>): NonNullable<InspectionFile["things"]> {
  const { places, sections, loads, electrodes, surgeDevices, arcDevices } = lists;
  return {
    ...(places === undefined ? {} : { places: places.map(({ note, ...rest }) => rest) }),
    ...(sections === undefined ? {} : { sections: sections.map(({ note, layer, ...rest }) => rest) }),
    ...(electrodes === undefined
      ? {}
      : { electrodes: electrodes.map(({ note, resistance, season, state, ...rest }) => rest) }),
    ...(loads === undefined ? {} : { loads: loads.map(({ note, ...rest }) => rest) }),
    ...(surgeDevices === undefined ? {} : { surgeDevices: surgeDevices.map(({ note, indicator, ...rest }) => rest) }),
    ...(arcDevices === undefined
      ? {}
      : { arcDevices: arcDevices.map(({ note, indicator, button, testability, ...rest }) => rest) }),
  };
}

function board({ readings: _, note: __, rcds, circuits, ...rest }: Board): Board {
  return { ...rest, ...(rcds === undefined ? {} : { rcds: rcds.map(rcd) }), circuits: circuits.map(circuit) };
}

function rcd<R extends Omit<Rcd, "id" | "serves">>({
  readings: _,
  note: __,
  testability: ___,
  whyNotTested: ____,
  ...rest
}: R): Omit<R, "readings" | "note" | "testability" | "whyNotTested"> {
  return rest;
}

function circuit({ readings: _, note: __, liveBeforeContinuity: ___, ...rest }: Circuit): Circuit {
  const own = rest.rcd !== undefined && rest.rcd !== "none" && "own" in rest.rcd ? rest.rcd.own : undefined;
  return own === undefined ? rest : { ...rest, rcd: { own: rcd(own) } };
}
