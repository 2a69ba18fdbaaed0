import { type Entered, printQuantity } from '@kneewall/project';
import { expect, it } from 'vitest';
import { cameOut } from './readingEntry.ts';

const print = (value: number, kind: Parameters<typeof printQuantity>[1]) => printQuantity(value, kind, 'us');
const read = (value: number): Entered => ({ value, known: 'measured' });

it.each([
  // 125 Pa are half an inch of water (1 inH2O at 4 °C is 249.089 Pa); 0.0472 m³/s are 100 cfm.
  ['air/static', 124.54, ': 0.5 inH2O'],
  ['air/flow:reg-bath', 0.047195, ': 100 cfm'],
  ['look/pan', 1, ' Yes.'],
  ['look/pan', 0, ' No.'],
  ['nothing/known', 3.5, ': 3.5'],
])('%s read as %d says%s', (expected, value, text) => {
  expect(cameOut(expected, read(value), print)).toBe(text);
});

it('says nothing where nothing was read yet', () => {
  expect(cameOut('air/static', undefined, print)).toBe('');
});
