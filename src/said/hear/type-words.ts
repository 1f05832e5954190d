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
  ['sidewall_structure', 'type', 'fiberglass, aluminum, laminated, corrugated, stick and tin, vacuum bonded'],
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
    'agm=AGM, flooded, lithium, lithium iron phosphate, lifepo4=LiFePO4, gel, lead acid, wet cell, wet cells, golf cart, flooded lead acid',
  ],
  ['chassis_battery', 'type', 'agm=AGM, flooded, gel, lead acid, maintenance free'],
  [
    'inverter_charger',
    'sine',
    'pure sine, modified sine, true sine, pure sine wave, modified sine wave, modified',
  ],
  ['generator', 'fuel', 'diesel, gas, gasoline, propane, lp=LP'],
  ['engine', 'fuel', 'diesel, gas, gasoline'],
  ['engine', 'type', 'inline six, turbo diesel, straight six, four cylinder, inline four'],
  [
    'radiator_cac',
    'type',
    'side, rear, side radiator=side, rear radiator=rear, side mount=side, rear mount=rear',
  ],
  ['transmission', 'type', 'automatic, manual, automated manual'],
  [
    'slide',
    'type',
    'full wall, hydraulic, electric, cable, rack and pinion, flush floor, in wall, through frame, super slide, opposing, wardrobe',
  ],
  ['levelling_jacks', 'type', 'hydraulic, electric, air, automatic, auto, manual, scissor'],
  ['patio_awning', 'type', 'power, electric, manual, pull out, box'],
  ['door_awning', 'type', 'power, electric, manual'],
  ['windows_side', 'type', 'dual pane, single pane, frameless, double pane, acrylic, tinted, thermal pane'],
  [
    'refrigerator',
    'type',
    'residential, absorption, gas electric absorption, gas and electric, gas electric, electric and gas, twelve volt compressor=12 V compressor, 12 volt compressor=12 V compressor, compressor, two way, three way, double door, four door, side by side',
  ],
  ['cooktop', 'type', 'induction, propane, gas, electric, lp=LP, glass top'],
  ['induction', 'type', 'induction, portable'],
  ['oven', 'type', 'gas, propane, electric, convection'],
  ['microwave', 'type', 'over the range'],
  [
    'water_heater_out',
    'type',
    'tankless, on demand, instant, gas electric, gas and electric, diesel, electric, hydronic, propane',
  ],
  ['water_heater_run', 'type', 'tankless, on demand, instant'],
  ['furnace_run', 'type', 'ducted, propane, diesel, hydronic'],
  ['ac_roof', 'type', 'heat pump, heat pumps, ducted, low profile, twelve volt=12 V, inverter'],
  ['lights_led', 'type', 'led=LED, halogen, fluorescent, incandescent'],
  [
    'floor_main',
    'type',
    'heated, porcelain tile, tile, ceramic tile, vinyl, vinyl plank, plank, carpet, laminate, hardwood, linoleum, wood, marble, lino, rubber floor',
  ],
  ['countertops', 'type', 'solid surface, granite, quartz, laminate, marble, butcher block'],
  ['cabinets', 'type', 'solid wood, cherry, maple, oak, hickory, walnut, alder, hardwood, birch'],
  ['dinette_sofa', 'type', 'leather, vinyl, cloth, booth, jackknife, ultraleather, microfiber, u shaped'],
  ['driver_seat', 'type', 'leather, vinyl, cloth, heated, power, air ride, six way, swivel'],
  [
    'bed_mattress',
    'size',
    'king, queen, rv king, rv queen, full size, twin, twins, bunks, murphy, split king, short queen, double, california king',
  ],
  [
    'toilet',
    'type',
    'macerating, macerator, gravity, porcelain, cassette, plastic, vacuum, composting, china',
  ],
  ['washer_dryer', 'type', 'stacked, stackable, combo, ventless, vented, all in one'],
  ['bay_storage', 'type', 'pass through, full pass through=full pass-through, heated'],
  ['lp_tank', 'type', 'mounted, frame mounted, portable, asme=ASME, permanent, composite'],
  ['brake_drum_rotor', 'type', 'air, disc, drum, disk, hydraulic, four wheel disc, anti lock'],
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
    'diesel pusher, class a, class b, class c, super c, fifth wheel, travel trailer, toy hauler, class b plus, camper van, class a gas, class a diesel, fifth wheeler, teardrop, bumper pull, front engine diesel',
  ],
  ['coach', 'energy', 'all electric'],
  [
    'coach',
    'floor_plan',
    'bunkhouse, bath and a half, rear kitchen, rear living, front living, mid bath, rear bath, rear bed, twin bed, rear lounge, bunk model',
  ],
  ['solar_array', 'type', 'rigid, flexible, mppt=MPPT, pwm=PWM, monocrystalline'],
  ['camera_rear', 'type', 'color, side view, three way'],
  ['entry_step', 'type', 'electric, manual, power, folding'],
  ['shower_tub', 'type', 'glass, fiberglass, residential, one piece, tub'],
  ['shades_house', 'type', 'day night, roller, power, pleated, mini'],
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
