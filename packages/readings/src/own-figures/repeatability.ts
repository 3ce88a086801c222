/** What is read, as far as it decides how well a reading repeats. */
export type Kind = "continuity" | "loop" | "insulation" | "rcd-time";

/** Part of the reading and parts of its last digit by which a repeat in the same hour differs, one standard deviation. */
const PARTS: Readonly<Record<Kind, readonly [ofReading: number, digits: number]>> = {
  continuity: [0.005, 0.5],
  loop: [0.01, 1.5],
  insulation: [0.05, 0.5],
  "rcd-time": [0.02, 0.5],
};

/** What the figures above rest on, for the tests that use them. */
export const REPEATABILITY_ASSUMED =
  "a repeated reading differs by a standard deviation of 0.5 % and half a digit (continuity), 1 % and 1.5 digits (loop), 5 % (insulation), 2 % (RCD time); common practice, closer than real instruments mostly repeat";

/** Standard deviation of a repeated reading, in the unit of the value. */
export function repeatability(kind: Kind, value: number, resolution: number): number {
  const [part, digits] = PARTS[kind];
  return Math.hypot(part * value, digits * resolution);
}
