import { type Fact, fact, type Ground, matter } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";

/** Something seen that makes explanations of a ring's readings likelier. */
interface Speaks {
  readonly topic: string;
  readonly fact: string;
  readonly words: readonly string[];
  /** Explanations, by the first word of their key. */
  readonly for: readonly string[];
}

const OF_JOINTS = ["joint", "terminal"];

/** What an observation of the circuit has to state. A new one is one line. */
const SPEAKS: readonly Speaks[] = [
  { topic: "accessory-connection-loose", fact: "connection", words: ["loose", "arcing"], for: OF_JOINTS },
  { topic: "accessory-overheated", fact: "heat-marks", words: ["browned", "melted"], for: OF_JOINTS },
  { topic: "board-terminations", fact: "grip", words: ["slack", "loose"], for: OF_JOINTS },
  { topic: "board-terminations", fact: "clamps-insulation", words: ["yes"], for: OF_JOINTS },
  { topic: "cpc-resistance-high", fact: "cause", words: ["poor-joint"], for: OF_JOINTS },
  { topic: "socket-no-cpc", fact: "earth-path", words: ["uncertain", "open"], for: ["open", "absent", "off"] },
];

/** So many times as common is what was seen at the circuit as where nobody saw anything: a judgement, not a count. */
const TIMES = 20;

const SEEN = matter("ring-seen", "what was seen at the circuit speaks for an explanation of its readings");

/** What was seen at a circuit: how many times likelier it makes explanations, and the facts it rests on. */
export function seenAt(
  { path, id }: Circuit,
  { observations, boards }: Installation,
): { readonly times: ReadonlyMap<string, number>; readonly grounds: readonly Ground[] } {
  const times = new Map<string, number>();
  const grounds: Ground[] = [];
  const board = boards.find((one) => one.path[1] === path[1])?.id;
  for (const [i, entry] of observations.entries()) {
    if (entry.circuit !== id || (entry.board !== undefined && entry.board !== board)) continue;
    for (const one of SPEAKS) {
      const stated = entry.topic === one.topic ? entry.facts?.[one.fact] : undefined;
      const word = stated === true ? "yes" : stated;
      if (typeof word !== "string" || !one.words.includes(word)) continue;
      for (const explanation of one.for) times.set(explanation, TIMES);
      const seen: Fact<string> = fact(SEEN, word, ["observations", i, "facts", one.fact], `${one.fact} ${word}`);
      grounds.push(seen);
    }
  }
  return { times, grounds };
}
