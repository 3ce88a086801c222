import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { IssueMade, PointToAnswer } from "../../engine/issue-view.ts";
import { type KeptIssue, keepIssue, keptRegister } from "../../issued/kept.ts";
import { secondNow } from "../../issued/second-now.ts";
import { PassphraseField } from "../../parts/passphrase-field.tsx";
import { PlainField } from "../../parts/plain-field.tsx";
import { ISSUE } from "../../words/issue.ts";
import { SaveIssue } from "./save-issue.tsx";

interface NewIssueProps {
  readonly text: string;
  readonly keyText: string;
  /** Everything issued on this device. */
  readonly issues: readonly KeptIssue[];
  readonly onMade: () => void;
}

interface Made {
  readonly issue: KeptIssue;
  readonly document: Uint8Array;
  /** Why it could not be kept here. */
  readonly notKept?: string;
}

/** What came of making an issue. */
type Ended = Made | { readonly why: readonly string[] };

type State = "ready" | "working" | Ended;

/** One issue in the making: reasons for what stands open, the passphrase, and what came of it. */
export function NewIssue({ text, keyText, issues, onMade }: NewIssueProps) {
  const [points, setPoints] = useState<readonly PointToAnswer[] | { readonly failed: string }>();
  const [reasons, setReasons] = useState<ReadonlyMap<string, string>>(new Map());
  const [passphrase, setPassphrase] = useState("");
  const [state, setState] = useState<State>("ready");
  useEffect(() => {
    let left = false;
    engine.pointsToAnswer(text).then(
      (found) => !left && setPoints(found),
      (error: unknown) => !left && setPoints({ failed: messageOf(error) }),
    );
    return () => {
      left = true;
    };
  }, [text]);
  if (points === undefined) return <p aria-busy="true">{ISSUE.looking}</p>;
  if ("failed" in points) return <p class="fault">{ISSUE.failed(points.failed)}</p>;
  if (typeof state === "object" && "issue" in state) return <Done {...state} />;
  const answered = points.every(({ name }) => (reasons.get(name) ?? "").trim() !== "");
  const isReady = answered && passphrase !== "" && state !== "working";
  const sign = async () => {
    setState("working");
    const given = points.map(({ name }) => ({ point: name, words: reasons.get(name) ?? "" }));
    try {
      const next = await issued(text, keyText, given, passphrase, issues);
      setState(next);
      if ("issue" in next) onMade();
    } catch (error) {
      setState({ why: [messageOf(error)] });
    }
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (isReady) void sign();
      }}
    >
      <p>{ISSUE.open(points.length)}</p>
      {points.map(({ name, words }) => (
        <fieldset key={name} class="sheet">
          <legend>{words}</legend>
          <PlainField
            label={ISSUE.why}
            rows={2}
            value={reasons.get(name) ?? ""}
            onType={(typed) => setReasons((before) => new Map(before).set(name, typed))}
          />
        </fieldset>
      ))}
      <PassphraseField label={ISSUE.passphrase} value={passphrase} onType={setPassphrase} />
      <p>
        <button type="submit" class="main" disabled={!isReady}>
          {ISSUE.sign}
        </button>
      </p>
      <div role="status" aria-busy={state === "working" ? "true" : undefined}>
        {state === "working" && <p>{ISSUE.working}</p>}
        {typeof state === "object" && (
          <div class="fault">
            <p>{ISSUE.refused}</p>
            {state.why.map((one) => (
              <p key={one}>{one}</p>
            ))}
          </div>
        )}
      </div>
    </form>
  );
}

function Done({ issue, document, notKept }: Made) {
  return (
    <>
      <p role="status" class={notKept === undefined ? undefined : "fault"}>
        {notKept === undefined ? ISSUE.made(issue.number) : ISSUE.notKept(notKept)}
      </p>
      <SaveIssue issue={issue} document={document} />
    </>
  );
}

async function issued(
  json: string,
  key: string,
  reasons: readonly { readonly point: string; readonly words: string }[],
  passphrase: string,
  issues: readonly KeptIssue[],
): Promise<Ended> {
  const at = secondNow();
  const register = await keptRegister();
  const before = issues.map(({ record }) => record);
  const made: IssueMade = await engine.issue({ json, key, reasons, passphrase, register, before, at });
  if (!made.made) return { why: made.why };
  const { document, record, name, report, number } = made;
  const issue = { report, number, at, name, record };
  try {
    await keepIssue(issue, document);
    return { issue, document };
  } catch (error) {
    return { issue, document, notKept: messageOf(error) };
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
