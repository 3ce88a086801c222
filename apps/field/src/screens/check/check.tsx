import { useEffect, useId, useRef, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { CheckedFiles } from "../../engine/issue-view.ts";
import { PlainField } from "../../parts/plain-field.tsx";
import { BackLink } from "../../shell/back-link.tsx";
import { linkTo } from "../../shell/route.ts";
import { CHECK } from "../../words/issue.ts";
import { SHELL } from "../../words/shell.ts";
import { Checked } from "./checked.tsx";

type State = "ready" | "working" | { readonly failed: string } | { readonly found: CheckedFiles };

/** More than anything handed in has, in bytes; a larger file is refused before it is read. */
const LARGEST = 200 * 1024 * 1024;

/** Checking issued reports: files in, five answers on each out. It needs no job and no signal. */
export default function Check() {
  const heading = useRef<HTMLHeadingElement>(null);
  const [root, setRoot] = useState("");
  const [files, setFiles] = useState<readonly File[]>([]);
  const [state, setState] = useState<State>("ready");
  const turn = useRef(0);
  const digits = root.toLowerCase().replaceAll(/\s/g, "");
  const wrong = digits !== "" && !/^[0-9a-f]{64}$/.test(digits);
  useEffect(() => {
    document.title = `${CHECK.title} – ${SHELL.app}`;
    heading.current?.focus();
  }, []);
  // Asked again whenever the files or the root are others: what is shown is always about what stands above it.
  useEffect(() => {
    if (files.length === 0 || wrong) return;
    turn.current += 1;
    const mine = turn.current;
    setState("working");
    const show = (next: State) => {
      if (turn.current === mine) setState(next);
    };
    checked(files, digits === "" ? undefined : digits).then(
      (found) => show({ found }),
      (error: unknown) => show({ failed: error instanceof Error ? error.message : String(error) }),
    );
  }, [files, digits]);
  return (
    <>
      <header class="top">
        <BackLink to={linkTo("jobs")} words={SHELL.jobs} />
        <div class="job">
          <strong class="job-name">{SHELL.app}</strong>
        </div>
      </header>
      <main id="main" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          {CHECK.title}
        </h1>
        <p class="quiet">{CHECK.help}</p>
        <div class="columns">
          <div>
            <ChooseFiles onFiles={setFiles} />
            <PlainField
              label={CHECK.root}
              help={CHECK.rootHelp}
              value={root}
              onType={setRoot}
              fault={wrong ? CHECK.rootFault : undefined}
            />
          </div>
          <div role="status" aria-busy={state === "working" ? "true" : undefined}>
            {state === "working" && <p>{CHECK.working}</p>}
            {typeof state === "object" && "failed" in state && <p class="fault">{CHECK.failed(state.failed)}</p>}
            {typeof state === "object" && "found" in state && <Checked found={state.found} />}
          </div>
        </div>
      </main>
    </>
  );
}

async function checked(files: readonly File[], root: string | undefined): Promise<CheckedFiles> {
  const large = files.find(({ size }) => size > LARGEST);
  if (large !== undefined) throw new Error(CHECK.tooLarge(large.name));
  const read = await Promise.all(
    files.map(async (file) => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) })),
  );
  return engine.checkIssued(read, root);
}

function ChooseFiles({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) {
  const id = useId();
  return (
    <div>
      <label class="button main file">
        {CHECK.choose}
        <input
          type="file"
          multiple
          aria-describedby={id}
          onChange={({ currentTarget }) => {
            const chosen = [...(currentTarget.files ?? [])];
            currentTarget.value = "";
            if (chosen.length > 0) onFiles(chosen);
          }}
        />
      </label>
      <p id={id} class="quiet small">
        {CHECK.chooseHelp}
      </p>
    </div>
  );
}
