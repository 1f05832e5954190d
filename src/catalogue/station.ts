// Why: the walk's stations in travel order, with how long each takes one trained person.
// Trade usage (common practice, no source).
import type { Station } from './part.ts';

export const stations: readonly Station[] = [
  { id: 'papers', name: 'Papers and identity', where: 'Desk and driver door, before moving the coach', minutes: 12, photos: ['labels', 'title', 'keys', 'records'], say: ['papers', 'paperwork', 'vin', 'title'] },
  { id: 'front', name: 'Front cap and windshield', where: 'Stand 20 ft off the front, then close', minutes: 6, photos: ['straight-on front', 'three-quarter both sides'], say: ['the front', 'front cap', 'windshield'] },
  { id: 'curb-side', name: 'Curb side outside', where: 'Front to rear along the passenger (curb) side', minutes: 12, photos: ['full side square-on', 'door', 'awnings out'], say: ['passenger side', 'curb side', 'door side'] },
  { id: 'rear', name: 'Rear, hitch and engine door', where: 'Across the back', minutes: 10, photos: ['rear square-on', 'hitch and plug', 'engine open'], say: ['the back', 'back end', 'around the back', 'the rear'] },
  { id: 'road-side', name: 'Road side outside', where: 'Rear to front along the driver (road) side', minutes: 10, photos: ['full side square-on', 'slides out', 'water bay'], say: ['driver side', 'road side', 'driver\'s side'] },
  { id: 'wheels', name: 'Wheels, tires, brakes', where: 'Second lap, one corner at a time LF, LR, tag, RR, RF', minutes: 25, photos: ['each tire tread', 'sidewall and date code'], say: ['tires', 'wheels', 'duals'] },
  { id: 'bays', name: 'Bays, batteries, LP, generator', where: 'Open each door, same lap direction', minutes: 20, photos: ['every bay open', 'batteries', 'generator nameplate'], say: ['bays', 'basement', 'batteries', 'generator', 'propane'] },
  { id: 'underneath', name: 'Underneath, chassis and engine', where: 'Creeper, pit or lift; suspension supported', minutes: 25, photos: ['frame', 'springs', 'tanks', 'leaks', 'fluids'], say: ['underneath', 'under the coach', 'creeper', 'frame'] },
  { id: 'roof', name: 'Roof', where: 'Ladder, three points, second person, dry roof only', minutes: 18, photos: ['four quarters of roof', 'each penetration'], say: ['roof', 'up the ladder', 'on the roof'] },
  { id: 'cab', name: 'Cab', where: 'Driver seat, ignition on then running', minutes: 14, photos: ['dash lit', 'odometer', 'wheel', 'seats'], say: ['cab', 'cockpit', 'driver seat', 'dash'] },
  { id: 'living', name: 'Living area and galley', where: 'Front to rear inside, slides out', minutes: 22, photos: ['each wall', 'floor', 'ceiling', 'each appliance'], say: ['inside', 'living area', 'kitchen', 'galley', 'salon'] },
  { id: 'bath-bedroom', name: 'Bath and bedroom', where: 'Same walk, to the rear wall', minutes: 12, photos: ['shower', 'toilet', 'bed', 'closets'], say: ['bathroom', 'bedroom', 'bath', 'back bedroom'] },
  { id: 'systems-road', name: 'House systems run and road test', where: 'Shore power, then LP, water, generator, then 20-mile drive and scale', minutes: 75, photos: ['meter readings', 'panel screens', 'scale ticket'], say: ['road test', 'test drive', 'on the road', 'hook up'] },
];
