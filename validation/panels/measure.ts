// Sources: tests of a general photovoltaics library (looked up), and values computed with it. See README.md.
import type { Row, ValidationSource } from '../src/row.ts';
import { angles } from './angles.ts';
import { cells } from './cells.ts';
import { diode } from './diode.ts';
import { inverter } from './inverter.ts';
import { power } from './power.ts';
import { snow } from './snow.ts';

export const source: ValidationSource = {
  id: 'panels',
  title: 'Solar panels and inverter',
  measure: (): Row[] => [...cells(), ...power(), ...diode(), ...angles(), ...inverter(), ...snow()],
};
