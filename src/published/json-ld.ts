// Why: machines read a listing too; they are told only what is known plainly, in schema.org's words for a Vehicle.
// Properties: schema.org/Vehicle, schema.org/Offer. Unit codes: UN/CEFACT common codes (SMI statute mile, FOT foot, INH inch, LBR pound, GLL US gallon).

import { aspectOf } from '../catalogue/index.ts';
import { vehicleKindNames } from '../catalogue/vehicle-kind.ts';
import type { Fact } from '../known/facts.ts';
import { unitName } from '../known/unit-name.ts';
import { convert } from '../units/quantity.ts';
import type { Unit } from '../units/unit.ts';
import type { Claim, Unpublished } from './document.ts';
import { plainFact } from './headline.ts';
import { plainValue } from './plain-value.ts';

type Json = Readonly<Record<string, unknown>>;

function quantitative(f: Fact | undefined, unit: Unit, unitCode: string): Json | undefined {
  if (f?.value.is !== 'quantity' || f.value.upTo !== undefined) return undefined;
  try {
    return {
      '@type': 'QuantitativeValue',
      value: Number(convert(f.value.value, f.value.unit, unit).toFixed(3)),
      unitCode,
    };
  } catch {
    // A reading in a unit of another dimension says nothing of this property.
    return undefined;
  }
}

const text = (f: Fact | undefined): string | undefined =>
  f === undefined ? undefined : plainValue(f.value, aspectOf(f.part, f.aspect));

/** A price is told to the cent as a decimal, as schema.org asks. */
const price = (cents: number): string => (cents / 100).toFixed(2);

/** schema.org Vehicle. What is unknown, guessed, only told or in conflict is left out. */
export function jsonLd(u: Unpublished, claims: readonly Claim[]): Json {
  const { unit } = u.record;
  const get = (part: string, aspect: string) => plainFact(u, part, aspect);
  const vin = text(get('vin_plate', 'vin'));
  const displacement = quantitative(get('engine', 'displacement'), 'L', 'LTR');
  const power = quantitative(get('engine', 'power'), '[HP]', 'BHP');
  const torque = quantitative(get('engine', 'torque'), 'N.m', 'NU');
  const fuel = text(get('engine', 'fuel'));
  const engine = {
    '@type': 'EngineSpecification',
    fuelType: fuel,
    engineDisplacement: displacement,
    enginePower: power,
    torque,
  };
  const faults = claims.filter((c) => c.section === 'disclosure' && c.published).map((c) => c.text);
  const all: Record<string, unknown> = {
    '@context': 'https://schema.org',
    '@type': 'Vehicle',
    name: unitName(u.facts),
    sku: unit.stock,
    manufacturer: unit.maker === undefined ? undefined : { '@type': 'Organization', name: unit.maker },
    model: unit.model,
    vehicleModelDate: unit.year === undefined ? undefined : String(unit.year),
    vehicleConfiguration: unit.vehicle === undefined ? undefined : vehicleKindNames[unit.vehicle],
    vehicleIdentificationNumber:
      vin !== undefined && /^[A-HJ-NPR-Z0-9]{17}$/i.test(vin) ? vin.toUpperCase() : undefined,
    mileageFromOdometer: quantitative(get('odometer', 'reading'), '[mi_i]', 'SMI'),
    fuelType: fuel,
    fuelCapacity: quantitative(get('fuel_tank', 'capacity'), '[gal_us]', 'GLL'),
    vehicleEngine: Object.values(engine).filter((v) => v !== undefined).length > 1 ? engine : undefined,
    wheelbase: quantitative(get('coach', 'wheelbase') ?? get('chassis_label', 'wheelbase'), '[in_i]', 'INH'),
    depth: quantitative(get('coach', 'length'), '[ft_i]', 'FOT'),
    height: quantitative(get('coach', 'height'), '[ft_i]', 'FOT'),
    width: quantitative(get('coach', 'width'), '[in_i]', 'INH'),
    weightTotal: quantitative(get('cert_label', 'gvwr'), '[lb_av]', 'LBR'),
    payload: quantitative(get('coach', 'cargo_left'), '[lb_av]', 'LBR'),
    trailerWeight: quantitative(get('coach', 'tow_limit'), '[lb_av]', 'LBR'),
    color: text(get('coach', 'color')),
    knownVehicleDamages: faults.length === 0 ? undefined : faults.join(' '),
    itemCondition: 'https://schema.org/UsedCondition',
    offers:
      unit.asking === undefined || unit.invented
        ? undefined
        : {
            '@type': 'Offer',
            price: price(unit.asking),
            priceCurrency: 'USD',
            itemCondition: 'https://schema.org/UsedCondition',
          },
    description: unit.invented
      ? 'INVENTED UNIT: this vehicle does not exist and is not for sale.'
      : undefined,
  };
  return JSON.parse(JSON.stringify(all)) as Json;
}
