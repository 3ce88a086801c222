import { usePlace } from "../../engine/follow.ts";
import { usePicked, useRecord } from "../../keypad/use-record.ts";
import { VerdictWord } from "../../keypad/verdict.tsx";
import { membersOf } from "../../record/document.ts";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { READINGS } from "../../words/readings.ts";
import { boardGroups } from "./board-fields.ts";
import { boardName, circuitName } from "./names.ts";
import { circuitProgress, progressOf } from "./progress.ts";

/** Every board and circuit with how far its readings are; `current` is what is open beside it. */
export function CircuitList({ current }: { readonly current?: string }) {
  const { job } = useSession();
  const record = useRecord();
  const boards = membersOf(record, "boards");
  if (boards.length === 0)
    return (
      <>
        <p>{READINGS.noBoards}</p>
        <a class="button main" href={linkTo("job", job, "installation")}>
          {READINGS.toInstallation}
        </a>
      </>
    );
  return (
    <>
      {boards.map((board) => (
        <section key={board} aria-label={boardName(record, board)}>
          <h2>{boardName(record, board)}</h2>
          <ul class="ways">
            <li>
              <a
                class="way"
                href={linkTo("job", job, "readings", board)}
                aria-current={current === board ? "page" : undefined}
              >
                <span class="way-name">{READINGS.board(boardName(record, board))}</span>
                <BoardProgress board={board} />
              </a>
            </li>
            {membersOf(record, `boards/${board}/circuits`).map((circuit) => (
              <CircuitRow key={circuit} board={board} circuit={circuit} current={current === `${board}/${circuit}`} />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function BoardProgress({ board }: { readonly board: string }) {
  const words = usePicked((record) => {
    const { done, all } = progressOf(record, boardGroups(record, board));
    return READINGS.done(done, all);
  });
  return <span class="quiet small">{words}</span>;
}

interface CircuitRowProps {
  readonly board: string;
  readonly circuit: string;
  readonly current: boolean;
}

function CircuitRow({ board, circuit, current }: CircuitRowProps) {
  const { job } = useSession();
  const name = usePicked((record) => circuitName(record, board, circuit));
  const words = usePicked((record) => {
    const { done, all } = circuitProgress(record, board, circuit);
    return done === 0 ? READINGS.nothing : READINGS.done(done, all);
  });
  const judged = usePlace(`boards/${board}/circuits/${circuit}`);
  return (
    <li>
      <a class="way" href={linkTo("job", job, "readings", board, circuit)} aria-current={current ? "page" : undefined}>
        <span class="way-name">{name}</span>
        <span class="quiet small">{words}</span>
        {judged !== undefined && <VerdictWord verdict={judged.worst} word={judged.worstWord} />}
      </a>
    </li>
  );
}
