import { describe, expect, it } from 'vitest';
import { allowanceTable } from '../../../test/sizing/allowanceTable.ts';
import { everyChoice, type Tried } from '../../../test/sizing/enumerate.ts';
import { pathProgramme } from '../../../test/sizing/pathProgramme.ts';
import { randomSpec } from '../../../test/sizing/randomTree.ts';
import { solveSizing } from './solveSizing.ts';
import type { Sizing, SizingSpec } from './spec.ts';

const seeds = (n: number, from = 1) => Array.from({ length: n }, (_, k) => from + k);
const small = (seed: number) => randomSpec(seed, { sections: 1 + (seed % 8), options: 4 });
const budgetOf = (spec: SizingSpec) => Math.round(spec.budget * 1e6);
const costIn = (spec: SizingSpec, s: { totals: { money: number; labour: number } }) =>
  spec.goal === 'labour' ? s.totals.labour : Math.round(s.totals.money * 100);
const byCost = (a: Tried, b: Tried) => a.cost - b.cost || a.pressure - b.pressure;
const named = (spec: SizingSpec, t: Tried) =>
  Object.fromEntries(spec.sections.map((s, i) => [s.id, s.options[t.choice[i] ?? 0]?.id]));

function fitting(spec: SizingSpec): Extract<Sizing, { status: 'fits' }> {
  const solved = solveSizing(spec);
  if (solved.status !== 'fits') throw new Error('it fits');
  return solved;
}

/** What may be chosen: all that fit, or for the least static all that lose the least. */
function allowed(spec: SizingSpec): Tried[] {
  const fit = everyChoice(spec).filter((t) => t.pressure <= budgetOf(spec));
  const least = Math.min(...fit.map((t) => t.pressure));
  return fit.filter((t) => spec.goal !== 'static' || t.pressure === least).sort(byCost);
}

