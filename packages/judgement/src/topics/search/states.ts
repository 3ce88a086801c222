/**
 * States in which things are found, each with what people type for it. A word may stand for several states; a phrase of
 * two or three words means what it says here and not what its words mean alone.
 */
export const STATES: Readonly<Record<string, string>> = Object.freeze({
  showing:
    "exposed copper, open, touch, bits of copper, exposed live, energised, in the open, reachable, conductors visible, not covered, uncovered, unprotected, live terminal, live terminals, hand in, poke, poke finger, showing, shows, exposed, bare, live, visible, touchable, accessible, live parts, live part, live bits, live metal, live copper, bare copper, bare wires, copper, can touch, can be touched, fingers, finger, poking, sticking out, stick out, wires out, unguarded, unshrouded, open to touch, on view, naked, reach in, stripped, not insulated, uninsulated",
  cut: "gash, gouged, strapped through, perish, stripped by, cracking, degraded, deteriorated, brittle, chew, tooth marks, gnaw, scraped, scrape, kinked, dug up, mangled, cut, nick, nicked, damaged, damage, chewed, eaten, gnawed, bitten, slashed, sliced, scuffed, pierced, drilled, frayed, split, worn, worn through, chafed, rubbed, rubbing, abraded, severed, hacked, crushed, trapped, pinched, squashed, punctured, hit, through, nail, screw, perished, crumbling, cracked, ripped, torn, snipped, caught, stapled",
  broken:
    "handle snapped, ripped off, half missing, hanging in bits, destroyed, trashed, kicked in, pushed in, punched, burst, fractured, shattering, chipped off, broken, broke, cracked, smashed, busted, shattered, snapped, damaged, knackered, chipped, bust, bashed, knocked, vandalised, kicked, split, in bits, hole, fell apart, falling apart",
  missing:
    "aint got, got no, has no, have no, absence, none fitted, none found, not installed, lack, no sign, needs a, left out, not had, never had, cant see any, hasnt got, doesnt have, missing, no, none, without, not, absent, lacking, lacks, removed, off, gone, lost, taken off, never fitted, not fitted, not present, not provided, doesnt have, hasnt, havent, isnt, aint, left off, come off, fell off, nowhere, needs, omitted",
  loose:
    "came off, come off, coming off wall, floppy, unscrewed, unclipped, detached, disconnected, not connected, not terminated, parted, give, wiggles, coming loose, come loose, loose, wobbly, wobbles, moves, moving, not tight, not fixed, not secure, insecure, rattling, undone, unfixed, spinning, pulled out, pulling out, coming away, coming off, hanging, falling off, fallen, adrift, slack, not screwed",
  hanging:
    "hanging, dangling, hangs, swinging, drooping, sagging, dropped, dangles, falling, falling off, hung, held up by, pulled off, come off wall",
  hot: "crackling, crackle, crackles, frying, buzzing, humming, glowing, brownish, burn mark, burn marks, scorch marks, heat damage, thermal damage, too hot to touch, hot to touch, smoke, flames, fire damage, caught fire, went on fire, cinders, went bang, blown up, flashed over, hot, heat, scorched, scorch, burnt, burned, burning, burns, melted, melting, browned, brown marks, discoloured, charred, smoking, smouldering, smell, smells, arcing, arced, overheated, overheating, cooked, cooking, singed, blackened, black marks, warm, sparks, sparking, fizzing, sizzling, soot, sooty, fried, toasted, distorted, brittle",
  wet: "burst pipe, drips, dripped, moist, sodden, got wet, puddle, leaked, soaking, spray, splashed, splash, washed down, hosed, green crust, verdigris, wet, water, damp, moisture, condensation, leak, leaking, flooded, soaked, dripping, rain, rainwater, full of water, rusty, rust, rusted, corroded, corrosion, mould, ingress, let water in",
  small:
    "small, undersized, undersize, too thin, thin, under size, size, tiny, too small, wrong size, not big enough, skinny, not thick enough, inadequate, less than",
  large: "oversize, oversized, too big, big, too large, too thick, uprated, wrong rating, overfused, over fused, too high rating",
  high: "high, too high, over limit, fails, exceeds, exceeded, above limit, max, excessive",
  low: "low, too low, dropping, poor",
  hidden:
    "not accessible, no access to, out of sight, cant be seen, unreachable, unable to see, cant locate, unable to locate, covered up, cant reach, not able to inspect, hidden, buried, covered, boxed in, concealed, cant find, cannot find, cant see, cannot see, not visible, behind, plastered over, tiled over, inaccessible, cant get at, cant get to, under floor, sealed up, no access, unseen, unknown location, boarded over, lost",
  unknown: "no clue, not readable, unreadable, unsure, cant identify, couldnt identify, not known, who knows, not confirmed, unlabelled, unknown, unverified, not verified, dont know, no idea, cant read, unmarked, illegible, unidentified, mystery, not sure, cant tell, not identified",
  faulty:
    "inop, doesnt do anything, does nothing, nothing happens, out of order, bust, not operate, packed up, gone, had it, u/s, doesnt respond, does not operate, does not work, does not trip, refuses, faulty, fault, dead, wont, doesnt work, not working, not operating, stuck, seized, jammed, kaput, fails, failed, defective, wont reset, wont latch, wont trip, wont turn, inoperative, u s, knackered, doesnt operate, doesnt trip, no trip, not tripping, did not trip, didnt trip",
  swapped: "reversed, reverse, swapped, crossed, wrong way, wrong way round, back to front, transposed, mixed up, backwards, cross, other way round, muddled",
  joined: "joined, linked, bridged, connected together, commoned, link, interconnected",
  taped: "taped, tape, taped up, insulation tape, wrapped, twisted together, twisted, pvc tape",
  overloaded: "overloaded, overload, too much load, too many, loaded, overloading, maxed",
});
