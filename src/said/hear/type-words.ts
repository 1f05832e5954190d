// Why: kinds, materials and sizes by name: a word is an answer only to the parts that come in that kind.
// Trade usage (common practice, no source).

/** A kind said of a part: which aspect it answers, and in what words it is kept. */
export interface TypeWord {
  readonly part: string;
  readonly aspect: string;
  readonly text: string;
}

const rows: readonly (readonly [part: string, aspect: string, words: string])[] = [
  ['title_doc', 'brand_on_title', 'clear, clean, salvage, rebuilt, branded, lien free'],
  ['engine_oil', 'color', 'dark, honey, amber, golden'],
  ['transmission', 'color', 'red, pink, brown, dark'],
  ['coolant', 'type', 'green, orange, red, pink, yellow, extended life'],
  [
    'roof_membrane',
    'type',
    'fiberglass, rubber=EPDM rubber, epdm=EPDM, tpo=TPO, pvc=PVC, aluminum, metal, steel, crowned fiberglass',
  ],
  ['roof_membrane', 'construction', 'one piece, seamless, two piece'],
  [
    'body_paint',
    'type',
    'full body paint, full paint, gel coat, decals, vinyl graphics, partial paint, two tone',
  ],
  [
    'sidewall_structure',
    'type',
    'metal, tin, smooth fiberglass, corrugated aluminum, fiberglass, aluminum, laminated, corrugated, stick and tin, vacuum bonded',
  ],
  ['windshield', 'type', 'one piece, two piece, single piece, heated, tinted'],
  [
    'tire',
    'type',
    'all terrain, all position, highway, radial, bias ply, retread, recap, trailer tires, light truck',
  ],
  ['wheels_lugs', 'type', 'aluminum, alloy, steel, chrome, polished, forged aluminum, steel with covers'],
  [
    'house_battery',
    'chemistry',
    'agm=AGM, agms=AGM, lithiums=lithium, sealed, wet, flooded, lithium, lithium iron phosphate, lifepo4=LiFePO4, gel, lead acid, wet cell, wet cells, golf cart, flooded lead acid',
  ],
  ['chassis_battery', 'type', 'agm=AGM, flooded, gel, lead acid, maintenance free'],
  [
    'inverter_charger',
    'sine',
    'pure sine, modified sine, true sine, pure sine wave, modified sine wave, modified',
  ],
  [
    'generator',
    'fuel',
    'diesel, gas, gasoline, propane, lp=LP, burns gasoline=gasoline, burns gas=gas, burns diesel=diesel, burns propane=propane',
  ],
  ['engine', 'fuel', 'diesel, gas, gasoline, gasser=gas, gas burner=gas, oil burner=diesel'],
  ['engine', 'type', 'inline six, turbo diesel, straight six, four cylinder, inline four'],
  ['radiator_cac', 'type', 'side radiator=side, rear radiator=rear, side mount=side, rear mount=rear'],
  ['transmission', 'type', 'automatic, manual, automated manual'],
  [
    'slide',
    'type',
    'full wall, hydraulic, electric, cable, rack and pinion, flush floor, in wall, through frame, super slide, opposing, wardrobe',
  ],
  ['levelling_jacks', 'type', 'hydraulic, electric, air, automatic, auto, manual, scissor'],
  [
    'patio_awning',
    'type',
    'power, electric, manual, pull out, box, push button, push button kind=push button, hand crank, crank, spring loaded',
  ],
  ['door_awning', 'type', 'power, electric, manual'],
  ['windows_side', 'type', 'dual pane, single pane, frameless, double pane, acrylic, tinted, thermal pane'],
  [
    'refrigerator',
    'type',
    'residential, household, household type=household, house type=household, french door, absorption, gas electric absorption, gas and electric, gas electric, electric and gas, twelve volt compressor=12 V compressor, 12 volt compressor=12 V compressor, compressor, two way, three way, double door, four door, side by side',
  ],
  ['cooktop', 'type', 'induction, propane, gas, electric, lp=LP, glass top'],
  ['induction', 'type', 'induction, portable'],
  ['oven', 'type', 'gas, propane, electric, convection'],
  ['microwave', 'type', 'over the range, convection, microwave convection=convection'],
  [
    'water_heater_out',
    'type',
    'tankless, on demand, instant, gas electric, gas and electric, diesel, electric, hydronic, propane',
  ],
  ['water_heater_run', 'type', 'tankless, on demand, instant'],
  ['furnace_run', 'type', 'ducted, diesel, hydronic'],
  ['ac_roof', 'type', 'heat pump, heat pumps, ducted, low profile, twelve volt=12 V, inverter'],
  ['wardrobe', 'type', 'cedar, cedar lined=cedar, walk in, mirrored, his and hers, slide out'],
  ['passenger_seat', 'type', 'leather, vinyl, cloth, heated, power, swivel'],
  ['lights_led', 'type', 'led=LED, halogen, fluorescent, incandescent'],
  [
    'floor_main',
    'type',
    'laminate planks=laminate, laminate plank=laminate, vinyl planks=vinyl plank, wood plank, wood planks=wood plank, luxury vinyl plank=vinyl plank, luxury vinyl=vinyl plank, engineered wood, plank flooring=plank, sheet vinyl, berber, shag, parquet, congoleum, heated, porcelain tile, tile, laminate flooring=laminate, lvp=vinyl plank, ceramic tile, vinyl, vinyl plank, plank, carpet, laminate, hardwood, linoleum, wood, marble, lino, rubber floor',
  ],
  ['countertops', 'type', 'solid surface, granite, quartz, laminate, marble, butcher block'],
  [
    'cabinets',
    'type',
    'solid wood, pine, mahogany, pecan, teak, ash, beech, thermofoil, mdf, particle board, painted, cherry, maple, oak, hickory, walnut, alder, hardwood, birch',
  ],
  [
    'dinette_sofa',
    'type',
    'power, air bed, queen air bed, hide a bed, free standing, sectional, tri fold, leatherette, faux leather, leather, vinyl, cloth, booth, jackknife, ultraleather, microfiber, u shaped',
  ],
  ['driver_seat', 'type', 'leather, vinyl, cloth, heated, power, air ride, six way, swivel'],
  [
    'bed_mattress',
    'size',
    'king bed=king, queen bed=queen, double bed=double, full bed=full, air mattress, memory foam, adjustable, adjustable base, air bed=air, pillow top, king, queen, rv king, rv queen, full size, twin, twins, murphy, queen size, king size, split king, short queen, double, california king',
  ],
  [
    'toilet',
    'type',
    'macerating, macerator, gravity, porcelain, cassette, plastic, vacuum, composting, china',
  ],
  ['washer_dryer', 'type', 'stacked, stackable=stacked, stack=stacked, combo, ventless, vented, all in one'],
  [
    'bay_storage',
    'type',
    'full pass through=full pass-through, pass through storage=pass-through, pass through bay=pass-through, heated',
  ],
  ['lp_tank', 'type', 'mounted, frame mounted, portable, asme=ASME, permanent, composite'],
  ['brake_drum_rotor', 'type', 'air, disc, drum, electric drum, disk, hydraulic, four wheel disc, anti lock'],
  ['suspension_air', 'type', 'air ride, air suspension, full air'],
  ['suspension_leaf', 'type', 'leaf springs, torsion, rubber torsion, torsion axle, independent'],
  [
    'hitch_receiver',
    'class',
    'class three, class four, class five, class 3, class 4, class 5, class iii, class iv',
  ],
  [
    'coach',
    'class',
    'gas coach=gas, gas motorhome=gas, gas motor home=gas, gas rig=gas, gas unit=gas, diesel coach=diesel, diesel motorhome=diesel, diesel motor home=diesel, diesel rig=diesel, diesel unit=diesel, park model, pop up, cabover camper, truck camper, van camper, bunkhouse trailer, destination trailer, diesel puller, gas pusher, diesel pusher, class a, class b, class c, super c, fifth wheel, travel trailer, toy hauler, class b plus, camper van, class a gas, class a diesel, fifth wheeler, teardrop, bumper pull, front engine diesel',
  ],
  ['coach', 'energy', 'all electric'],
  [
    'coach',
    'floor_plan',
    'bunkhouse, bath and a half, bath and half=bath and a half, double bunk, rear den, front kitchen, mid kitchen, rear queen, island kitchen, rear kitchen, rear living, front living, mid bath, rear bath, rear bed, twin bed, rear lounge, bunk model',
  ],
  ['solar_array', 'type', 'rigid, flexible, mppt=MPPT, pwm=PWM, monocrystalline'],
  ['camera_rear', 'type', 'color, side view, three way'],
  [
    'entry_step',
    'type',
    'electric, manual, power, folding, fold down, fold out, fold up, pull out, scissor, solid',
  ],
  ['shower_tub', 'type', 'walk in, wet bath, neo angle, glass, fiberglass, residential, one piece, tub'],
  ['shades_cab', 'type', 'power, manual, roller, electric'],
  ['thermostats', 'type', 'digital, programmable, manual, touch'],
  ['cruise_control', 'type', 'two stage, three stage'],
  ['tongue_jack', 'type', 'power, electric, manual, hand crank'],
  ['roof_sealant', 'type', 'self leveling, self levelling'],
  ['vents_roof', 'type', 'power, manual, electric, powered, variable speed'],
  ['radio_nav', 'type', 'double din'],
  ['interior_door', 'type', 'pocket, sliding, accordion, barn'],
  [
    'shades_house',
    'type',
    'cellular, honeycomb, venetian, blackout, black out, pull down, fabric, day night, roller, power, pleated, mini',
  ],
  ['hydronic_unit', 'fuel', 'diesel, electric'],
  ['frame_rails', 'type', 'steel, galvanized, aluminum'],
  [
    'tow_plug',
    'type',
    'seven pin=7-pin, seven way=7-way, six pin=6-pin, four pin=4-pin, 7 pin=7-pin, 7 way=7-way',
  ],
  ['pin_box', 'type', 'air ride, rubber pin, cushioned'],
];

/** Every kind word, with the words that say it. */
export const typeWords: readonly { readonly phrase: string; readonly word: TypeWord }[] = rows.flatMap(
  ([part, aspect, words]) =>
    words.split(',').map((w) => {
      const [phrase = '', text] = w.trim().split('=');
      return { phrase: phrase.trim(), word: { part, aspect, text: (text ?? phrase).trim() } };
    }),
);

/** Colors of paint, cloth and fluids. */
export const colors: ReadonlySet<string> = new Set(
  'white black gray grey silver gold tan beige brown cream copper bronze maroon burgundy red blue navy teal green yellow orange champagne pewter charcoal mocha ivory almond taupe sand sandstone rust pearl graphite burgandy purple turquoise amber'.split(
    ' ',
  ),
);
