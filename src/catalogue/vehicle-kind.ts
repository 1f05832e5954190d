// Why: the kinds of vehicle a dealership takes in; what applies to a unit starts from its kind.

export const vehicleKinds = [
  'class-a-diesel',
  'class-a-gas',
  'class-b',
  'class-c',
  'fifth-wheel',
  'travel-trailer',
] as const;
/** What kind of vehicle a unit is. */
export type VehicleKind = (typeof vehicleKinds)[number];

export const vehicleKindNames: Record<VehicleKind, string> = {
  'class-a-diesel': 'class A diesel',
  'class-a-gas': 'class A gas',
  'class-b': 'class B van',
  'class-c': 'class C',
  'fifth-wheel': 'fifth wheel',
  'travel-trailer': 'travel trailer',
};

/** True for kinds that drive themselves. */
export const isMotorized = (kind: VehicleKind): boolean =>
  kind !== 'fifth-wheel' && kind !== 'travel-trailer';
