/** Checks whose failure is nearest to harm, worst first; the others follow. */
const NEAREST_TO_HARM: readonly string[] = [
  "supply-polarity",
  "polarity",
  "maximum-zs",
  "electrode",
  "rcd-time",
  "insulation-resistance",
  "bonding-continuity",
  "external-impedance",
  "additional-protection",
  "breaking-capacity",
  "supply-breaking-capacity",
  "ring-continuity",
  "cpc-adiabatic",
  "earthing-conductor-size",
  "cable-capacity",
];

/** How near to harm a failure of a check is, 0 nearest. */
export function harm(check: string): number {
  const at = NEAREST_TO_HARM.indexOf(check);
  return at < 0 ? NEAREST_TO_HARM.length : at;
}

/** Whether a failure of a check is a danger, or one fault away from it, unless something else holds. */
export function isNearToHarm(check: string): boolean {
  return NEAREST_TO_HARM.includes(check);
}
