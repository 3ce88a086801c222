import type { FieldGroup } from "../../keypad/fields.ts";
import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { READINGS } from "../../words/readings.ts";
import { rcdName } from "../installation/rcd-name.ts";
import { faultCurrentFrom, figureAt, loopAt } from "./expected.ts";
import { rcdFields } from "./rcd-fields.ts";
import { servedBy } from "./served.ts";

/** The tests at a board: what holds for all its circuits, and its RCDs, each once for every circuit it serves. */
export function boardGroups(record: JobRecord, boardId: string): readonly FieldGroup[] {
  const board = `boards/${boardId}`;
  const isThreePhase = record.value(join(board, "phases")) === 3;
  const at = (name: string) => ({ path: join(board, `readings/${name}`) });
  const ze = figureAt(record, "supply/readings/ze", "ohm");
  const expectedLoop = record.value(join(board, "fedFrom")) === "supply" ? ze : undefined;
  const expectedCurrent = faultCurrentFrom(record, loopAt(record, board));
  const isTT = record.value("supply/earthing") === "TT";
  return [
    {
      title: READINGS.conditions,
      fields: [
        {
          spot: { path: "conditions/conductorTemperature" },
          kind: "temperature",
          label: READINGS.temperature,
        },
      ],
    },
    {
      title: READINGS.atBoard,
      fields: [
        {
          spot: at("zdb"),
          kind: "loop",
          label: READINGS.zdb,
          hint: READINGS.zdbHint,
          ...(expectedLoop === undefined ? {} : { expected: expectedLoop }),
          ...(isTT ? { usualOf: "electrode" as const } : {}),
        },
        {
          spot: at("faultCurrent"),
          kind: "fault-current",
          label: READINGS.faultCurrent,
          hint: READINGS.faultCurrentHint,
          ...(expectedCurrent === undefined ? {} : { expected: expectedCurrent }),
        },
        ...(isThreePhase
          ? [
              {
                spot: at("faultCurrentMethod"),
                label: READINGS.faultCurrentMethod,
                words: READINGS.words.faultCurrentMethod,
              },
              { spot: at("phaseSequence"), label: READINGS.phaseSequence, words: READINGS.words.polarity },
            ]
          : []),
        { spot: at("polarity"), label: READINGS.polarity, words: READINGS.words.polarity },
      ],
    },
    ...membersOf(record, join(board, "rcds")).map((name) => ({
      title: READINGS.boardRcd(rcdName(record, board, name)),
      help: servedBy(record, boardId, name),
      fields: rcdFields({ path: join(board, `rcds/${name}`) }, join(board, `rcds/${name}`)),
    })),
  ];
}
