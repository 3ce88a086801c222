import type { Verdict } from "@good-grounds/core";
import { useState } from "preact/hooks";
import { engine } from "../engine/client.ts";
import type { FindingView, Line } from "../engine/view.ts";
import { Dialog } from "../parts/dialog.tsx";
import { Picture } from "../parts/picture.tsx";
import { KEYPAD } from "../words/keypad.ts";
import { PARTS } from "../words/parts.ts";

/** A verdict as a mark whose weight grows with it: a rule, an empty box, a box half full, a full one. Words stand beside. */
function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  return (
    <svg class="verdict-mark" width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      {verdict === "met" || verdict === "not-applicable" ? (
        <line x1="2" x2="14" y1="8" y2="8" stroke="currentColor" stroke-width={verdict === "met" ? 2 : 0.8} />
      ) : (
        <rect
          x="2"
          y="2"
          width="12"
          height="12"
          fill={verdict === "not-met" ? "currentColor" : "none"}
          stroke="currentColor"
          stroke-width="1.6"
          stroke-dasharray={verdict === "not-known" ? "3 2" : undefined}
        />
      )}
      {verdict === "too-near" && <rect x="2" y="8" width="12" height="6" fill="currentColor" />}
    </svg>
  );
}

/** Mark and word of a verdict. */
export function VerdictWord({ verdict, word }: { readonly verdict: Verdict; readonly word: string }) {
  return (
    <span class={verdict === "not-met" || verdict === "too-near" ? "verdict heavy" : "verdict"}>
      <VerdictMark verdict={verdict} />
      {word}
    </span>
  );
}

/** What a verdict says in one line: the margin, the limit, or what is still needed. */
export function verdictWords(finding: FindingView): string {
  const { verdict, marginWords, limit, missing, words } = finding;
  if (verdict === "not-known")
    return [limit, missing.length === 0 ? "" : KEYPAD.needs(missing.slice(0, 2).join(", "))].filter(Boolean).join("; ");
  return [limit, marginWords].filter(Boolean).join(", ") || words;
}

interface FindingLineProps {
  readonly finding: FindingView;
  /** The place of the finding, for its argument. */
  readonly path: string;
  readonly titled?: boolean;
}

/** A finding in a few lines, its bar drawn and its argument at hand. */
export function FindingLine({ finding, path, titled = false }: FindingLineProps) {
  const [open, setOpen] = useState(false);
  const { verdict, bar, title, words, remarks, memory } = finding;
  const heavy = verdict === "not-met" || verdict === "too-near";
  return (
    <div class="finding">
      {titled && <strong>{title}</strong>}
      <button type="button" class="plain finding-line" onClick={() => setOpen(true)}>
        <VerdictWord verdict={verdict} word={finding.verdictWord} />
        <span class="small">{verdictWords(finding)}</span>
        <span class="small why">{KEYPAD.why}</span>
      </button>
      {bar !== "" && <Picture svg={bar} />}
      {(heavy || titled) &&
        remarks.map((remark) => (
          <p key={remark} class="small">
            {remark}
          </p>
        ))}
      {memory && titled && <p class="small quiet">{KEYPAD.memory}</p>}
      {open && (
        <Dialog title={title} onClose={() => setOpen(false)}>
          <p>
            <VerdictWord verdict={verdict} word={finding.verdictWord} /> {words}
          </p>
          {bar !== "" && <Picture svg={bar} />}
          {remarks.map((remark) => (
            <p key={remark}>{remark}</p>
          ))}
          {memory && <p class="quiet">{KEYPAD.memory}</p>}
          <Argument path={path} check={finding.check} />
          <div class="row">
            <button type="button" onClick={() => setOpen(false)}>
              {PARTS.close}
            </button>
          </div>
        </Dialog>
      )}
    </div>
  );
}

/** The argument of a finding, fetched when it is looked at. */
function Argument({ path, check }: { readonly path: string; readonly check: string }) {
  const [lines, setLines] = useState<readonly Line[] | "asked">();
  if (lines === undefined) {
    setLines("asked");
    engine.argument(path, check).then(setLines, () => setLines([]));
  }
  if (lines === undefined || lines === "asked") return <p aria-busy="true">{KEYPAD.weighing}</p>;
  if (lines.length === 0) return <p>{KEYPAD.argumentNone}</p>;
  return (
    <ul class="argument">
      {lines.map(({ depth, tag, words, note }, i) => (
        <li key={i} style={{ "--depth": Math.min(depth, 8) }}>
          <span class="tag">{tag}</span> {words}
          {note !== "" && <span class="quiet small"> ({note})</span>}
        </li>
      ))}
    </ul>
  );
}
