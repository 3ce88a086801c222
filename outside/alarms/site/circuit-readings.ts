import type { Circuit } from "../house/house.ts";
import { cpcAlone, crossConnected, endToEnd, lineAndCpc } from "./dead.ts";
import { loopAtPoint } from "./loop.ts";
import type { Site } from "./site.ts";

/** A reading as the file holds it. */
interface Shown {
  shown: string;
  with?: string;
}

export type Readings = Record<string, unknown>;

const shown = (text: string): Shown => ({ shown: text, with: "mft" });

/** What is written of the tests of a circuit. */
export function circuitReadings(site: Site, circuit: Circuit): Readings {
  const { id, shape } = circuit;
  const { draws, care, house } = site;
  const readings: Readings = {};
  if (draws.happens(`temperature.${id}`, care.temperatureWritten))
    readings.temperature = { shown: `${Math.round(site.dead(id) + draws.bell(`thermometer.${id}`, 0.5, 2))} °C` };
  Object.assign(readings, shape === "ring" ? ringReadings(site, circuit) : radialReadings(site, circuit));
  Object.assign(readings, insulationReadings(site, circuit));
  readings.polarity = circuit.polarity ? "correct" : "incorrect";
  const read = furthestOf(site, circuit);
  const point = Math.max(0, read - (draws.happens(`other-point.${id}`, care.otherPoint) ? 1 : 0));
  if (!site.blank(`zs.${id}`))
    readings.zs = shown(site.loop(loopAtPoint(house, circuit, point, "E", site.live), `zs.${id}`));
  return readings;
}

/** The point where R1+R2 and Zs are read: the last of a radial, of a ring the one that reads most. */
function furthestOf({ house, dead }: Site, circuit: Circuit): number {
  if (circuit.shape !== "ring") return circuit.points.length - 1;
  const values = circuit.points.map((_, point) => {
    const ohms = crossConnected(house, circuit, "E", point, dead);
    return Number.isFinite(ohms) ? ohms : 1e6;
  });
  return values.indexOf(Math.max(...values));
}

function ringReadings(site: Site, circuit: Circuit): Readings {
  const { house, dead, draws, care } = site;
  const { id } = circuit;
  const readings: Readings = {};
  for (const [name, conductor] of [
    ["r1", "L"],
    ["rn", "N"],
    ["r2", "E"],
  ] as const)
    readings[name] = shown(site.continuity(endToEnd(house, circuit, conductor, dead), `${name}.${id}`));
  if (draws.happens(`cross.${id}`, care.crossReadings)) {
    const wanted = circuit.points
      .map((_, i) => i)
      .filter((i) => draws.happens(`cross-${i}.${id}`, 0.5 + care.crossReadings / 2));
    const at = (other: "N" | "E") =>
      wanted.map((point) => ({
        point: circuit.points[point],
        reading: shown(
          site.continuity(crossConnected(house, circuit, other, point, dead), `cross-${other}-${point}.${id}`),
        ),
      }));
    const lineCpc = at("E");
    if (wanted.length > 0) Object.assign(readings, { crossLineNeutral: at("N"), crossLineCpc: lineCpc });
  }
  if (!site.blank(`r1r2.${id}`)) {
    const ohms = crossConnected(house, circuit, "E", furthestOf(site, circuit), dead);
    readings.r1r2 = shown(site.continuity(ohms, `cross-E-${furthestOf(site, circuit)}.${id}`));
  }
  return readings;
}

function radialReadings(site: Site, circuit: Circuit): Readings {
  const { house, dead, draws, care } = site;
  const { id } = circuit;
  const point = circuit.points.length - 1;
  const inBar = draws.happens(`cpc-in-bar.${id}`, 0.5);
  const readings: Readings = {};
  if (!site.blank(`r1r2.${id}`))
    readings.r1r2 = shown(site.continuity(lineAndCpc(house, circuit, point, inBar, dead), `r1r2.${id}`));
  if (draws.happens(`r2-too.${id}`, care.level < 3 ? 0.3 : 0.1))
    readings.r2Only = shown(site.continuity(cpcAlone(house, circuit, point, inBar, dead), `r2.${id}`));
  return readings;
}

function insulationReadings(site: Site, { id, insulation }: Circuit): Readings {
  const { draws, care, meter } = site;
  const readings: Readings = { insulationVoltage: "500 V" };
  const megohms = (value: number, name: string) => shown(meter.megohms(value, `${name}.${id}`));
  if (!site.blank(`insulation-live.${id}`)) readings.insulationLiveLive = megohms(insulation.live, "insulation-live");
  readings.insulationLiveEarth = megohms(insulation.earth, "insulation-earth");
  if (draws.happens(`neutrals.${id}`, care.neutralsTested))
    readings.insulationBetweenNeutrals = megohms(insulation.neutrals, "insulation-neutrals");
  return readings;
}
