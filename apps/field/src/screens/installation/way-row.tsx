import { useState } from "preact/hooks";
import { usePlace } from "../../engine/follow.ts";
import { usePicked } from "../../keypad/use-record.ts";
import { VerdictWord } from "../../keypad/verdict.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import type { Change } from "./changes.ts";
import { WayActions } from "./way-actions.tsx";
import { type WayShown, wayShown } from "./way-shown.ts";

/** What was done, to be told, and how to take it back. */
export interface Said {
  readonly words: string;
  readonly undo?: readonly Change[];
}

export interface WayRowProps {
  readonly board: string;
  readonly circuit: string;
  readonly depth: number;
  readonly last: boolean;
  readonly current: boolean;
  readonly onAddAfter: () => void;
  readonly onAddBoard: () => void;
  readonly onSaid: (said: Said) => void;
}

/** One way of a board: its device, its RCD, what it supplies, and how it stands. */
export function WayRow(props: WayRowProps) {
  const { board, circuit, depth, last, current } = props;
  const { job } = useSession();
  const path = `boards/${board}/circuits/${circuit}`;
  const [open, setOpen] = useState(false);
  const { name, device, residual, rcdWords } = JSON.parse(
    usePicked((record) => JSON.stringify(wayShown(record, board, circuit))),
  ) as WayShown;
  const judged = usePlace(path);
  return (
    <li class={last ? "line-row way-row last" : "line-row way-row"} style={{ "--depth": depth }}>
      <a
        class="line-link"
        href={linkTo("job", job, "installation", board, circuit)}
        aria-current={current ? "page" : undefined}
      >
        <span class="line-device">{device === "" ? INSTALLATION.noDevice : device}</span>
        {residual !== "" && (
          <span class="line-rcd">
            <span aria-hidden="true">{residual}</span>
            <span class="unseen">{rcdWords}</span>
          </span>
        )}
        <span class="line-name">
          {name}
          {judged !== undefined && <VerdictWord verdict={judged.worst} word={judged.worstWord} />}
        </span>
      </a>
      <button type="button" class="line-more" aria-label={INSTALLATION.more(name)} onClick={() => setOpen(true)}>
        {INSTALLATION.moreShort}
      </button>
      {open && <WayActions {...props} name={name} onClose={() => setOpen(false)} />}
    </li>
  );
}
