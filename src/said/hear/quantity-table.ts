// Why: which reading a unit alone, or the name of an aspect alone, calls for; as data.
// Trade usage (common practice, no source).
import type { Unit } from '../../units/unit.ts';

/** Where a unit alone says what is meant. */
export const byUnit: Partial<Record<Unit, readonly (readonly [part: string, aspect: string])[]>> = {
  '[HP]': [['engine', 'power']],
  '[mi_i]': [
    ['odometer', 'reading'],
    ['road_test_drive', 'miles'],
  ],
  km: [
    ['odometer', 'reading'],
    ['road_test_drive', 'miles'],
  ],
  L: [['engine', 'displacement']],
  '[lbf_av].[ft_i]': [['engine', 'torque']],
  '[mi_i]/[gal_us]': [['coach', 'economy']],
  '{rev}/min': [['engine', 'engine_speed']],
  '[mi_i]/h': [['road_test_drive', 'speed']],
  'km/h': [['road_test_drive', 'speed']],
  "[in_i'H2O]": [['lp_system', 'drop_test']],
  Hz: [['generator', 'hertz_loaded']],
};

/** The general aspect of a dimension. */
export const general: Partial<Record<string, string>> = {
  length: 'measured_length',
  mass: 'measured_weight',
  force: 'measured_weight',
  pressure: 'measured_pressure',
  temperature: 'measured_temperature',
  voltage: 'measured_voltage',
  current: 'measured_current',
  charge: 'measured_charge',
  power: 'measured_power',
  frequency: 'measured_frequency',
  speed: 'measured_speed',
  ratio: 'measured_share',
  flow: 'measured_flow',
  sound: 'measured_sound',
  rotation: 'measured_rotation',
  time: 'test_time',
  volume: 'measured_volume',
  energy: 'measured_energy',
};

/** Aspect names that need no part beside them. */
export const strongNames: ReadonlySet<string> = new Set([
  'gross',
  'length',
  'overall length',
  'gvwr',
  'gross weight',
  'gcwr',
  'mileage',
  'odometer',
  'wheelbase',
  'wheel base',
  'cargo capacity',
  'occc',
  'ccc',
  'payload',
  'carrying capacity',
  'tongue weight',
  'pin weight',
  'hitch weight',
  'drop test',
  'specific gravity',
  'freeze point',
  'lug torque',
  'engine hours',
  'generator hours',
  'gen hours',
  'sleeps',
  'rpm',
  'horsepower',
  'displacement',
  'front axle',
  'rear axle',
  'oil pressure',
  'water temp',
  'coolant temp',
]);

/** Readings that stand on two parts in the catalogue, and the one the record keeps. */
export const canonical: Readonly<Record<string, string>> = {
  'coach/gvwr': 'cert_label/gvwr',
  'coach/gcwr': 'chassis_label/gcwr',
  'chassis_label/wheelbase': 'coach/wheelbase',
  'generator/generator_hours': 'generator/hours',
  'hour_meters/generator_hours': 'generator/hours',
};
