// @vitest-environment jsdom
import { readFileSync } from 'node:fs';
import { evaluate } from '@kneewall/engine';
import { openProject, type Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { ductPlanSvg } from './ductPlanSvg.ts';

const open = (text: string): Project => {
  const opened = openProject(text);
  if (!opened.ok) throw new Error('not opened');
  return opened.project;
};
const root = `${process.cwd()}/demos/`;
const textOf = (name: string): string => readFileSync(`${root}${name}.json`, 'utf8');
const tern = open(textOf('tern-ledge'));
const juniper = open(textOf('juniper-flat'));

const draw = (project: Project, units: 'us' | 'si' = 'si'): string =>
  ductPlanSvg(evaluate(project, {}, { units }).plan, project, units);
const parsed = (svg: string): Element => {
  const document = new DOMParser().parseFromString(svg, 'image/svg+xml');
  expect(document.querySelector('parsererror')).toBeNull();
  return document.documentElement;
};

type Spot = readonly [number, number];
const spotsOf = (line: Element | null): Spot[] =>
  (line?.getAttribute('points') ?? '').split(' ').map((pair): Spot => {
    const [x = Number.NaN, y = Number.NaN] = pair.split(',').map(Number);
    return [x, y];
  });
const lengthOf = (way: readonly Spot[]): number =>
  way.slice(1).reduce((sum, b, i) => {
    const a = way[i] ?? b;
    return sum + Math.hypot(b[0] - a[0], b[1] - a[1]);
  }, 0);
const sectionsOf = (project: Project) => Object.entries(project.routes?.ducts?.sections ?? {});
const terminalsOf = (project: Project) => Object.keys(project.routes?.ducts?.terminals ?? {});
const duct = (svg: Element, id: string): Element | undefined =>
  [...svg.querySelectorAll('[data-section]')].find((e) => e.getAttribute('data-section') === id);

/** The same project without the ways of its ducts. */
const undrawn = (project: Project): Project => {
  const sections = Object.fromEntries(sectionsOf(project).map(([id, { points: _, ...rest }]) => [id, rest]));
  return { ...project, routes: { ...project.routes, ducts: { ...project.routes?.ducts, sections } } };
};
const named = (project: Project, name: string): Project => ({
  ...project,
  about: { ...project.about, name },
  routes: {
    ...project.routes,
    ducts: {
      ...project.routes?.ducts,
      sections: Object.fromEntries(sectionsOf(project).map(([id, x]) => [id, { ...x, name }])),
    },
  },
});

describe.each([
  ['Tern Ledge', tern],
  ['Juniper Flat', juniper],
] as const)('the ducts of %s on paper', (_name, project) => {
  it.each(['us', 'si'] as const)(
    'are as long and as wide as in the house, at the scale the sheet names (%s)',
    (units) => {
      const svg = parsed(draw(project, units));
      const ratio = Number(svg.getAttribute('data-scale'));
      expect(ratio).toBeGreaterThan(0);
      expect(svg.textContent).toContain(`1:${ratio}`);
      // A unit of the sheet is a millimetre.
      const [, , wide, high] = (svg.getAttribute('viewBox') ?? '').split(' ');
      expect([svg.getAttribute('width'), svg.getAttribute('height')]).toEqual([`${wide}mm`, `${high}mm`]);
      for (const [id, { points = [], diameter, width }] of sectionsOf(project)) {
        const walls = duct(svg, id)?.querySelector('.wall') ?? null;
        const inPlan = lengthOf(points.map(([x, y]): Spot => [x, y]));
        expect(lengthOf(spotsOf(walls)) * ratio, id).toBeCloseTo(inPlan * 1000, -0.5);
        const across = (diameter ?? width)?.value;
        // The outer edge of the drawn walls is the inner width and the width of a line.
        const drawn = (Number(walls?.getAttribute('stroke-width')) - 0.35) * ratio;
        expect(drawn, id).toBeCloseTo((typeof across === 'number' ? across : 0) * 1000, 0);
      }
      const bars = [...svg.querySelectorAll('[data-mm]')].map((b) => [
        Number(b.getAttribute('x2')) - Number(b.getAttribute('x1')),
        Number(b.getAttribute('data-mm')),
      ]);
      expect(bars.map(([, mm]) => mm)).toEqual([100, 101.6]);
      for (const [long, mm] of bars) expect(long).toBeCloseTo(mm ?? 0, 6);
    },
  );

  it.each([
    ['drawn', project],
    ['as a schematic', undrawn(project)],
  ])('hold every section and register, %s, within the frame and without a number that is none', (_how, given) => {
    const text = draw(given, 'us');
    const svg = parsed(text);
    expect(text).not.toMatch(/NaN|undefined|Infinity|null/);
    const ids = (name: string) => [...svg.querySelectorAll(`[${name}]`)].map((e) => e.getAttribute(name)).sort();
    expect(ids('data-section')).toEqual(
      sectionsOf(given)
        .map(([id]) => id)
        .sort(),
    );
    expect(ids('data-terminal')).toEqual(terminalsOf(given).sort());
    for (const [, { name }] of sectionsOf(given)) expect(svg.textContent).toContain(name);
    const [, , wide = 0, high = 0] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
    for (const [x, y] of [...svg.querySelectorAll('polyline, polygon')].flatMap(spotsOf)) {
      expect(x >= 10 && x <= wide - 10).toBe(true);
      expect(y >= 10 && y <= high - 10).toBe(true);
    }
  });

  it('say what is invented and what to check, and carry no date', () => {
    const said = parsed(draw(project)).textContent ?? '';
    expect(said).toContain('invented');
    expect(said).toContain('Check on site');
    expect(said).not.toMatch(/\d{4}-\d{2}-\d{2}/);
  });

  it('give the same bytes for the same plan', () => {
    expect(draw(structuredClone(project))).toBe(draw(project));
  });
});

describe('a duct plan', () => {
  it('without every way is a schematic that says so and names what is not drawn', () => {
    const said = parsed(draw(undrawn(tern)));
    expect(said.getAttribute('data-scale')).toBe('none');
    expect(said.textContent).toContain('Not to scale');
    expect(said.querySelector('.print-bars')).toBeNull();
  });

  it.each(['<script>alert(1)</script>', '"/><image href="x"/>', ']]>&amp;\u0000\u0008\ud800', `${'W'.repeat(199)}”`])(
    'writes the name %j as text and nothing else',
    (name) => {
      const svg = parsed(draw(named(tern, name)));
      expect(svg.querySelector('script, image')).toBeNull();
      expect(svg.querySelectorAll('[data-section]').length).toBe(sectionsOf(tern).length);
    },
  );

  it('of a project that has nothing is still a sheet', () => {
    const text = draw(open('{"schema":1}'));
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(parsed(text).textContent).toContain('No duct is entered yet.');
  });

  it('of ducts that lead back to themselves leaves them out of the picture and keeps them in the schedule', () => {
    const loop = open(
      '{"schema":1,"routes":{"ducts":{"sections":{"a":{"name":"One","from":"b"},"b":{"name":"Two","from":"a"}}}}}',
    );
    const svg = parsed(draw(loop));
    expect(svg.querySelectorAll('[data-section]').length).toBe(0);
    expect(svg.querySelector('.schedule')?.textContent).toContain('One');
  });

  it('turns its arrow to the north', () => {
    const turned = {
      ...tern,
      routes: { ...tern.routes, ducts: { ...tern.routes?.ducts, north: { value: 90, known: 'measured' as const } } },
    };
    // The top looks east, so north is on the left.
    expect(parsed(draw(turned)).querySelector('.north')?.getAttribute('transform')).toContain('rotate(-90');
  });
});
