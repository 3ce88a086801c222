import { parseInspectionData, resolveInstallation, type WholeInstallation } from "@good-grounds/inspection";
import { smallestFile } from "../files/arbitrary-file.ts";

/** An installation of so many boards with 400 circuits each, all of them alike to the last digit. */
export function alike(boards: number): WholeInstallation {
  const circuit = (i: number) => ({
    id: `c${i}`,
    designation: String(i),
    description: "lights",
    shape: "radial",
    cable: { material: "copper", line: "1.5 mm²", cpc: "1 mm²", length: "20 m" },
    readings: {
      r1r2: { shown: "0.58 Ω" },
      zs: { shown: "0.79 Ω" },
      insulationLiveLive: { shown: "612 MΩ" },
      insulationLiveEarth: { shown: "612 MΩ" },
    },
  });
  const data = {
    ...smallestFile(),
    boards: Array.from({ length: boards }, (_, i) => ({
      id: `b${i}`,
      name: `Board ${i}`,
      fedFrom: "supply",
      readings: { zdb: { shown: "0.20 Ω" } },
      circuits: Array.from({ length: 400 }, (__, j) => circuit(j)),
    })),
  };
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return resolveInstallation(parsed.file);
}
