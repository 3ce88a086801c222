import { item } from "./item.ts";

/** Boards. */
export const BOARDS = [
  item("boards.access", "always", "Board accessible with room to work", "132.12", "513.1"),
  item("boards.fixing", "always", "Board firmly fixed", "134.1.1"),
  item("boards.enclosure", "always", "Enclosure intact: openings, blanks, covers", "416.2"),
  item("boards.non-combustible", "dwelling", "Enclosure non-combustible, where asked for in homes", "421.1.201"),
  item("boards.main-switch", "always", "Main switch present, linked and working", "462.1.201", "643.10"),
  item(
    "boards.devices",
    "always",
    "Devices of the right type and rating, compatible and sound",
    "411.4",
    "432",
    "536.4",
  ),
  item("boards.single-pole", "always", "Single-pole devices in line conductors only", "132.14.1", "530.3.3"),
  item("boards.connections", "always", "Conductors tight, complete and entered properly", "526.1", "522.8"),
  item("boards.overheating", "always", "No sign of heat, arcing or scorching", "421.1", "526.1"),
  item(
    "boards.rcd",
    "always",
    "RCDs of the right type where needed, and test buttons working",
    "411.3.3",
    "415.1",
    "531.3.3",
    "643.10",
  ),
  item("boards.surge", "always", "Surge protection where needed, in working order", "443.4", "534.4"),
  item("boards.arc-fault", "always", "Arc fault detection where asked for", "421.1.7"),
  item("boards.labels", "always", "Circuits and devices identified", "514.8.1", "514.9.1"),
] as const;
