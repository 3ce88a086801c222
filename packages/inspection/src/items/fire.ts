import { item } from "./item.ts";

/** Fire: what an installation can set alight, spread, or keep from being noticed. */
export const FIRE = [
  item(
    "fire.hot-surfaces",
    "always",
    "Equipment that gets hot guarded from touch and away from what can burn",
    "421.1",
    "423.1",
  ),
  item(
    "fire.escape-routes",
    "escape-route",
    "Protected escape routes kept free of cables and switchgear that feed fire",
    "422.2",
  ),
  item(
    "fire.contents",
    "combustible-contents",
    "Equipment and cables fit for places where what is kept or worked can burn",
    "422.3",
  ),
  item(
    "fire.construction",
    "combustible-construction",
    "Equipment and cables fit for walls and floors that burn or pass fire on",
    "422.4",
    "422.5",
  ),
  item("fire.alarms", "fire-alarm", "Supply to fire and smoke alarms reliable and marked", "560.7"),
] as const;
