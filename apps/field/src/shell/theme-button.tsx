import { useState } from "preact/hooks";
import { SHELL } from "../words/shell.ts";
import { chooseTheme, THEMES, type Theme, theme } from "./theme.ts";

/** Goes round the three ways of lighting the app. */
export function ThemeButton() {
  const [chosen, setChosen] = useState<Theme>(theme);
  const next = THEMES[(THEMES.indexOf(chosen) + 1) % THEMES.length] as Theme;
  return (
    <button
      type="button"
      class="theme"
      onClick={() => {
        chooseTheme(next);
        setChosen(next);
      }}
    >
      <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
        <circle cx="12" cy="12" r="8" fill="none" stroke="currentColor" stroke-width="2" />
        {chosen !== "light" && <path d={chosen === "dim" ? FULL : HALF} fill="currentColor" />}
      </svg>
      {SHELL.themeShort[chosen]}
      <span class="unseen">{`: ${SHELL.theme[chosen]}. Change to: ${SHELL.theme[next]}`}</span>
    </button>
  );
}

const HALF = "M12 4a8 8 0 0 1 0 16z";
const FULL = "M12 4a8 8 0 1 0 0 16a8 8 0 1 0 0-16z";
