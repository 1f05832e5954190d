// Why: parts, units and circumstances as speakers of other languages name them, each beside the name that the catalogue has.
// Spanish, Portuguese, French, German, Polish, Chinese and Indian colourings (common knowledge, no source).

/** What is meant, and the phrases carried over for it. */
export const loanNames: readonly (readonly [meant: string, phrases: string])[] = [
  // wrong prepositions and agreements that the tables know otherwise
  [
    'on the highway',
    'in the highway, in highway, on highway, in the autobahn, on the autobahn, in the autoroute',
  ],
  ['at idle', 'in idle, in neutral idle, in the idle, at the relenti, in relenti, in ralenti'],
  ['seat belts', 'belts of security, belts of safety, security belts, belts of the seats, safety belts'],
  ['seat belt', 'belt of security, belt of safety, security belt, safety belt'],
  ['smoke detector', 'detector of smoke, detector for smoke, alarm of smoke, alarm for smoke, smoke warner'],
  [
    'carbon monoxide detector',
    'detector of carbon monoxide, alarm of carbon monoxide, detector for carbon monoxide, monoxide alarm, monoxide detector, detector of co, detector of monoxide',
  ],
  ['gas detector', 'detector of gas, detector for gas, alarm of gas, alarm for gas, gas warner'],
  [
    'fire extinguisher',
    'extintor, extinctor, extinguisher of fire, fire extinctor, extinguisher for fire, fire killer, fire stopper, fire bottle, bottle for fire, bottle of fire, fire can',
  ],
  [
    'water heater',
    'water boiler, heater of water, heater for water, calentador, hot water boiler, warm water boiler, warm water heater, boiler for water, boiler of water',
  ],
  [
    'bath fan',
    'bathroom ventilator, bath ventilator, ventilator of the bathroom, ventilator in the bathroom, bathroom extractor, extractor of the bathroom, extractor in the bathroom, ventilator of bathroom, bathroom ventilation',
  ],
  [
    'roof vent',
    'ventilator on roof, ventilator on the roof, ventilator of the roof, ventilator of roof, roof ventilator, ceiling ventilator, ventilator of ceiling, roof window, roof hatch window, roof hatch, hatch of roof, hatch on the roof',
  ],
  [
    'roof vents',
    'roof ventilators, ventilators on the roof, roof windows, hatches on the roof, roof hatches',
  ],
  ['vent fan', 'ventilator, the ventilators'],
  ['range hood', 'extractor of the kitchen, kitchen extractor, extractor hood, extractor over the stove'],
  ['parking brake', 'handbrake, hand break, handbreak'],
  ['furnace', 'the heating, heating system, calefaction, heating of gas, gas heating'],
  [
    'windshield',
    'parabrise, pare brise, parabrisas, front window glass, front crystal, glass of front, glass in front, front screen glass',
  ],
  ['washing machine', 'wash machine, machine to wash, machine for washing, laundry machine'],
  ['water pump', 'pump of water, pump of the water, pump for water, pump for the water'],
  [
    'odometer',
    'kilometer counter, counter of kilometers, kilometer stand, kilometrage, contakilometers, mileage counter, counter of miles',
  ],
  ['parking brake', 'brake of hand, brake of parking, hand break, brake of the hand, stop brake of hand'],
  [
    'shock absorber',
    'amortisseur, amortizer, amortiguador, damper of shock, shock damper, absorber of shock',
  ],
  ['shock absorbers', 'amortisseurs, amortizers, amortiguadores, dampers of shock, shock dampers'],
  [
    'transmission',
    'gear changer, box of gears, gears box, box of changes, change of gears, automatic gearbox, automatic gear box',
  ],
  [
    'tail lights',
    'lights of back, lights of the back, back lights, rear lights, lights behind, lights of behind',
  ],
  ['turn signals', 'direction lights, lights of direction, indicators of direction, intermittent lights'],
  [
    'levelling jacks',
    'support legs, supporting legs, legs of support, stabilizer feet, support feet, hydraulic legs, hydraulic feet, hydraulic supports, leveling legs, levelling legs, leveling feet',
  ],
  [
    'backup camera',
    'camera for back, camera of back, camera for behind, camera of behind, camera for reverse, camera of reverse, camera for going back, back camera, camera from behind, camera for the back, camera of the back',
  ],
  ['curtains', 'cortinas, the gardines'],
  ['mirror', 'retrovisor, retro mirror, back mirror'],
  ['mirrors', 'retrovisors, retro mirrors, back mirrors'],
  [
    'air conditioner',
    'air condition, aircondition, clima, klima, air conditioned, aircon, air con, conditioner of air, air conditioning',
  ],
  [
    'air conditioners',
    'air conditions, airconditions, climas, klimas, aircons, air cons, conditioners of air',
  ],
  ['exhaust pipe', 'escape pipe, escape tube, exhaust tube, tube of exhaust, tube of escape, tail tube'],
  ['steering wheel', 'volant, direction wheel, wheel of direction, wheel of steering, driving wheel'],
  ['steering', 'the direction of the car'],
  ['engine', 'the motor diesel'],
  ['horn', 'claxon, klaxon, hupe, the hooter'],
  [
    'service records',
    'papers of service, service papers, service book, book of service, books of service, book of maintenance, papers of maintenance, maintenance book, maintenance papers, service notebook, papers of repairs',
  ],
  ['title', 'papers of property, property paper, paper of property, ownership paper, paper of ownership'],
  [
    'grab handle',
    'handle for entering, handle for entry, handle of entrance, handle of the entrance, handle to climb, handle for climbing, handle for going in, handle to enter, entry handle, entrance handle',
  ],
  [
    'outlet',
    'plug in the wall, wall plug, socket of current, current socket, power socket, electric socket, socket in the wall, socket in wall',
  ],
  [
    'outlets',
    'wall plugs, power sockets, electric sockets, current sockets, sockets in the wall, sockets of the wall',
  ],
  [
    'interior lights',
    'lamps inside, lights inside, inside lamps, inside lights, lamps of inside, lights of the inside, lamps of interior, lights interior, lamps interior, lights in the interior, lamps in the inside',
  ],
  [
    'check engine light',
    'light of the check engine, lamp of check engine, lamp of the engine, motor light in dash, light of motor check, engine control light, motor control light, control light of the engine, control lamp of engine, lamp of motor control, check engine lamp',
  ],
  ['gas leak', 'gas escape'],
  ['moisture', 'humidity'],
  [
    'celsius',
    'grades, grads, centigrades, grades celsius, degrees of celsius, degree celsius, celsius degrees, grad celsius, degrees centigrades, degrees centigrade',
  ],
  ['bar', 'atmospheres, atmosphere, kilos of pressure, kilos of air'],
  ['horsepower', 'horsepowers, horse powers, power horses, ps'],
  ['amp hours', 'ampere hour, amperes hour, amperes hours, hour amperes, amp hour'],
  [
    'kilometers per hour',
    'kilometer per hour, kilometers in hour, kilometers the hour, kilometer in hour, kilometers on hour, kilometers for hour',
  ],
  // participles made by rule
  ['bent', 'bended'],
  ['broken', 'breaked, broked, brokened'],
  ['torn', 'teared, tored'],
  ['worn', 'weared, wored'],
  ['split', 'splitted'],
  ['frozen', 'freezed, froozen'],
  ['stuck', 'sticked, stucked'],
  ['burnt', 'burnted'],
  ['fallen', 'falled, felled'],
  ['shut', 'shutted'],
  ['held', 'holded'],
  ['cut', 'cutted'],
];
