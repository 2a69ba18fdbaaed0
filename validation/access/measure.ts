import type { ValidationSource } from '../src/row.ts';
import { id } from './check.ts';
import { heatRows } from './heat.ts';
import { joistRows } from './joists.ts';
import { liftingRows } from './lifting.ts';
import { motion } from './motion.ts';
import { passingRows } from './passing.ts';
import { raisingRows } from './raising.ts';

export const source: ValidationSource = {
  id,
  title: 'Corners, hatches, lifting, ropes, joists and working heat',
  measure: () => [...passingRows(), ...motion(), ...liftingRows(), ...joistRows(), ...heatRows(), ...raisingRows()],
};