describe('against every choice tried one by one, 600 random systems of up to 8 sections', () => {
  it('finds the least cost and, at that cost, the least pressure, to the bit; or that nothing fits', () => {
    let fits = 0;
    for (const seed of seeds(600)) {
      const spec = small(seed);
      const [best] = allowed(spec);
      const solved = solveSizing(spec);
      expect(solved.status).toBe(best ? 'fits' : 'nothing-fits');
      if (!best || solved.status !== 'fits') continue;
      fits++;
      expect(solved.proof.kind).toBe('proved');
      expect(costIn(spec, solved.best)).toBe(best.cost);
      expect(Math.round(solved.best.totals.pressure * 1e6)).toBe(best.pressure);
    }
    expect(fits).toBeGreaterThan(250);
    expect(fits).toBeLessThan(550);
  });

  it('its runner-up is the second cheapest of all', () => {
    for (const seed of seeds(400)) {
      const spec = small(seed);
      const [best, second] = allowed(spec);
      if (!best) continue;
      const { runnerUp, best: first } = fitting(spec);
      expect(runnerUp === undefined).toBe(second === undefined);
      if (!runnerUp || !second) continue;
      expect(costIn(spec, runnerUp)).toBe(second.cost);
      expect(runnerUp.choice).not.toEqual(first.choice);
      expect(runnerUp.totals.pressure * 1e6).toBeLessThanOrEqual(budgetOf(spec) + 0.5);
      expect(runnerUp.differs).toEqual(
        spec.sections.flatMap((s) => (first.choice[s.id] === runnerUp.choice[s.id] ? [] : [s.id])),
      );
    }
  });

  it('its exchange of pressure against cost is the front of all choices, and starts at the least static', () => {
    for (const seed of seeds(200)) {
      const spec = small(seed);
      const solved = solveSizing(spec);
      if (solved.status !== 'fits') continue;
      let least = Number.POSITIVE_INFINITY;
      const front = everyChoice(spec)
        .filter((t) => t.pressure <= Math.ceil(1.25 * budgetOf(spec)))
        .sort((a, b) => a.pressure - b.pressure || a.cost - b.cost)
        .filter((t) => {
          const better = t.cost < least;
          least = Math.min(least, t.cost);
          return better;
        });
      const unit = spec.goal === 'labour' ? 1 : 100;
      expect(solved.front).toEqual(front.map((t) => ({ pressure: t.pressure / 1e6, cost: t.cost / unit })));
      expect(solved.leastPressure).toBe(solved.front[0]?.pressure);
    }
  });

  it('what a next size buys is so when tried, alone and with the rest chosen anew', () => {
    let seen = 0;
    for (const seed of seeds(200)) {
      const spec = small(seed);
      const solved = solveSizing(spec);
      if (solved.status !== 'fits') continue;
      const all = everyChoice(spec);
      for (const next of solved.next) {
        const wanted = { ...solved.best.choice, [next.section]: next.option };
        const alone = all.find((t) => JSON.stringify(named(spec, t)) === JSON.stringify(wanted));
        expect(alone?.pressure).toBe(Math.round((solved.best.totals.pressure - next.gainSystem) * 1e6));
        const [forced] = allowed(spec).filter((t) => named(spec, t)[next.section] === next.option);
        expect(next.extraBest === undefined).toBe(forced === undefined);
        if (forced && next.extraBest !== undefined) {
          const unit = spec.goal === 'labour' ? 1 : 100;
          expect(Math.round(next.extraBest * unit)).toBe(forced.cost - costIn(spec, solved.best));
        }
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(100);
  });

  it('where nothing fits, the least it names is the least of all, and lies on the ways it names', () => {
    let seen = 0;
    for (const seed of seeds(600)) {
      const spec = small(seed);
      const solved = solveSizing(spec);
      if (solved.status === 'fits') continue;
      const all = everyChoice(spec);
      if (solved.closed.length > 0) {
        expect(all).toEqual([]);
        continue;
      }
      seen++;
      const least = Math.min(...all.map((t) => t.pressure));
      expect(least).toBeGreaterThan(budgetOf(spec));
      expect(Math.round((solved.leastPressure ?? 0) * 1e6)).toBe(least);
      expect(Math.round(solved.ways.reduce((a, w) => a + w.least, 0) * 1e6)).toBe(least);
    }
    expect(seen).toBeGreaterThan(50);
  });

  it('each limit lifted as little as it says opens the way, and no smaller lift of it does', () => {
    let seen = 0;
    for (const seed of seeds(600)) {
      const spec = small(seed);
      const solved = solveSizing(spec);
      if (solved.status === 'fits' || solved.closed.length > 0) continue;
      expect(solved.relaxations.length).toBeLessThanOrEqual(3);
      for (const r of solved.relaxations) {
        expect(r.enough).toBe(true);
        seen++;
        if (r.limit === 'budget') {
          expect(solveSizing({ ...spec, budget: r.to }).status).toBe('fits');
          expect(solveSizing({ ...spec, budget: r.to - 1e-6 }).status).toBe('nothing-fits');
        } else {
          expect(solveSizing(lift(spec, r.section ?? '', r.to)).status).toBe('fits');
          expect(solveSizing(lift(spec, r.section ?? '', r.to - 1e-9)).status).toBe('nothing-fits');
        }
      }
    }
    expect(seen).toBeGreaterThan(50);
  });
});

const lift = (spec: SizingSpec, section: string, depth: number): SizingSpec => ({
  ...spec,
  sections: spec.sections.map((s) =>
    s.id === section
      ? { ...s, options: s.options.map((o) => ((o.breaks?.[0]?.value ?? 9) <= depth ? { ...o, breaks: [] } : o)) }
      : s,
  ),
});

describe('against other methods, beyond what can be tried one by one', () => {
  it('the integer programme of ways, by branch and bound, agrees on 60 systems of 9 to 16 sections', () => {
    let agreed = 0;
    for (const seed of seeds(60, 1000)) {
      const spec = { ...randomSpec(seed, { sections: 9 + (seed % 8), options: 5 }), goal: 'money' as const };
      const programme = pathProgramme(spec, 200_000);
      const solved = solveSizing(spec);
      if (!programme.done) continue;
      agreed++;
      expect(solved.status === 'fits' ? costIn(spec, solved.best) : Number.POSITIVE_INFINITY).toBe(programme.cost);
    }
    expect(agreed).toBeGreaterThan(50);
  });

  it('a table over whole pascals agrees on systems of 25, 40 and 60 sections', () => {
    let fits = 0;
    for (const [seed, n] of [25, 40, 60].flatMap((n) => seeds(6, n).map((s) => [s, n] as const))) {
      const spec = {
        ...randomSpec(seed, { sections: n, options: 8, coarse: true }),
        budget: 100 + 3 * n,
        goal: seed % 2 ? ('money' as const) : ('labour' as const),
      };
      const solved = solveSizing(spec);
      if (solved.status === 'fits') fits++;
      expect(solved.status === 'fits' ? costIn(spec, solved.best) : Number.POSITIVE_INFINITY).toBe(
        allowanceTable(spec),
      );
    }
    expect(fits).toBeGreaterThan(8);
  });
});

describe('whatever the system', () => {
  it('more pressure never costs more', () => {
    for (const seed of seeds(60, 2000)) {
      const spec = { ...randomSpec(seed, { sections: 14, options: 6 }), goal: 'money' as const };
      let before = Number.POSITIVE_INFINITY;
      for (const budget of [30, 45, 60, 90, 140, 260]) {
        const solved = solveSizing({ ...spec, budget });
        const cost = solved.status === 'fits' ? costIn(spec, solved.best) : Number.POSITIVE_INFINITY;
        expect(cost).toBeLessThanOrEqual(before);
        before = cost;
      }
    }
  });

  it('what is bought stays as it is', () => {
    for (const seed of seeds(300)) {
      const spec = small(seed);
      const solved = solveSizing(spec);
      if (solved.status !== 'fits') continue;
      for (const s of spec.sections.filter((x) => x.fixed)) {
        expect(solved.best.choice[s.id]).toBe(s.options[0]?.id);
        expect(solved.next.some((x) => x.section === s.id)).toBe(false);
      }
    }
  });

  it('the same system gives the same answer, whatever the order its sections are told in', () => {
    for (const seed of seeds(80)) {
      const spec = small(seed);
      const turned = solveSizing({ ...spec, sections: [...spec.sections].reverse() });
      const solved = solveSizing(spec);
      expect(turned.status).toBe(solved.status);
      if (solved.status === 'fits' && turned.status === 'fits') {
        expect(turned.best).toEqual(solved.best);
        expect(turned.front).toEqual(solved.front);
      }
    }
  });

  it('what is no tree or no number is refused', () => {
    const option = { id: 'a', loss: 1, money: 1, labour: 1 };
    const s = { id: 'x', side: 'supply', end: 0, options: [option] } as const;
    const solve = (sections: SizingSpec['sections']) => () => solveSizing({ sections, budget: 9, goal: 'money' });
    expect(solve([{ ...s, from: 'gone' }])).toThrow('hangs at nothing');
    expect(solve([{ ...s, from: 'x' }])).toThrow('circle');
    expect(solve([s, s])).toThrow('one name');
    expect(solve([{ ...s, options: [{ ...option, loss: Number.NaN }] }])).toThrow('NaN');
    expect(solve([])()).toMatchObject({ status: 'fits', best: { totals: { pressure: 0, money: 0 } } });
  });
});
