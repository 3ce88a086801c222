import { keepSetting, setting } from "../record/store.ts";

/** Where on the screen somebody was: the address and the field. */
interface Place {
  readonly hash: string;
  readonly field?: string;
}

const NAME = "place";

/** The field to go to once it is drawn, on the address it belongs to. */
let wanted: Place | undefined;

/** Goes back to where the app was left, before anything is drawn. */
export async function restorePlace(): Promise<void> {
  const left = await setting<Place>(NAME).catch(() => undefined);
  if (left === undefined) return;
  if (location.hash === "") history.replaceState(null, "", left.hash);
  if (location.hash === left.hash && left.field !== undefined) wanted = left;
}

/** Remembers every place that is reached and every field that is entered. */
export function rememberPlaces(): void {
  const remember = (field?: string) =>
    keepSetting(NAME, { hash: location.hash, ...(field === undefined ? {} : { field }) }).catch(() => undefined);
  addEventListener("hashchange", () => {
    wanted = undefined;
    void remember();
  });
  addEventListener("focusin", ({ target }) => {
    if (target instanceof HTMLElement && target.id !== "" && target.closest("main") !== null) void remember(target.id);
  });
}

/**
 * Moves the focus to the field that was left; else, where somebody came here from another place, to where the screen says
 * that one starts, or to its heading.
 */
export function settleFocus(heading: HTMLElement | null, moved: boolean): void {
  const field = wanted?.hash === location.hash ? wanted.field : undefined;
  wanted = undefined;
  if (field === undefined) {
    if (moved) {
      scrollTo(0, 0);
      // The innermost of them: a field that wants a value, within what was opened.
      const starts = document.querySelectorAll<HTMLElement>("main [data-start]");
      (starts[starts.length - 1] ?? heading)?.focus();
    }
    return;
  }
  // A screen may draw its fields only when something it needs has come.
  let tries = 40;
  const seek = () => {
    const found = document.getElementById(field);
    if (found !== null) {
      found.focus({ preventScroll: true });
      found.scrollIntoView({ block: "center" });
    } else if (--tries > 0) setTimeout(seek, 50);
  };
  seek();
}
