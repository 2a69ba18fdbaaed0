import { expect, it } from 'vitest';
import { glued } from './glued.ts';

it.each([
  ['down by 2 1/8", at 3 Pa.', 'down by 2_1/8", at 3_Pa.'],
  ['takes 4\' 3 3/16".', 'takes 4\'_3_3/16".'],
  ['of 5 registers each', 'of 5 registers each'],
  ['', ''],
])('%s', (text, held) => {
  expect(glued(text).replaceAll('\u00a0', '_')).toBe(held);
});
