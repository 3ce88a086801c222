import { useState } from "preact/hooks";
import { chooseTheme, THEMES, type Theme, theme } from "../../shell/theme.ts";
import { SETTINGS } from "../../words/settings.ts";

/** For which light the app is drawn. */
export function Light() {
  const [chosen, setChosen] = useState<Theme>(theme);
  return (
    <fieldset class="field">
      <legend>{SETTINGS.light}</legend>
      <p class="quiet small">{SETTINGS.lightHelp}</p>
      <div class="choices">
        {THEMES.map((one) => (
          <label key={one} class="choice">
            <input
              type="radio"
              name="theme"
              checked={chosen === one}
              onChange={() => {
                chooseTheme(one);
                setChosen(one);
              }}
            />
            <span>{SETTINGS.theme[one]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
