import { SHELL } from "../words/shell.ts";
import { BackLink } from "./back-link.tsx";
import { useJob } from "./job.ts";
import { titleOf } from "./job-label.ts";
import { Kept } from "./kept.tsx";
import { linkTo } from "./route.ts";
import { ThemeButton } from "./theme-button.tsx";
import { UndoButton } from "./undo-button.tsx";

/** The head of an open job: back, its name, what is kept, the light. */
export function Header({ at, rest }: { readonly at: string | undefined; readonly rest: readonly string[] }) {
  const session = useJob();
  const up =
    at === undefined
      ? { words: SHELL.jobs, link: linkTo("jobs") }
      : rest.length > 0
        ? { words: SHELL.back, link: linkTo("job", session.job, at, ...rest.slice(0, -1)) }
        : { words: SHELL.overview, link: linkTo("job", session.job) };
  return (
    <header class="top">
      <BackLink to={up.link} words={up.words} />
      <div class="job">
        <strong class="job-name">{titleOf(session.record)}</strong>
        <Kept />
      </div>
      <UndoButton />
      <ThemeButton />
    </header>
  );
}
