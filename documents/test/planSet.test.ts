import { evaluate } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { type Letters, planSet, printPlanSet } from '../src/planSet/index.ts';
import { demo } from './demos.ts';
import { fonts, readPdf } from './paper.ts';

const printed = (project: Project, units: System, letters: Letters = 'plain'): Promise<Uint8Array> =>
  printPlanSet(planSet({ plan: evaluate(project, {}, { units }).plan, project, units }, letters), fonts);

const dark = (image: { data: Uint8ClampedArray; width: number }, x: number, y: number): boolean =>
  (image.data[4 * (y * image.width + x)] ?? 255) < 128;

/** The longest dark stretches of all rows of a picture, pixels, longest first. */
function longBars(image: { data: Uint8ClampedArray; width: number; height: number }): number[] {
  const bars: number[] = [];
  for (let y = 0; y < image.height; y++) {
    let run = 0;
    let most = 0;
    for (let x = 0; x < image.width; x++) {
      run = dark(image, x, y) ? run + 1 : 0;
      most = Math.max(most, run);
    }
    bars.push(most);
  }
  return bars.sort((a, b) => b - a);
}

describe('the plan set of the demonstration, as a PDF read back', () => {
  const project = demo('tern-ledge');
  const { plan } = evaluate(project, {}, { units: 'us' });
  const read = printPlanSet(planSet({ plan, project, units: 'us' }), fonts).then(readPdf);

  it('has its parts as bookmarks, every finding and material in words, and a foot on every page', async () => {
    const { pages, outline } = await read;
    expect(outline).toEqual(
      expect.arrayContaining([
        'Tern Ledge',
        'Before anybody starts',
        'The ducts in plan',
        'What to buy',
        'Workings',
        'Sources',
      ]),
    );
    const squeezed = (text: string) => text.replaceAll(/\s+/g, '');
    const whole = squeezed(pages.map((p) => p.text).join(' '));
    for (const f of plan.findings) expect(whole, f.id).toContain(squeezed(f.what));
    const list = plan.trades.materials?.list;
    expect(list?.ok && list.value.lines.length).toBeGreaterThan(40);
    for (const m of list?.ok ? list.value.lines : []) expect(whole, m.id).toContain(squeezed(m.what));
    for (const t of plan.tasks) expect(whole, t.id).toContain(squeezed(t.what));
    for (const [i, page] of pages.entries()) {
      expect(page.text).toContain(`sheet ${i + 1} of ${pages.length}`);
      expect(page.text).toContain('invented data');
      // Plywood is laid out without a job, and drawn on a sheet as large as its scale wants.
      const large = page.text.includes('Saw outdoors or with a mask');
      expect([page.width, page.height]).toEqual([large ? 1224 : 612, 792]);
    }
  });

  it('has drawings true to scale: bars of 100 mm and 4 in measure so within 0.3 mm', async () => {
    const { pages, picture, preferences } = await read;
    expect(preferences).toMatchObject({ PrintScaling: 'None' });
    const at = pages.findIndex((p) => p.text.includes('100 mm') && p.text.includes('drain'));
    const image = await picture(at, 254);
    // 10 pixels a millimetre; the frame is the longest, then the two bars.
    const bars = longBars(image).map((pixels) => pixels / 10);
    expect(bars.some((mm) => Math.abs(mm - 100) <= 0.3)).toBe(true);
    expect(bars.some((mm) => Math.abs(mm - 101.6) <= 0.3)).toBe(true);
  });

  it('is the same to the last byte twice, fits A4 in metric units, and says the same in large letters on more pages', async () => {
    const project = demo('juniper-flat');
    const [one, two] = [await printed(project, 'si'), await printed(project, 'si')];
    expect(Buffer.compare(one, two)).toBe(0);
    const { pages, outline } = await readPdf(one);
    for (const page of pages) expect(Math.abs(page.height - (297 * 72) / 25.4)).toBeLessThan(0.1);
    expect(pages.map((p) => p.text).join(' ')).not.toMatch(/undefined|NaN|\[object/);
    const large = await readPdf(await printed(project, 'si', 'large'));
    expect(large.pages.length).toBeGreaterThan(pages.length);
    expect(large.outline).toEqual(outline);
  });
});

it('prints what anybody types: signs without a picture by number, right-to-left names in order, marks of inches', async () => {
  const project = structuredClone(demo('juniper-flat')) as Project & { about: { name?: string; note?: string } };
  project.about.name = '🏠 <image href="/etc/hostname"/> & 5′ 3½″ ⌀→≤';
  project.about.note = 'בית על ההר, 24 מ';
  const { pages } = await readPdf(await printed(project, 'us'));
  expect(pages[0]?.text).toContain('⟨U+1F3E0⟩');
  expect(pages[0]?.text).toContain('5′ 3½″ ⌀→≤');
  expect(pages[0]?.text).toContain('/etc/hostname');
  expect(pages[0]?.text).toContain('ההר');
});

it('draws names of mixed directions so that a general reader reads them back as they were typed', async () => {
  type Named = { house: { rooms: Record<string, { name: string }> } };
  const project = structuredClone(demo('tern-ledge')) as Project & Named;
  for (const room of Object.values(project.house.rooms)) room.name = 'אבג & 24 דהו';
  const { plan } = evaluate(project, {}, { units: 'us' });
  const set = planSet({ plan, project, units: 'us' }, 'plain', ['drawings']);
  const { pages } = await readPdf(await printPlanSet(set, fonts));
  const text = pages.map((p) => p.text).join(' ');
  expect(text.split('אבג & 24 דהו').length).toBeGreaterThan(6);
  expect(text).not.toContain('24 &');
});

it('prints the parts chosen only, behind cover and cautions', async () => {
  const project = demo('juniper-flat');
  const { plan } = evaluate(project, {}, { units: 'si' });
  const set = planSet({ plan, project, units: 'si' }, 'plain', ['readings']);
  const { outline } = await readPdf(await printPlanSet(set, fonts));
  expect(outline).toEqual([
    project.about?.name,
    'Before anybody starts',
    'Readings: first start and after',
    'Record of start and seasons',
  ]);
});

it('of an empty project says what is unknown and claims nothing', async () => {
  const { pages } = await readPdf(await printed({ schema: 1 } as Project, 'si'));
  const text = pages
    .map((p) => p.text)
    .join(' ')
    .replaceAll(/\s+/g, ' ');
  expect(text).toContain('No unit is chosen yet');
  expect(text).not.toMatch(/undefined|NaN|Infinity/);
});
