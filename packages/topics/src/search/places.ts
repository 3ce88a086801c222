/** Places, each with what people type for it. */
export const PLACES: Readonly<Record<string, string>> = Object.freeze({
  bath: "bath, bathroom, shower room, ensuite, en suite, wet room, wetroom, shower, bathtub, zone 0, zone 1, zone 2, zone, zones, bathrooms, shower cubicle, cubicle, washroom",
  kitchen: "kitchen, worktop, sink, utility, basin, drainer, tap, scullery, washbasin",
  roof: "roof, tiles, rooftop, on roof",
  loft: "loft, attic, roof space, roof void, eaves",
  ceiling: "ceiling, void, ceiling void, suspended ceiling, ceilings",
  floor: "floor, under floor, underfloor, floorboards, joist, joists, under floorboards, floor void, skirting",
  wall: "wall, walls, plaster, chased, partition, stud, stud wall, safe zone, safe zones, prescribed zone, outside zones, diagonally, diagonal, metal stud, steel stud, plasterboard",
  garden:
    "out the back, front garden, back garden, porch, canopy, soffit, carport, rear wall, outside wall, outside, outdoor, outdoors, garden, patio, lawn, external, hedge, fence, yard, decking, flower bed, drive, driveway, external wall, grass, pergola, allotment, bushes, flowerbed, gate post, path",
  ground:
    "underground, buried, ground, trench, dug, digger, jcb, spade, soil, shallow, fork, mini digger, depth, dig, excavator, below ground, in the earth, deep",
  outbuilding:
    "shed, garage, outbuilding, summerhouse, workshop, greenhouse, garden room, barn, annexe, garden office, cabin, log cabin, stables, stable, man cave, hut, outhouse, sheds",
  overhead:
    "overhead, catenary, span, aerial, overhead line, between buildings, aerial cable, slung, pole to pole, strung, overhead lines, overhead cable",
  farm: "farm, barn, cow, cows, cowshed, milking, parlour, cattle, pig, pigs, horse, horses, dairy, livestock, stable, stables, poultry, chicken, chickens, sheep, animals, lambing, byre, agricultural, slurry, piggery, calf, bull",
  pool: "pool, swimming, swimming pool, pool room, pool pump, paddling, plunge pool, pool light, poolside",
  pond: "pond, fountain, water feature, fish pond, koi, fish, waterfall",
  hottub: "hot tub, jacuzzi, whirlpool, spa, hottub, swim spa",
  sauna: "sauna, steam room, infrared cabin, sauna cabin",
  pitch:
    "caravan, pitch, hook up, hookup, campsite, camp site, camping, marina, mooring, boat, pontoon, pedestal, yacht, touring, glamping, motorhome, bollard, caravans, jetty, ehu, holiday park, quay, berth, static",
  medical:
    "medical, hospital, dentist, dental, surgery, theatre, operating, ward, clinic, patient, treatment room, doctor, doctors, vet, hospice, x ray, group 2, group 1",
  tank: "tank, vessel, conducting, confined, drum, silo, cramped, inspection pit, crawl, narrow, boiler shell, boiler interior, metal pit, inside boiler, duct",
  escape:
    "escape, escape route, fire escape, way out, exit, stairs, stairwell, staircase, stairway, landing, hallway, hall, communal, communal stairs, corridor, common stairs, only exit, protected stair, exit route",
  dusty:
    "dust, dusty, sawdust, straw, hay, grain, wood dust, joinery, joiners, flour, mill, paper store, warehouse, combustible, stock, thatch, woodshop, bakery, carpenters, fluff, lint",
  burnable:
    "curtain, curtains, cardboard, wood, wooden, timber, papers, paper, bedding, clothes, furniture, combustible, flammable, shelf, cupboard, towels, boxes, cushions, sofa, bed, polystyrene",
  firewall:
    "fire wall, compartment, compartment wall, fire barrier, fire ceiling, fire rated, fire stopping, firestop, fire floor, intumescent, fire hood, fire hoods, fire compartment, party wall, fire sealing, unsealed hole, foam",
  insulation:
    "loft insulation, rockwool, fibreglass, thermal insulation, lagging, insulated, celotex, kingspan, wool, in insulation, under insulation, insulation, cavity insulation, glass wool, buried in insulation",
  understairs:
    "stacked, bikes, bike, shopping, stuff, cleaning stuff, ladder, suitcases, hoovers, in the way, under stairs, under the stairs, cupboard, coats, shoes, hoover, stored, storage, junk, piled, blocked, in front of, rubbish, clutter, cluttered, boxes, blocking, prams, paint, paint tins",
  neighbour:
    "neighbour, neighbours, next door, other flat, other house, adjoining, upstairs flat, downstairs flat, semi, other property, flat below, flat above",
});
