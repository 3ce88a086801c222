import { matter } from "@good-grounds/core";

/** What is asked about openings, and the questions that the lines of the argument answer. */
export const OPENINGS = Object.freeze({
  shape: matter("opening-shape", "shape of the opening"),
  face: matter("opening-face", "face that the opening is in"),
  easyReach: matter("top-in-easy-reach", "the top can be reached easily"),
  barrierBehind: matter("barrier-behind", "barrier between the opening and the live part"),
  keptOut: matter("live-parts-out-of-reach", "live parts are kept from touch at the opening"),
  fingerClear: matter("finger-clear", "the jointed finger stays clear of the live part (IPXXB)"),
  fingerShort: matter("finger-short", "depth of the live part against the reach of the jointed finger"),
  ip2x: matter("ip2x", "IP2X at the opening"),
  sphereEnters: matter("sphere-enters", "least width of the opening against the 12.5 mm sphere"),
  sphereStopped: matter("sphere-stopped", "the 12.5 mm sphere does not enter fully"),
  topClosed: matter("top-closed", "a horizontal top in easy reach keeps out wires"),
  notTop: matter("not-top-in-reach", "the opening is not in a horizontal top in easy reach"),
  wireClear: matter("wire-clear", "the 1 mm wire stays clear of the live part (IPXXD)"),
  wireShort: matter("wire-short", "depth of the live part against the reach of the 1 mm wire"),
  wireEnters: matter("wire-enters", "least width of the opening against the 1 mm wire"),
  wireStopped: matter("wire-stopped", "the 1 mm wire does not enter (IP4X)"),
  rodShort: matter("rod-short", "depth of the live part against the reach of the 2.5 mm rod"),
  handShort: matter("hand-short", "depth of the live part against the reach of the 50 mm sphere"),
  barrierStops: matter("barrier-stops", "the barrier behind stops the probe"),
});
