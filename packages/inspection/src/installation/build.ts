import type { Draft } from "../draft.ts";
import { leavesOf } from "../fields/field.ts";
import { Leaves } from "../fields/leaves.ts";
import { LETTING } from "../fields/letting.ts";
import { MATTER } from "../fields/matters.ts";
import type { DraftFile } from "../schema/draft.ts";
import { type ShortLists, WHOLE_LISTS } from "../short-lists.ts";
import { resolveBoard } from "./board.ts";
import { listed } from "./listed.ts";
import type { Circuit, Installation, Letting } from "./model.ts";
import { resolveThings } from "./resolve-things.ts";
import { resolveSupply } from "./supply.ts";

/**
 * Resolves a parsed inspection file, or an unfinished one as far as it goes: what is missing is evidence that is not known.
 * The file must have passed the parser or come from a draft; references are trusted here.
 */
export function resolveInstallation<F extends DraftFile>(file: F): Installation<F> {
  return resolve(file, WHOLE_LISTS);
}

/** Resolves what could be read of a document. */
export function resolveDraft({ file, short }: Draft): Installation {
  return resolve(file, short);
}

function resolve<F extends DraftFile>(file: F, short: ShortLists): Installation<F> {
  const leaves = new Leaves(file.instruments ?? []);
  const byId = new Map<string, Circuit>();
  const boards = (file.boards ?? []).map((entry, i) => {
    const board = resolveBoard(leaves, file, entry, ["boards", i], {
      circuitById: (at, circuit) => byId.get(`${at} ${circuit}`),
      isShort: short.circuits.has(i),
    });
    for (const circuit of board.circuits) byId.set(`${board.id} ${circuit.id}`, circuit);
    return board;
  });
  return Object.freeze({
    file,
    id: file.id as F["id"],
    address: file.brief?.premises?.address ?? [],
    nextInspectionBy: file.conclusion?.nextInspection?.by,
    workWithinDays: file.conclusion?.workWithin?.days,
    letting: lettingOf(leaves, file),
    edition: file.edition as F["edition"],
    use: leaves.fact(MATTER.premisesUse, file.brief?.use, ["brief", "use"]),
    nation: leaves.fact(MATTER.nation, file.brief?.nation, ["brief", "nation"]),
    tenure: leaves.fact(MATTER.tenure, file.brief?.tenure, ["brief", "tenure"]),
    inspectedOn: file.inspectedOn as F["inspectedOn"],
    visits: file.visits ?? [],
    instruments: file.instruments ?? [],
    observations: file.observations ?? [],
    observationsListed: listed(MATTER.observationsListed, file.observations !== undefined, ["observations"]),
    ownFigures: file.ownFigures ?? [],
    standingViews: file.standingViews ?? [],
    inspected: file.inspected ?? [],
    earthingOff: file.earthingOff ?? [],
    limitations: file.limitations ?? [],
    sampling: file.extent?.sampling ?? [],
    statedOutcome: file.conclusion?.outcome,
    decisionRule: file.decisionRule,
    supply: resolveSupply(leaves, file.supply ?? {}),
    boards: Object.freeze(boards),
    boardsListed: listed(MATTER.boardsListed, file.boards !== undefined && !short.boards, ["boards"]),
    circuits: Object.freeze(boards.flatMap(({ circuits }) => circuits)),
    things: resolveThings(leaves, file),
  });
}

function lettingOf(leaves: Leaves, { brief }: DraftFile): Letting {
  const entry = brief?.letting;
  return Object.freeze({
    ...leavesOf(LETTING, leaves, entry, ["brief", "letting"]),
    starts: entry?.starts,
    granted: entry?.granted,
    equipmentChecked: entry?.equipmentChecked,
  });
}
