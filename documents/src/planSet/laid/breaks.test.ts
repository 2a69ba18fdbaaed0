import { evaluate } from '@kneewall/engine';
import LineBreaker from 'linebreak';
import { expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { partsOf } from './breaks.ts';

/** As the general library breaks a whole text by all rules of UAX 14, but for places behind a stroke. */
function whole(text: string): string[] {
  const breaker = new LineBreaker(text);
  const parts: string[] = [];
  let start = 0;
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) {
    if (text.charAt(next.position - 1) === '/' && next.position < text.length) continue;
    parts.push(text.slice(start, next.position));
    start = next.position;
  }
  return parts;
}

it('keeps a unit together', () => {
  expect(partsOf('18,000 Btu/h of W/(m²K)').map((p) => p.text)).toEqual(['18,000 ', 'Btu/h ', 'of ', 'W/(m²K)']);
});

it('breaks every text of a plan, and odd ones, where the library does by all rules at once', () => {
  const { findings, tasks, workings } = evaluate(demo('juniper-flat'), {}, { units: 'us' }).plan;
  const texts = [
    ...findings.flatMap((f) => [f.what, f.why, f.mend]),
    ...tasks.flatMap((t) => [t.what, ...t.safeStops]),
    ...Object.values(workings).flatMap((steps) => steps.map((s) => `${s.formula} [${s.source}]`)),
    '  two blanks before, (in brackets) “quoted” – and—dashes, 3/4" by 1.5-2 ft², $5 000/m',
    'אבג 24 – ไทย e\u0301a',
  ];
  expect(texts.length).toBeGreaterThan(100);
  for (const text of texts) if (text) expect(partsOf(text).map((p) => p.text)).toEqual(whole(text));
  expect(partsOf('one\n\ntwo\r\n')).toEqual([
    { text: 'one', ends: true },
    { text: '', ends: true },
    { text: 'two', ends: true },
  ]);
});
