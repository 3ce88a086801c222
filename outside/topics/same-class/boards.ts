import type { SameClass } from "./row.ts";

export const BOARDS: readonly SameClass[] = [
  {
    topic: "basic-protection",
    situation: "bare bars behind a rail, anyone enters",
    facts: {
      "live-covering": "bare",
      "gets-in": "hand",
      "who-comes": "anyone",
      "arms-reach": "within",
      obstacle: "secured",
      "wet-or-conductive": "no",
    },
  },
];
