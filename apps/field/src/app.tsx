import { render } from "preact";
import { storesChecked } from "./record/store.ts";
import { App } from "./shell/app.tsx";
import { firstRun } from "./shell/first-run.ts";
import { rememberPlaces, restorePlace } from "./shell/place.ts";
import { applyTheme } from "./shell/theme.ts";

applyTheme();
const place = document.getElementById("app");
if (place !== null) {
  // A browser that refuses to store still shows the app, which then says what is not kept.
  await Promise.all([restorePlace(), firstRun()]).catch(() => undefined);
  render(<App />, place);
  rememberPlaces();
  void storesChecked();
}
