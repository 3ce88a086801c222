import type { Facts, Positions, Where } from "../../engine/reason-view.ts";
import { join, membersOf, THING_LISTS } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { Answered } from "./answered.ts";
import { textAt, valuesBelow } from "./read.ts";

/** What is asked of the engine about an observation: its subject, what is known of it and where it is. */
export interface Asked {
  readonly topic: string;
  readonly facts: Facts;
  readonly positions: Positions;
  readonly place: Where;
}

/** What an observation as recorded asks. */
export function askedOf(record: JobRecord, observation: string): Asked {
  const [board, circuit] = [textAt(record, join(observation, "board")), textAt(record, join(observation, "circuit"))];
  return {
    topic: textAt(record, join(observation, "topic")),
    facts: valuesBelow(record, join(observation, "facts")) as Facts,
    positions: Object.fromEntries(
      Object.entries(valuesBelow(record, join(observation, "positions"))).flatMap(([point, value]) => {
        const position = (value as { readonly position?: Value }).position;
        return typeof position === "string" ? [[point, position]] : [];
      }),
    ),
    place: {
      ...(board === "" ? {} : circuit === "" ? { board } : { board, circuit }),
      ...partsNamed(record, observation),
    },
  };
}

/** The things it speaks of or brings in, and the RCDs and bonding conductors among the checks that it names. */
function partsNamed(record: JobRecord, observation: string): Pick<Where, "parts"> {
  const named = record.value(join(observation, "answers"));
  const answers = (Array.isArray(named) ? named : []) as unknown as readonly Answered[];
  const things = membersOf(record, join(observation, "things")).map((member) => {
    const at = join(observation, `things/${member}`);
    return { part: textAt(record, join(at, "thing")), board: textAt(record, join(at, "board")) };
  });
  const brought = THING_LISTS.flatMap((kind) => membersOf(record, join(observation, `brings/${kind}`)));
  const parts = [...things, ...brought.map((part) => ({ part, board: undefined })), ...answers].flatMap(
    ({ part = "", board = "" }) => (part === "" ? [] : [board === "" ? { id: part } : { id: part, board }]),
  );
  return parts.length === 0 ? {} : { parts };
}
