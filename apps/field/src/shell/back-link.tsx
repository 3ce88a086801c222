import { SHELL } from "../words/shell.ts";

/** The way up from a screen, in the corner of the header. */
export function BackLink({ to, words }: { readonly to: string; readonly words: string }) {
  return (
    <a class="button back" href={to}>
      <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
        <path d="M15 4 7 12l8 8" fill="none" stroke="currentColor" stroke-width="2.5" />
      </svg>
      <span class="unseen">{`${SHELL.back}: ${words}`}</span>
    </a>
  );
}
