import { item } from "./item.ts";

/** Circuits. */
export const CIRCUITS = [
  item("circuits.identification", "always", "Conductors identified by colour or mark", "514.3"),
  item("circuits.support", "always", "Cables supported, and against early collapse in fire", "521.10.202", "522.8.5"),
  item("circuits.insulation", "always", "Insulation of live parts sound", "416.1"),
  item("circuits.unsheathed", "always", "Cables without sheath enclosed throughout", "521.10.1"),
  item("circuits.capacity", "always", "Cables large enough for their load and way of installation", "433.1", "523"),
  item(
    "circuits.protection",
    "always",
    "Devices coordinated with the conductors they protect",
    "411.3",
    "433.1",
    "434.5",
  ),
  item("circuits.cpc", "always", "Protective conductor present at every point", "411.3.1.1", "543.1"),
  item("circuits.concealed", "always", "Concealed cables in safe zones, or protected", "522.6.201", "522.6.202"),
  item(
    "circuits.additional-protection",
    "always",
    "RCD for socket-outlets, luminaires in homes and concealed cables",
    "411.3.3",
    "411.3.4",
    "522.6.202",
  ),
  item("circuits.barriers", "always", "Fire barriers and seals made good", "527.2"),
  item("circuits.segregation", "always", "Circuits of different voltage and data kept apart", "528.1", "528.2"),
  item("circuits.neutrals", "always", "Neutrals not borrowed between circuits", "314.4"),
  item(
    "circuits.terminations",
    "always",
    "Joints and terminations enclosed, tight and accessible where needed",
    "526.3",
    "526.5",
  ),
] as const;
