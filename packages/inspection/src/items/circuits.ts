import { item } from "./item.ts";

/** Circuits. */
export const CIRCUITS = [
  item("circuits.identification", "Conductors identified by colour or mark", "514.3"),
  item("circuits.support", "Cables supported, and against early collapse in fire", "521.10.202", "522.8.5"),
  item("circuits.insulation", "Insulation of live parts sound", "416.1"),
  item("circuits.unsheathed", "Cables without sheath enclosed throughout", "521.10.1"),
  item("circuits.capacity", "Cables large enough for their load and way of installation", "433.1", "523"),
  item("circuits.protection", "Devices coordinated with the conductors they protect", "411.3", "433.1", "434.5"),
  item("circuits.cpc", "Protective conductor present at every point", "411.3.1.1", "543.1"),
  item("circuits.concealed", "Concealed cables in safe zones, or protected", "522.6.201", "522.6.202"),
  item(
    "circuits.additional-protection",
    "RCD for socket-outlets, luminaires in homes and concealed cables",
    "411.3.3",
    "411.3.4",
    "522.6.202",
  ),
  item("circuits.barriers", "Fire barriers and seals made good", "527.2"),
  item("circuits.segregation", "Circuits of different voltage and data kept apart", "528.1", "528.2"),
  item("circuits.neutrals", "Neutrals not borrowed between circuits", "314.4"),
  item(
    "circuits.terminations",
    "Joints and terminations enclosed, tight and accessible where needed",
    "526.3",
    "526.5",
  ),
] as const;
