import "./look/tokens.css";
import "./look/base.css";
import { render } from "preact";
import { App } from "./shell/app.tsx";

const place = document.getElementById("app");
if (place !== null) render(<App />, place);
if ("serviceWorker" in navigator && location.protocol !== "file:")
  void navigator.serviceWorker.register("service-worker.js");
