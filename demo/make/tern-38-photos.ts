// Why: what was photographed on the walk of the Tern 38. Everything on these plates is invented.
import type { Plate } from './plate.ts';

const label = { ink: '#1b1b1b', paper: '#e9e6da' };
const metal = { ink: '#20252a', paper: '#b9bec2' };
const rubber = { ink: '#b9b9b4', paper: '#26272a' };
const yellow = { ink: '#222018', paper: '#e3c95a' };

export const ternPhotos: readonly Plate[] = [
  { file: 'data-plate.jpg', title: 'HOLLOWELL COACH WORKS (INVENTED)', lines: [['GVWR', '31,000 LB'], ['GAWR FRONT', '12,000 LB'], ['GAWR REAR', '19,000 LB'], ['TIRE', '275/80R22.5 G'], ['COLD PSI', '105'], ['MADE', '09/2005']], ...label, part: 'cert_label', caption: 'Certification label by the driver door', tilt: -1.4 },
  { file: 'chassis-plate.jpg', title: 'FERRANT CHASSIS (INVENTED)', lines: [['VIN', '1ZZHT38D85A002417'], ['YEAR', '2005'], ['GCWR', '41,000 LB'], ['WHEELBASE', '252 IN']], ...metal, part: 'chassis_label', caption: 'Chassis maker’s label', tilt: 2.1 },
  { file: 'odometer.jpg', title: 'ODOMETER', lines: [['TOTAL', '61,480 MI'], ['ENGINE', '2,210 H']], ink: '#f2d27a', paper: '#15181b', part: 'odometer', caption: 'Odometer and engine hours, lit', tilt: 0.6 },
  { file: 'tire-left-front.jpg', title: 'TIRE CODE', lines: ['DOT INV1 9TRN 1719', ['SIZE', '275/80R22.5'], ['LOAD RANGE', 'G']], ...rubber, part: 'tire', place: 'left-front', caption: 'Left front tire, date code', tilt: -3 },
  { file: 'tire-left-rear-inner.jpg', title: 'TIRE CODE', lines: ['DOT INV4 2OLD 1113', ['TREAD', '2/32']], ...rubber, part: 'tire', place: 'left-rear-inner', caption: 'Left rear inner tire, date code, through the hand hole', tilt: 4 },
  { file: 'hitch-plate.jpg', title: 'RECEIVER', lines: [['TRAILER', '10,000 LB'], ['TONGUE', '1,000 LB']], ...metal, part: 'hitch_receiver', caption: 'Rating plate on the receiver', tilt: -2 },
  { file: 'engine-label.jpg', title: 'VARRICK ENGINE (INVENTED)', lines: [['DISPLACEMENT', '8.3 L'], ['ADVERTISED', '350 HP'], ['TORQUE', '1,050 LB FT'], ['AT', '1,400 RPM']], ...metal, part: 'engine', caption: 'Engine label', tilt: 1 },
  { file: 'battery-sticker.jpg', title: 'DEEP CYCLE 6 V (INVENTED)', lines: [['20 H RATE', '220 AH'], ['DATE', 'G7']], ...yellow, part: 'house_battery', caption: 'House battery label with its date sticker', tilt: -5 },
  { file: 'generator-meter.jpg', title: 'QUENNEL GENERATOR (INVENTED)', lines: [['RATED', '8.0 KW'], ['HOURS', '1,240.6'], ['FUEL', 'DIESEL']], ...label, part: 'generator', caption: 'Generator nameplate and hour meter', tilt: 1.2 },
  { file: 'co-alarm.jpg', title: 'CARBON MONOXIDE ALARM', lines: ['REPLACE BY 2019'], ...label, part: 'co_alarm', caption: 'Date on the back of the CO alarm', tilt: -1 },
  { file: 'moisture-meter.jpg', title: 'PIN METER, WOOD', lines: [['BEDROOM, LEFT REAR', '24 %']], ink: '#12351f', paper: '#a9c7a0', part: 'rear_wall_inside', place: 'left-rear', caption: 'Moisture meter in the closet corner, driver side', tilt: 3 },
  { file: 'roof-sealant.jpg', title: 'LAP SEALANT, REAR A/C (DRAWN)', lines: ['crack 1: 4 in', 'crack 2: 3 in', 'meter 19 %'], ink: '#3b3a35', paper: '#d7d4c8', part: 'roof_sealant', place: 'rear', caption: 'Cracked lap sealant at the rear air conditioner', tilt: -2.5 },
  { file: 'scale-ticket.jpg', title: 'PUBLIC SCALE (INVENTED)', lines: [['STEER', '9,800 LB'], ['DRIVE', '18,340 LB'], ['GROSS', '28,140 LB'], ['DATE', '11/24/2026']], ink: '#2b2b33', paper: '#f2efe6', part: 'scale_weight', caption: 'Scale ticket', tilt: 0.8 },
];
