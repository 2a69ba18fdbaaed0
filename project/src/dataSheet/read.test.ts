import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDataSheet } from './read.ts';

/** An invented sheet. */
const sheet = [
  'Mode,Speed,Outdoor (°F),Indoor (°F),Indoor wet bulb (°F),Capacity (Btu/h),Power (W),Airflow (cfm),Sensible share,Defrost counted',
  'heating,highest,47,70,,28000,2300,700,,no',
  'heating,highest,17,70,,"25\u202f400",2850,700,,no',
  'heating,lowest,47,70,,8000,510,420,,yes',
  '',
  'cooling,highest,95,80,67,26300,2500,700,0.72,',
].join('\n');
const rowsOf = (text: string) => readDataSheet(text).value ?? {};
const faults = (text: string) => readDataSheet(text).problems.map((p) => `${p.grade} ${p.code} ${p.path.join(' | ')}`);
const changed = (from: string, to: string): string => sheet.replace(from, to);

describe('a data sheet as a table', () => {
  // Factors: 1 Btu/h = 0.29307107 W, 1 cfm = 0.000471947 m³/s (NIST SP 811, exact by definition).
  it('takes a comma for what it can only be in a row of a unit, and a table as a spreadsheet copies it', () => {
    const us = readDataSheet('mode,speed,outdoor (F),capacity (Btu/h),power (W)\nheating,rated,47,"24,000","1,800"');
    expect(us.problems).toEqual([]);
    expect(us.value?.['heating-rated-8-3']?.capacity?.value).toBeCloseTo(24_000 * 0.29307107, 2);
    expect(us.value?.['heating-rated-8-3']?.power?.value).toBe(1800);
    const si = readDataSheet('mode\tspeed\toutdoor (°C)\tcapacity (kW)\tCOP\nheating\trated\t-8,3\t5,8\t2,4');
    expect(si.problems).toEqual([]);
    expect(si.value?.['heating-rated-minus-8-3']?.capacity?.value).toBe(5800);
  });

  it('becomes rows in the document’s units, each cell kept as it was written', () => {
    const { value, problems } = readDataSheet(sheet);
    expect(problems).toEqual([]);
    expect(Object.keys(value ?? {})).toEqual([
      'heating-most-8-3',
      'heating-most-minus-8-3',
      'heating-least-8-3',
      'cooling-most-35',
    ]);
    const row = value?.['heating-most-8-3'];
    expect(row?.outdoor?.value).toBeCloseTo(8.3333, 4);
    expect(row?.capacity).toMatchObject({ known: 'nameplate', as: '28000 Btu/h' });
    expect(row?.capacity?.value).toBeCloseTo(8205.99, 2);
    expect(row?.airflow?.value).toBeCloseTo(0.330363, 6);
    expect(value?.['heating-least-8-3']?.defrostCounted).toBe('yes');
    expect(value?.['cooling-most-35']?.sensibleShare?.value).toBe(0.72);
    expect(value?.['cooling-most-35']?.indoorWetBulb?.value).toBeCloseTo(19.4444, 4);
  });

  it('takes power from COP, the sensible share from its capacity, and decimal commas between semicolons', () => {
    const rows = rowsOf(
      'mode;speed;outdoor [°C];capacity [kW];sensible capacity [kW];COP\ncooling;max;35;7,5;5,4;3,0\nheating;max;-7;6,2;;2,5',
    );
    expect(rows['cooling-most-35']?.power?.value).toBeCloseTo(2500, 9);
    expect(rows['cooling-most-35']?.power?.as).toBe('7.5 kW at COP 3.0');
    expect(rows['cooling-most-35']?.sensibleShare?.value).toBeCloseTo(0.72, 12);
    expect(rows['heating-most-minus-7']?.capacity?.value).toBeCloseTo(6200, 9);
  });

  it('leaves out a row where the unit does not run, and says so; two of one state are both kept', () => {
    const text = `${sheet}\nheating,highest,-22,70,,—,—,,,\nheating,highest,47,68,,28100,2310,700,,no`;
    expect(faults(text)).toEqual(['ask missing-column row | 7']);
    expect(Object.keys(rowsOf(text))).toContain('heating-most-8-3-2');
  });

  it.each<[string, string, string]>([
    ['a word for a number', changed('28000', 'lots'), 'refused wrong-type row | 2 | Capacity (Btu/h)'],
    [
      'a comma with two meanings of which neither is likely',
      changed('2850,700', '2850,"9,900"'),
      'refused wrong-type row | 3 | Airflow (cfm)',
    ],
    ['a negative capacity', changed('28000', '-28000'), 'refused impossible row | 2 | Capacity (Btu/h)'],
    ['an unknown speed', changed('heating,lowest', 'heating,turbo'), 'refused not-an-option row | 4 | Speed'],
    [
      'a unit of something else',
      changed('Capacity (Btu/h)', 'Capacity (kg)'),
      'refused wrong-unit row | 1 | Capacity (kg)',
    ],
    [
      'a unit with two meanings',
      changed('Capacity (Btu/h)', 'Capacity (MBH)'),
      'refused wrong-unit row | 1 | Capacity (MBH)',
    ],
    [
      'no unit at all, once for the column',
      changed('Capacity (Btu/h)', 'Capacity'),
      'refused wrong-unit row | 2 | Capacity',
    ],
    ['a missing column', changed('Speed', 'Gear'), 'refused missing-column row | 1'],
    ['a column twice', changed('Sensible share', 'Power (W)'), 'refused duplicate-key row | 1 | Power (W)'],
    ['an empty file', '  \n', 'refused missing-column '],
    ['binary', 'a\u0000b', 'refused not-text '],
  ])('refuses %s at its place', (_name, text, fault) => {
    expect(readDataSheet(text).value).toBeUndefined();
    expect(faults(text)).toContain(fault);
    expect(faults(text).filter((f) => f.startsWith('refused wrong-unit')).length).toBeLessThanOrEqual(1);
  });

  it.each([
    ['less heat than electricity', changed('28000,2300', '2300,28000'), 'ask implausible row | 2 | Power (W)'],
    ['a temperature nobody has', changed('highest,47', 'highest,470'), 'ask implausible row | 2 | Outdoor (°F)'],
    [
      'a column it does not know',
      `${sheet.replace('Defrost counted', 'Noise (dB)')}`,
      'ask unknown-field row | 1 | Noise (dB)',
    ],
  ])('asks about %s and takes the rest', (_name, text, fault) => {
    expect(faults(text)).toContain(fault);
    expect(readDataSheet(text).value).toBeDefined();
  });

  it('never throws, and gives rows or says why not', () => {
    const odd = fc.string({ unit: fc.constantFrom(...'mode,speed\n;()0123-. heatingW°F"\t'), maxLength: 120 });
    fc.assert(
      fc.property(odd, fc.nat(sheet.length), (text, at) => {
        for (const t of [text, sheet.slice(0, at) + text + sheet.slice(at)]) {
          const { value, problems } = readDataSheet(t);
          if (value === undefined && problems.length === 0) return false;
        }
        return true;
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
