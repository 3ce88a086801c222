import { render } from "preact";
import { App } from "./shell/app.tsx";
import { applyTheme } from "./shell/theme.ts";

applyTheme();
const place = document.getElementById("app");
if (place !== null) render(<App />, place);
