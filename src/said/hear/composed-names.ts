// Why: a room, a thing in it and a piece of that make more names than anybody lists: "guest bath sink faucet", "fridge door seal".
// Trade usage (common practice, no source).

const split = (text: string): string[] => text.split(',').map((w) => w.trim());
/** Every pairing of two lists; an empty word stands for none. */
const each = (...lists: readonly string[]): string[] =>
  lists
    .map(split)
    .reduce<string[]>(
      (heads, list) => heads.flatMap((h) => list.map((w) => (h === '' || w === '' ? h + w : `${h} ${w}`))),
      [''],
    );

const taps =
  'faucet, tap, spigot, mixer, drain, strainer, basin, faucet handle, tap handle, p trap, plumbing, drain line, stopper';
const kitchens = 'kitchen, galley';
const baths =
  'bath, bathroom, lav, lavatory, vanity, half bath, guest bath, guest bathroom, master bath, main bath, rear bath, front bath, mid bath, back bath, second bath, powder room, restroom';
const coolers = 'fridge, refrigerator, freezer, fridge freezer, reefer, icebox, ice box';
const washers = 'washer, dryer, washing machine, washer dryer, combo washer, laundry machine';
const spots = 'front, rear, back, mid, middle, center, bedroom, living room, main, forward, galley, kitchen';

const pieces =
  'blower, blower motor, fan, fan motor, motor, burner, element, compressor, igniter, ignitor, pilot, pilot light, thermocouple, control board, circuit board, door, door seal, gasket, seal, latch, handle, knob, knobs, switch, light, bulb, light bulb, hinge, lid, hose, drain, filter, shelf, screen, display, cover, vent, spout, valve';
/** "The blower motor on the furnace": the thing named behind its piece. */
const behind = (things: string): string[] => each(pieces, 'on the, in the, of the, for the, at the', things);

