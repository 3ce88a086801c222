/** How the app is lit: always light, always dim, or as the device says. */
export const THEMES = ["device", "light", "dim"] as const;
export type Theme = (typeof THEMES)[number];

const KEY = "good-grounds theme";

// Local storage answers before the first picture; the settings store would let a dark cupboard flash white first.
export function theme(): Theme {
  try {
    return THEMES.find((one) => one === localStorage.getItem(KEY)) ?? "device";
  } catch {
    return "device";
  }
}

export function applyTheme(chosen: Theme = theme()): void {
  if (chosen === "device") delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = chosen;
}

export function chooseTheme(chosen: Theme): void {
  try {
    localStorage.setItem(KEY, chosen);
  } catch {
    // A browser that keeps nothing still shows what was chosen.
  }
  applyTheme(chosen);
}
