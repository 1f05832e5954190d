// The usual work on every defect as one list. The content is in the files beside this one.
import type { DefectWork } from '../defect-work.ts';
import { bathBedroomWork } from './bath-bedroom.ts';
import { baysWork } from './bays.ts';
import { cabWork } from './cab.ts';
import { curbSideWork } from './curb-side.ts';
import { frontWork } from './front.ts';
import { livingWork } from './living.ts';
import { papersWork } from './papers.ts';
import { rearWork } from './rear.ts';
import { roadSideWork } from './road-side.ts';
import { roofWork } from './roof.ts';
import { systemsRoadWork } from './systems-road.ts';
import { underneathWork } from './underneath.ts';
import { wheelsWork } from './wheels.ts';

/** In the order of the walk. */
export const defectWork: readonly DefectWork[] = [
  ...papersWork,
  ...frontWork,
  ...curbSideWork,
  ...rearWork,
  ...roadSideWork,
  ...wheelsWork,
  ...baysWork,
  ...underneathWork,
  ...roofWork,
  ...cabWork,
  ...livingWork,
  ...bathBedroomWork,
  ...systemsRoadWork,
];
