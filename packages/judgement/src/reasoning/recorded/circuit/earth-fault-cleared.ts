import { residualsBefore } from "@good-grounds/computations";
import { type Fact, fact, factNotKnown, isKnown, isKnownFact, matter } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import type { SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty } from "../property.ts";
import { statesOf } from "../rcd/rcd-state.ts";
import { circuitsDisconnect, disconnectionOf, isProven } from "./circuits-disconnect.ts";

const CLEARED = matter("earth-fault-cleared", "whether anything opens on an earth fault");

/** How far above nominal the voltage of a supply may be (Electricity Safety, Quality and Continuity Regulations 2002). */
const HIGHEST = 1.1;
/** By the fusing factor of a semi-enclosed fuse, the greatest there is, twice its rated current opens any device. */
const OPENS = 2;

/**
 * Whether anything opens on an earth fault of the circuit spoken of, in time or late. No: the current that flows is no
 * more than the rated current of the fuse or breaker, which it carries without end, and every RCD on the way is dead or
 * there is none. Of a board or the whole installation, with no circuit named, each of its circuits has to say so. Yes only
 * where that is so of every circuit of the installation: a place may have others.
 */
export const earthFaultCleared: RecordedProperty = Object.freeze({
  id: "earth-fault-cleared",
  name: CLEARED.name,
  values: ["yes", "no"],
  read(spoken: SpokenOf) {
    const { installation } = spoken;
    const there = circuitsOf(spoken);
    const [first] = there;
    if (first !== undefined && there.every((one) => saysOf(one, spoken) === "no")) {
      const words =
        there.length === 1 ? whyNot(first) : `on none of its ${there.length} circuits; on the first ${whyNot(first)}`;
      const leaf = fact(CLEARED, false, [...first.path, "readings"], words, "measured");
      return [{ of: first.path, leaf, values: ["no"] }];
    }
    const path = ["boards"];
    const isSo = allListed(spoken) && installation.circuits.every((one) => saysOf(one, spoken) === "yes");
    const leaf: Fact<boolean> = isSo
      ? fact(CLEARED, true, path, "on every circuit", "measured")
      : factNotKnown(CLEARED, path);
    return [{ of: path, leaf, values: isSo ? ["yes"] : [] }];
  },
});

/** The circuit spoken of, else all of the board, else all there are. */
function circuitsOf({ circuit, board, place, installation }: SpokenOf): readonly Circuit[] {
  if (circuit !== undefined) return [circuit];
  if (place.circuit !== undefined) return [];
  if (board !== undefined) return board.circuits;
  return place.board === undefined ? installation.circuits : [];
}

function allListed(spoken: SpokenOf): boolean {
  const { boards, boardsListed, circuits } = spoken.installation;
  if (circuits.length === 0) return false;
  if (circuitsDisconnect.read(spoken).some(({ values }) => values.includes("yes"))) return true;
  return isKnownFact(boardsListed) && boards.every(({ circuitsListed }) => isKnownFact(circuitsListed));
}

function saysOf(circuit: Circuit, spoken: SpokenOf): "yes" | "no" | "open" {
  const disconnection = disconnectionOf(circuit.path, spoken);
  if (isProven(disconnection)) return "yes";
  if (disconnection?.verdict === "met") return "open";
  const said = [byDevice(circuit, spoken), byRcds(circuit)];
  if (said.includes("yes")) return "yes";
  return said.every((one) => one === "no") ? "no" : "open";
}

/** By the current of an earth fault against the rated current of the fuse or breaker. */
function byDevice({ readings, board, device }: Circuit, { installation }: SpokenOf): "yes" | "no" | "open" {
  const { nominalVoltage } = installation.supply;
  const loop = isKnown(readings.zs) ? readings.zs : board.zdb;
  if (!isKnown(nominalVoltage) || !isKnown(loop) || !isKnown(device.rated)) return "open";
  if ((nominalVoltage.high * HIGHEST) / loop.low <= device.rated.low) return "no";
  const least = nominalVoltage.low / HIGHEST / loop.high;
  return loop === readings.zs && least >= OPENS * device.rated.high ? "yes" : "open";
}

/** By what the tests of the RCDs on the way showed: one that opened, however late, opens. */
function byRcds(circuit: Circuit): "yes" | "no" | "open" {
  const { present, devices } = residualsBefore(circuit);
  if (isKnownFact(present) && !present.word) return "no";
  const states = devices.map(({ test }) => (test.kind === "rcd-readings" ? statesOf(test) : []));
  const isOf = (names: readonly string[]) => (each: readonly string[]) =>
    each.length > 0 && each.every((one) => names.includes(one));
  if (states.some(isOf(["works", "slow"]))) return "yes";
  return states.length > 0 && states.every(isOf(["dead"])) ? "no" : "open";
}

function whyNot({ readings, board, device }: Circuit): string {
  const loop = isKnown(readings.zs) ? readings.zs : board.zdb;
  const written = (one: typeof loop | typeof device.rated) =>
    one.kind === "measured" || one.kind === "seen" ? one.detail.text : "";
  return `nothing does: ${written(loop)} lets no more flow than the ${written(device.rated)} device carries, and no RCD opens`;
}
