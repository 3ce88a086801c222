/** Things of an installation, each with what people type for it: abbreviations, slang, trade names in general use. */
export const THINGS: Readonly<Record<string, string>> = Object.freeze({
  board:
    "electric box, breaker box, trip box, units, fuses box, sub board, subboard, tpn board, rcbo board, electric board, breaker board, board, boards, cu, db, consumer unit, consumer, fuse board, fuseboard, fuse box, fusebox, panel board, distribution board, distribution, switchboard, panelboard, ccu, mdb, submain board, panel, fuze box, switchgear, tpn, mcb board, wylex, consumer units, dis board, garage unit",
  breaker:
    "trip, cct breaker, circuit breakers, breakers, breaker, mcb, mcbs, rcbo, rcbos, mccb, circuit breaker, trip switch, cb, trips, way",
  lock: "lock, locks, padlock, latch, hasp, keyhole",
  intake: "meter cupboard, meter box, intake cupboard, meter cabinet",
  busbar: "busbar, bus bar, busbars, bars, bar, comb, busbar chamber",
  cover: "cover, lid, front, door, faceplate, face, plate, front plate, cover plate, flap, fascia",
  blank: "blank, blanks, blanking, blanker, spare way, gap, gaps, slot, unused way, hole in front",
  mainswitch: "main switch, main sw, mainswitch, main isolator, switch fuse, switchfuse",
  rcd: "rcd, rccb, rcbo, rcds, 30ma, elcb, trip, additional protection, earth leakage, residual current, 100ma, 300ma, vigi",
  spd: "spd, surge protection, surge, surge arrestor, surge arrester, surge protector, surge device, lightning, transient, overvoltage",
  afdd: "afdd, arc fault, arc detection, arc protection",
  cutout:
    "company head, supply fuse, bakelite head, intake, dno cut out, 100a fuse, incoming supply, cut out, cutout, service head, dno head, head, dno, main fuse, service fuse, incomer, supply head, company fuse, dno fuse, mains head, cut outs, incoming cable, service cable, pitch",
  meter: "meter, smart meter, electric meter, meter box, meter cupboard",
  tails: "tails, tail, meter tails, meter tail, main tails",
  block:
    "henley, henley block, henleys, service connector, connector block, connector blocks, isoblock, tails block, joint block",
  rod: "rod, earth rod, electrode, spike, stake, earth spike, earth stake, earth pit, ra, mat, earth electrode",
  earthing:
    "earth, earthing conductor, main earth, earth wire, earth cable, earthing, earthed, ground, grounded, main earth wire, main earth cable, earth lead",
  terminal:
    "met, main earth terminal, main earthing terminal, main earth bar, earth bar, earth block, earth terminal, earth marshalling",
  bond: "bond, bonding, bonded, equipotential, main bond, peb, bonds, gas bond, water bond, earth bonding, main bonding, unbonded, clamp, bs951, earth clamp",
  cpc: "cpc, protective conductor, circuit protective conductor, earth core, r2, earth continuity, cpcs, earth wire",
  cable:
    "cable, cables, t&e, twin, twin and earth, twin earth, flat twin, wiring, swa, wires, t+e, 6242y, fp200, pyro, micc, cabling, tne, lead in",
  wire: "copper, wire, wires, conductor, conductors, cores, core, singles, single, ends, strands",
  armour: "swa, armour, armoured, sy, gland, glands, banjo, armouring, wire armoured",
  ends: "ends, bare ends, bare end, live ends, live end, dead ends, loose ends, wire ends, cable ends, cut ends, cut off, light was, cooker was, socket was, redundant, disused, abandoned, old wires, unused cable, left behind, capped off",
  flex: "flex, flexible cord, cord, lead, flexible, leads, 3 core flex, flexes",
  sheath: "sheath, outer, single insulated, singles, basic insulation, grey sheath, sheathing, double insulation",
  trunking:
    "trunking, conduit, mini trunking, minitrunking, dado, containment, maxi trunking, flexi conduit, galv, capping, duct",
  joint:
    "chock block, chock, chocky block, choccy block, terminal strip, terminal strips, wagobox, joints, connection box, joint in, jb, junction box, joint box, choc block, choc bloc, chocblock, chocbox, choc box, chocolate block, connector strip, wago, wagos, joint, joints, terminal block, strip connector, jbs, junction, jointed, choc, crimp, splice, connectors, strip connectors",
  socket:
    "plugs, plug outlets, usb socket, wall socket, sockets, socket plate, socket, sockets, socket outlet, outlet, plug socket, plug sockets, 13a, double socket, single socket, twin socket, power point, doubles, plug point, skt, soc, sso, dsso, plug hole, socket outlets",
  switch: "switch, sw, switches, light switch, switch plate, rocker, dimmer, pull cord, switched, isolator switch",
  isolator:
    "isolator, isolation, isolate, isolated, rotary isolator, double pole switch, dp switch, local isolation, local isolator, isolators, turn off",
  accessory: "accessory, socket, switch, fcu, spur, faceplate, outlet, wiring accessory, plug, skt",
  spur: "spur, fcu, fused spur, fused connection unit, spurred, spurs, switched spur, sfcu",
  rose: "rose, ceiling rose, pendant, roses, light pendant",
  lampholder: "lampholder, lamp holder, bulb holder, batten holder, bc holder, holder, pendant, lampholders, batten",
  light:
    "lamps, bulbs, leds, batten light, uplighter, wall light, downlighter, sconce, spot light, fitment, strip, strip lights, light, lights, luminaire, lamp, bulb, fitting, light fitting, luminaires, batten, fluorescent, flourescent, bulkhead, floodlight, spotlight, lantern, tube, strip light, lighting, chandelier, led panel, fittings, flood light, security light",
  downlight:
    "downlight, downlights, downlighter, downlighters, spot, spots, spotlight, spotlights, recessed light, dl, gu10, recessed luminaire, can light, recessed lights, eyeball",
  transformer:
    "transformer, driver, led driver, 12v, low voltage lights, elv, ballast, selv, halogen, led tape, 12 volt",
  box: "back box, backbox, box, pattress, knockout box, back boxes, dry lining box",
  fuse: "fuse, fuses, fuze, fuse carrier, carrier, bs3036, cartridge",
  fusewire: "fuse wire, fusewire, foil, nail in fuse, silver paper, bolt in fuse",
  voltage: "volts, volt, voltage, supply voltage",
  neutral: "neutral, neutrals, n, neutral bar",
  ring: "ring, ring main, ring final, rfc, ring circuit, r1, rn",
  shower: "shower, electric shower, shower unit, power shower",
  cooker: "cooker, oven, range, cooker point",
  hob: "hob, cooker, gas hob, cooktop, induction hob, stove",
  heater:
    "heater, heaters, storage heater, fire, bar fire, panel heater, towel rail, radiant heater, fan heater, convector, radiator heater, patio heater, wall heater, electric fire, infra red heater",
  immersion: "immersion, immersion heater, hot water cylinder, cylinder, water heater",
  fan: "bathroom fan, inline fan, fan, extractor, extract fan, extractor fan, extraction",
  appliance:
    "white goods, washing, cooker hood, towel rail, pump, lift, jacuzzi, door motor, shutter, boiler, washing machine, washer, dryer, tumble dryer, dishwasher, fridge, freezer, hand dryer, waste disposal, extractor, water heater, oven, hood, appliance, fixed equipment, machine, air con, heat pump, hoist, macerator, alarm panel, gate, roller door",
  motor:
    "motor, starter, dol, compressor, conveyor, machine, motors, lathe, pump motor, saw, drill, contactor, machinery, press, mill, mixer",
  emergencystop:
    "e stop, estop, emergency stop, stop button, emergency switching, knock off, emergency off, mushroom, panic button",
  extension:
    "extension, extension lead, extension leads, adaptor, adapter, adaptors, adapters, 4 way, four way, gang lead, block adaptor, trailing lead, multi plug, cube adaptor, power strip, daisy chain, daisy chained, multiway, reel",
  smokealarm:
    "smoke alarm, smoke detector, smokes, smoke alarms, heat alarm, heat detector, detector, co alarm, smoke head, interlinked alarms",
  firealarm: "fire alarm, smoke alarm, fire panel, alarm panel",
  emergencylight:
    "emergency light, emergency lighting, em light, emergency lights, exit sign, exit light, em lights, emergency bulkhead, emergency luminaire, e lights, maintained, emergency fitting",
  label:
    "nothing says, says nothing, nothing to say, doesnt say, no mention, nothing tells, label, labels, notice, sticker, sign, warning, labelling, labelled, tag, warning sign, placard, notices, marking, dymo",
  chart:
    "breakers not labelled, not marked up, mcbs not labelled, no labels on breakers, chart, schedule, circuit chart, circuit list, legend, circuit details, circuit card, circuit labels, circuit description",
  sleeve: "sleeve, sleeving, unsleeved, green yellow sleeving, sleeved, green and yellow",
  colours:
    "colours, colors, colour, red, black, blue, brown, red and black, brown and blue, old colours, new colours, yellow, mixed colours, harmonised",
  panels:
    "solar, pv, panels, panel, solar panel, photovoltaic, array, solar panels, mc4, string, dc, dc cable, dc isolator, roof array",
  inverter: "inverter, micro inverter, microinverter, solar inverter, hybrid inverter",
  battery:
    "battery, batteries, powerwall, bess, battery store, battery storage, home battery, lithium, storage battery, house battery",
  charger:
    "charger, ev, ev charger, car charger, charge point, chargepoint, evse, vehicle charger, wallbox, electric car, vehicle, ev point, charging point, car charging",
  generator:
    "generator, genny, genset, gennie, changeover, standby set, ats, generators, changeover switch, standby generator",
  pipe: "pipe, pipes, pipework, stopcock, water main, water pipe, gas pipe, oil pipe, oil line, gas main, lead pipe, service pipe, incoming water, incoming gas",
  structure: "steel, steelwork, rsj, structural steel, steel frame, metal frame, beam, girder",
  metalwork:
    "metalwork, metal case, case, metal, casing, tap, taps, sink, metal box, class 1, body, enclosure metal, metal body, fridge, chassis",
  trip: "trip, trips, tripping, tripped, trip time, keeps tripping",
  button: "button, test button, t button, push button, push to test",
});
