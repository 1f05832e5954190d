// Why: the usual hazards of looking at a coach, said once, so that every rule and finding says them the same way.
// Trade usage (common practice, no source): follow local codes, and leave licensed work to licensed people.

/** Key -> what to say before the look, and beside the finding. */
export const cautions = {
  lifting:
    'The coach can drop. Never go under it on its own jacks or air bags: rated stands or a pit, wheels chocked, keys out. If you are not trained, leave it to a heavy-vehicle technician.',
  'lp-gas':
    'Fuel gas can explode. No flame or spark, doors open, detector left on. Opening or pressure-testing the gas side is for a licensed LP technician under local code. If you smell gas: close the tank valve, get out, call for help.',
  'shore-power':
    '120/240 V can kill. Covers stay on; outside readings and plug testers only. Anything behind a cover is for a qualified electrician or certified RV technician.',
  roof: 'Falls hurt. Dry roof, three points on the ladder, a second person, stay off edges and lids, walk only a roof known to carry you; or use a pole camera. Local fall-protection rules apply.',
  'air-brakes':
    'Chock the wheels first. A spring brake chamber holds a spring that can kill: never open one. Adjusting an automatic adjuster by hand hides a fault. Brake work is for a qualified brake technician.',
  batteries:
    'Battery gas can explode, a short burns, acid blinds. Eye protection, no rings, air moving. Keep away from a swollen or hot lithium battery and get trained help.',
  'carbon-monoxide':
    'Carbon monoxide kills without a smell. Run engines and heaters outdoors with a working alarm; never sleep with one running that has not been proven.',
  hydraulics:
    'Hydraulic oil under pressure goes through skin, and parts pinch and drop. Hands clear, nobody between moving parts.',
  tires:
    'Stand to the side of a tire when gauging or filling it. Never fill one on the coach that was found flat or damaged: a tire shop with a cage.',
  driving:
    'A licensed driver for this weight and these brakes, insured, legal plate, belts on. Stop at the first sign of brake, steering or tire trouble.',
  engine:
    'Hot coolant and oil burn, fans start by themselves, belts grab. Engine off and cool before hands go in.',
  slides:
    'A moving room crushes. One person at the switch, one watching, nobody in the path; stop at once on a strange noise.',
  sewage:
    'Sewage and mold make people ill: gloves, mask, eye protection, wash. Heavy mold is for trained people.',
  refrigerant:
    'Refrigerant circuits are sealed; opening one needs certification under section 608 or 609 of the Clean Air Act.',
  ammonia:
    'An absorption refrigerator holds ammonia and hydrogen. Yellow residue or an ammonia smell: shut it off, open the doors, leave, and call a licensed technician.',
  'hot-water': 'Water above 120 °F scalds, and relief valves spit. Let it cool first.',
  fuel: 'Fuel and its vapor burn. No flame, fan or telephone at the leak; contain it and call trained help.',
} as const satisfies Record<string, string>;

export type CautionKey = keyof typeof cautions;

/** The words of a caution; undefined for a key that is not in the list. */
export const cautionOf = (key: string | undefined): string | undefined =>
  key !== undefined && Object.hasOwn(cautions, key) ? cautions[key as CautionKey] : undefined;
