import { Component, type ComponentChildren } from "preact";
import { Notice } from "../parts/notice.tsx";
import { TROUBLE } from "../words/shell.ts";
import { SaveJobFile } from "./rescue.tsx";
import { linkTo } from "./route.ts";

interface TroubleProps {
  /** The job whose file is offered; none outside a job. */
  readonly job: string | undefined;
  readonly children: ComponentChildren;
}

/** Whatever fails below, the screen says what to do instead of staying blank. */
export class Trouble extends Component<TroubleProps, { readonly error: unknown }> {
  override state = { error: undefined as unknown };

  override componentDidCatch(error: unknown): void {
    this.setState({ error: error ?? "unknown" });
  }

  override render({ job, children }: TroubleProps) {
    const { error } = this.state;
    if (error === undefined) return children;
    return (
      <Notice kind="alert" title={TROUBLE.title}>
        <p>{TROUBLE.kept}</p>
        <p>{TROUBLE.todo}</p>
        <div class="stack">
          <button type="button" class="main" onClick={() => this.setState({ error: undefined })}>
            {TROUBLE.again}
          </button>
          {job !== undefined && <SaveJobFile job={job} />}
          <button type="button" onClick={() => location.reload()}>
            {TROUBLE.reload}
          </button>
          {/* Where a whole job fails to open, it may not stand between a person and the others. */}
          <a class="button" href={linkTo("jobs")}>
            {TROUBLE.jobs}
          </a>
        </div>
        <details>
          <summary>{TROUBLE.details}</summary>
          <p class="small">{error instanceof Error ? `${error.name}: ${error.message}` : String(error)}</p>
        </details>
      </Notice>
    );
  }
}
