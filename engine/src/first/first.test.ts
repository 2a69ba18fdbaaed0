import { describe, expect, it } from 'vitest';
import { basisWords, evaluate, type FirstAnswer, firstAnswer, printerFor } from '../index.ts';

const answered = {
  schema: 1,
  site: { latitude: { value: 45 }, elevation: { value: 91 }, coldNight: { value: -15 }, hotAfternoon: { value: 31 } },
  house: { floorArea: { value: 102 } },
};

describe('what the first answer stands on', () => {
  const first = firstAnswer(evaluate(answered as never, {}).plan);
  const print = printerFor('us');

  it('names no other number as long as plain sums stand there', () => {
    expect(first.heating).toBeDefined();
    expect(basisWords(first, print)).not.toMatch(/sums/i);
  });

  it('says what plain sums gave once the hours have taken their place', () => {
    // 8400 W are 28 662 Btu/h, at 3.412142 Btu/h to the watt.
    const worked: FirstAnswer = { ...first, sums: 8400 };
    expect(basisWords(worked, print)?.replaceAll(/\s/g, ' ')).toContain(
      'Plain sums, which stand here until that is done, say 28 700 Btu/h',
    );
    expect(basisWords({ ...worked, partly: 'Two of five rooms.' }, print)).not.toMatch(/sums/i);
  });
});
