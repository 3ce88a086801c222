import { useId } from "preact/hooks";
import { bytes } from "../shell/bytes.ts";
import { COPIES } from "../words/copies.ts";

interface ProgressProps {
  /** What is being done. */
  readonly what: string;
  /** How far it is, in bytes; of nothing where that is not known yet. */
  readonly done: number;
  readonly of: number;
  readonly onStop: () => void;
}

/** How far something is that takes a while, and the way to call it off. */
export function Progress({ what, done, of, onStop }: ProgressProps) {
  const id = useId();
  return (
    <div class="stack">
      <label class="progress" for={id}>
        <span>{of === 0 ? COPIES.beginning(what) : COPIES.how(what, bytes(done), bytes(of))}</span>
        {of === 0 ? <progress id={id} /> : <progress id={id} value={done} max={of} />}
      </label>
      <button type="button" onClick={onStop}>
        {COPIES.stop}
      </button>
    </div>
  );
}
