import { dropSetting, keepSetting, setting } from "../record/store.ts";
import { routeOf } from "./route.ts";

/** Where on the screen somebody was: the address and the field. */
interface Place {
  readonly hash: string;
  readonly field?: string;
}

const NAME = "place";

/** The field to go to once it is drawn, on the address it belongs to. */
let wanted: Place | undefined;

/** Whether the place that was remembered cannot be read, so that the app opens somewhere else. */
let lost = false;

export function isPlaceLost(): boolean {
  return lost;
}

/** Goes back to where the app was left, before anything is drawn. What cannot be read is forgotten, and told. */
export async function restorePlace(): Promise<void> {
  const left = await setting<unknown>(NAME).catch(() => undefined);
  if (left === undefined) return;
  if (!isPlace(left)) {
    lost = true;
    // Not waited for: what cannot be forgotten now is met again at the next start, and does no harm then either.
    void dropSetting(NAME).catch(() => undefined);
    return;
  }
  if (location.hash === "") history.replaceState(null, "", left.hash);
  if (location.hash === left.hash && left.field !== undefined) wanted = left;
}

/** Whether something that was remembered is a place that can be gone to. */
function isPlace(left: unknown): left is Place {
  if (typeof left !== "object" || left === null) return false;
  const { hash, field } = left as { readonly [name: string]: unknown };
  return (
    typeof hash === "string" &&
    (hash === "" || hash.startsWith("#")) &&
    routeOf(hash) !== undefined &&
    (field === undefined || typeof field === "string")
  );
}

/** Remembers every place that is reached and every field that is entered. */
export function rememberPlaces(): void {
  const remember = async (field?: string) => {
    const { hash } = location;
    if (routeOf(hash) === undefined) return;
    await keepSetting(NAME, { hash, ...(field === undefined ? {} : { field }) }).catch(() => undefined);
  };
  addEventListener("hashchange", () => {
    wanted = undefined;
    lost = false;
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
