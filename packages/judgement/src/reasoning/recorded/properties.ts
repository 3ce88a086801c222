import { boardEnclosure } from "./board/board-enclosure.ts";
import { boardFedFrom } from "./board/board-fed-from.ts";
import { boardRcds } from "./board/board-rcds.ts";
import { mainSwitchFitted } from "./board/main-switch-fitted.ts";
import { mainSwitchPoles } from "./board/main-switch-poles.ts";
import { surgeProtection } from "./board/surge-protection.ts";
import { bondCondition } from "./bond/bond-condition.ts";
import { bondConnected } from "./bond/bond-connected.ts";
import { bondExtraneous } from "./bond/bond-extraneous.ts";
import { bondSize } from "./bond/bond-size.ts";
import { cableKind } from "./cable/cable-kind.ts";
import { conductorMaterial } from "./cable/conductor-material.ts";
import { cpcSize } from "./cable/cpc-size.ts";
import { installationMethod } from "./cable/installation-method.ts";
import { lineSize } from "./cable/line-size.ts";
import { circuitLoad } from "./circuit/circuit-load.ts";
import { circuitShape } from "./circuit/circuit-shape.ts";
import { circuitsDisconnect } from "./circuit/circuits-disconnect.ts";
import { earthFaultCleared } from "./circuit/earth-fault-cleared.ts";
import { socketOutlets } from "./circuit/socket-outlets.ts";
import { breakersDisconnect, rcdsDisconnect } from "./circuit/what-disconnects.ts";
import { deviceRated } from "./device/device-rated.ts";
import { deviceStandard } from "./device/device-standard.ts";
import { deviceType } from "./device/device-type.ts";
import { enclosureCovering } from "./enclosure/enclosure-covering.ts";
import { enclosureEntry } from "./enclosure/enclosure-entry.ts";
import { enclosureFirmness } from "./enclosure/enclosure-firmness.ts";
import { enclosureObstacle } from "./enclosure/enclosure-obstacle.ts";
import { enclosureOpenedBy } from "./enclosure/enclosure-opened-by.ts";
import { hingesCarry } from "./enclosure/hinges-carry.ts";
import { lockWorks } from "./enclosure/lock-works.ts";
import { enclosureWear } from "./enclosure/wear.ts";
import { whoComes } from "./enclosure/who-comes.ts";
import { jointState } from "./joint/joint-state.ts";
import { placeWetness } from "./place/place-wetness.ts";
import { letDwelling } from "./premises/let-dwelling.ts";
import { nation } from "./premises/nation.ts";
import { premisesUse } from "./premises/premises-use.ts";
import { tenure } from "./premises/tenure.ts";
import type { RecordedProperty } from "./property.ts";
import { othersBehindRcds, socketsBehindRcds } from "./rcd/circuits-behind-rcds.ts";
import { delayedRcdAhead, firstRcdEnclosure } from "./rcd/first-rcd.ts";
import { rcd30mA } from "./rcd/rcd-30-ma.ts";
import { rcdDelay } from "./rcd/rcd-delay.ts";
import { rcdDisconnects } from "./rcd/rcd-disconnects.ts";
import { rcdPresent } from "./rcd/rcd-present.ts";
import { rcdResidual } from "./rcd/rcd-residual.ts";
import { rcdState } from "./rcd/rcd-state.ts";
import { rcdTime } from "./rcd/rcd-time.ts";
import { rcdType } from "./rcd/rcd-type.ts";
import { earthingConductorSize } from "./supply/earthing-conductor-size.ts";
import { earthingSystem } from "./supply/earthing-system.ts";
import { electrodeResistance } from "./supply/electrode-resistance.ts";
import { externalImpedance } from "./supply/external-impedance.ts";
import { liveConductors } from "./supply/live-conductors.ts";
import { otherSourceNotice } from "./supply/other-source-notice.ts";
import { phases } from "./supply/phases.ts";
import { publicSupply } from "./supply/public-supply.ts";

/** Every property of an inspection that answers facts. A new one is a file and a line here. */
export const RECORDED_PROPERTIES: readonly RecordedProperty[] = Object.freeze([
  boardEnclosure,
  boardFedFrom,
  boardRcds,
  mainSwitchFitted,
  mainSwitchPoles,
  surgeProtection,
  bondCondition,
  bondConnected,
  bondExtraneous,
  bondSize,
  cableKind,
  conductorMaterial,
  cpcSize,
  installationMethod,
  lineSize,
  circuitLoad,
  circuitShape,
  circuitsDisconnect,
  earthFaultCleared,
  breakersDisconnect,
  rcdsDisconnect,
  socketOutlets,
  deviceRated,
  deviceStandard,
  deviceType,
  enclosureCovering,
  enclosureEntry,
  enclosureFirmness,
  enclosureObstacle,
  enclosureOpenedBy,
  enclosureWear,
  hingesCarry,
  lockWorks,
  whoComes,
  placeWetness,
  jointState,
  letDwelling,
  nation,
  premisesUse,
  tenure,
  othersBehindRcds,
  socketsBehindRcds,
  delayedRcdAhead,
  firstRcdEnclosure,
  rcd30mA,
  rcdDelay,
  rcdDisconnects,
  rcdPresent,
  rcdResidual,
  rcdState,
  rcdTime,
  rcdType,
  earthingConductorSize,
  earthingSystem,
  electrodeResistance,
  externalImpedance,
  liveConductors,
  otherSourceNotice,
  phases,
  publicSupply,
]);

const BY_ID = new Map(RECORDED_PROPERTIES.map((property) => [property.id, property]));

export function recordedProperty(id: string): RecordedProperty | undefined {
  return BY_ID.get(id);
}