/** Part -> its composed names. */
export const composedNames: Readonly<Record<string, readonly string[]>> = {
  countertops: [
    ...behind('kitchen sink, galley sink, kitchen faucet, galley faucet'),
    ...each(kitchens, taps),
    ...each(kitchens, 'sink', taps),
    ...each(kitchens, 'sink sprayer, sink hose, sink cabinet, sink lid'),
    ...each('sink', 'tap, spigot, mixer, strainer, basin, bowl, drain'),
    ...each('pull out, pull down, spray', 'faucet, sprayer, tap'),
  ],
  bath_sink: [
    ...behind('bathroom sink, bath sink, lav, lavatory, vanity, bathroom faucet'),
    ...each(baths, 'sink, faucet, tap, spigot, mixer, basin, stopper, drain'),
    ...each(baths, 'sink', taps),
    'vanity cabinet',
    'pop up stopper',
  ],
  shower_tub: [
    ...behind('shower, tub, bathtub, shower door'),
    ...each(
      'shower, tub, bathtub',
      'drain, faucet, tap, mixer, valve, knob, knobs, handle, diverter, spigot, spout, arm, bar',
    ),
    ...each(
      'shower, tub, bathtub, shower pan, shower door',
      'seam, seams, seal, gasket, hinge, roller, rollers, frame, latch, caulk, caulking, sweep',
    ),
    ...each(
      'caulk, caulking, silicone, grout',
      'in the shower, around the shower, around the tub, in the tub, at the tub, at the shower, by the tub',
    ),
    'glass shower door',
    'shower stall door',
  ],
  toilet: [
    ...behind('toilet, commode, john'),
    ...each('pedal, lever, foot pedal, flush lever', 'on the toilet, on the commode'),
    'flush lever',
    'toilet lever',
    ...each(
      'toilet',
      'ring, spray, sprayer, supply, supply line, water valve, ball valve, blade, ball, ball seal, hinge, pedal, handle, bolts, closet flange, vacuum breaker, water line',
    ),
    ...each(
      'porcelain, china, ceramic, plastic, gravity, cassette, composting, electric',
      'toilet, bowl, throne',
    ),
    'john',
    'potty',
    'crapper',
    'terlet',
  ],
  refrigerator: [
    ...behind('fridge, refrigerator, freezer, reefer'),
    ...each(
      coolers,
      'door seal, door gasket, door handle, door latch, hinge, shelf, drawer, drawers, light, bulb, control board, control panel, display, thermistor, compressor, drip tray',
    ),
    ...each(
      'two door, four door, double door, side by side, twelve volt, one ten volt, electric, electric only, full size, apartment size',
      'fridge, refrigerator, freezer, reefer',
    ),
    'beer fridge',
    'frigerator',
  ],
  washer_dryer: [
    ...behind('washer, dryer, washing machine'),
    ...each(
      washers,
      'door, door seal, door gasket, drum, hose, hoses, drain, drain pump, drain hose, vent, lint trap, lint screen, lint filter, belt, lid, pan',
    ),
    ...each(
      'stackable, stacked, stacking, combo, all in one, ventless, vented, built in',
      'washer and dryer, washer dryer, washer, dryer, laundry',
    ),
    'wash machine',
    'washing machines',
  ],
  ac_run: [
    ...behind(
      'a c, ac, air conditioner, front ac, rear ac, front air, rear air, bedroom ac, bedroom unit, front unit, rear unit, roof air',
    ),
    ...each('bedroom, living room, middle, main', 'unit'),
    ...each(
      spots,
      'a c, ac, air, air conditioner, air con, aircon, roof air, roof ac, roof unit, air conditioning, heat pump',
    ),
    ...each('front, rear, back, mid, middle, center', 'airs, cooling unit'),
  ],
  furnace_run: [...each(spots, 'furnace, heater'), ...behind('furnace, heater, front furnace, rear furnace')],
  oven: [
    ...behind('oven'),
    ...each(
      'oven',
      'light, bulb, light bulb, element, door glass, door handle, door hinge, door spring, thermostat, window, racks, flame, dial, temperature',
    ),
    'broiler',
  ],
  cooktop: [
    ...behind('stove, range, cooktop'),
    ...each(
      'fan, exhaust fan, vent fan, light, hood',
      'over the stove, over the range, above the stove, above the range',
    ),
    ...each(
      'stove, range, cooktop, cook top, stovetop',
      'igniter, ignitor, sparker, grate, grates, lid, glass, glass top, glass lid, glass cover',
    ),
    ...each('hood', 'fan, light, filter, vent'),
    'griddle',
  ],
  microwave: [
    ...behind('microwave'),
    'micro',
    'the mike row wave',
    ...each(
      'microwave',
      'turntable, tray, glass tray, light bulb, bulb, vent, fan, door latch, keypad, display, buttons, vent fan, hood',
    ),
    'nuker',
    'micro wave',
  ],
  dishwasher: [
    ...behind('dishwasher'),
    ...each('dishwasher, dish drawer', 'door, latch, rack, racks, pump, arm, spray arm, drain'),
  ],
  water_heater_run: [
    ...behind('water heater, hot water heater'),
    ...each(
      'water heater',
      'thermostat, board, control board, switch, igniter, ignitor, probe, thermocouple, gas valve',
    ),
    'hot water side',
    'hot side',
  ],
  water_heater_out: each(
    'water heater',
    'plug, bypass valve, bypass valves, bypass kit, check valve, relief, relief valve, gasket, door latch, flue, tube',
  ),
  city_water: [
    'city inlet',
    'shore water',
    'backflow preventer',
    'back flow preventer',
    'back flow valve',
    'inlet check valve',
    'water hookups',
    'city side',
    'city water side',
    'city water fitting',
    'city water inlet screen',
    'hose bib',
    'hose inlet',
    'check valve at the inlet',
    'check valve on the inlet',
    'check valve at the city water',
    'check valve on the city water',
  ],
  fresh_system_test: [
    'pressurized the system',
    'pressured up the system',
    'pressurized the lines',
    'pressured up the lines',
    'pressurized the water side',
    'pressurized the plumbing',
    'air test on the lines',
    'air test on the plumbing',
  ],
  water_filter: [
    ...each(
      'water, whole house, sediment, carbon, inline, drinking water, under sink',
      'filter, filters, filter housing, filter canister, filter cartridge, filter bowl',
    ),
    'whole house canister',
    'filter bowl',
    'cartridge',
    'reverse osmosis',
    'reverse osmosis system',
    'osmosis filter',
    'filter element',
    'water purifier',
  ],
  plumbing: [
    ...each(
      'pex, water, hot water, cold water, drain, sink drain, waste',
      'line, lines, pipe, pipes, fitting, fittings, elbow, tee, connection, connections, crimp, crimps, manifold, ring',
    ),
    'water side',
    'plumbing side',
    'water works',
    'waterworks',
    'cold water',
    'elbow',
    'elbows',
    'rv antifreeze',
    'pink antifreeze',
    'pink stuff',
    'winterizing antifreeze',
    'shut off under the sink',
  ],
  fireplace: [
    'fireplace',
    'fireplaces',
    'fire place insert',
    'electric heater insert',
    'faux fireplace',
    'fireplace unit',
    'fireplace flame',
    'fireplace remote',
    'fireplace blower',
  ],
  monitor_panel: [
    ...each('panel, monitor, tank, tank panel, level', 'lights, leds, buttons'),
    ...each('monitor', 'panel, panel display, panel button'),
    'the panel in the hall',
    'level lights',
    'idiot panel',
  ],
  ducts_air: [
    'supply vents',
    'supply ducts',
    'ceiling ducts',
    'ceiling duct',
    'return filter',
    'return air grille',
    'return filters',
    'flex duct',
    'flex ducts',
    'heat registers',
    'heat register',
    'floor grilles',
    'floor duct',
  ],
  thermostats: [
    ...behind('thermostat'),
    'zone one',
    'zone two',
    'zone three',
    ...each(
      'front, rear, back, bedroom, living room, main, zone one, zone two, zone three',
      'thermostat, t stat, tstat, zone',
    ),
  ],
};
