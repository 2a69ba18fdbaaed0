import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { coldMemo, evaluate, type Finding, workPlanKind } from '../index.ts';
import type { WorkInputs } from '../schedule/workJob.ts';

const flat = demo('juniper-flat');
const memo = coldMemo();
type Papers = NonNullable<Project['paperwork']>;
const plain = (value: number) => ({ value, known: 'nameplate' as const });

/** How the findings of this trade stand with these papers, without the trade's name. */
function standing(paperwork: Papers, work: Project['work'] = {}, more: Partial<Project> = {}): Record<string, Finding> {
  const { findings } = evaluate(
    { ...flat, paperwork, work: { ...flat.work, hands: {}, ...work }, ...more },
    {},
    { memo },
  ).plan;
  return Object.fromEntries(
    findings.filter((f) => f.trade === 'paperwork').map((f) => [f.id.replace('paperwork/', ''), f]),
  );
}
const status = (found: Record<string, Finding>, id: string): string | undefined => found[id]?.status;
const ordered = { items: { u: { of: 'candidates.unit-24', state: 'ordered' as const } } };
const hung = { items: { u: { of: 'candidates.unit-24', state: 'fitted' as const } } };

describe('permits', () => {
  it('are to be asked for before the order, and in hand before anything is cut', () => {
    const of = (s: 'open' | 'asked' | 'granted' | 'refused', more: Partial<Project> = {}) => {
      const found = standing({ p: { kind: 'permit', status: s } }, {}, more);
      return [status(found, 'permit-asked:p'), status(found, 'permit-granted:p')];
    };
    expect(of('open')).toEqual(['fails', 'unknown']);
    expect(of('asked')).toEqual(['ok', 'unknown']);
    expect(of('asked', hung)).toEqual(['ok', 'fails']);
    expect(of('granted', hung)).toEqual(['ok', 'ok']);
    expect(of('refused')).toEqual(['fails', 'fails']);
  });
  it('are unknown where nobody has entered one, and never said to be needless', () => {
    const found = standing({});
    expect(found['no-permit']?.status).toBe('unknown');
    expect(found['no-permit']?.consequence).toBe('harm');
    const said = Object.values(standing({ p: { kind: 'permit', status: 'open' } })).map((f) => `${f.what} ${f.mend}`);
    expect(said.join(' ')).not.toMatch(/no permit is needed\b(?!,)|skip|without a permit you may/i);
  });
});

describe('who may do the work', () => {
  const us = { hands: { electrical: 'us' as const, refrigerant: 'licensed' as const } };
  const permit = (licence: NonNullable<Papers[string]['licence']>): Papers => ({ p: { kind: 'permit', licence } });
  it('fails as harm where a permit keeps it for a licensed person', () => {
    const found = standing(permit({ needed: 'yes', electrical: true }), us);
    expect(status(found, 'hands:electrical')).toBe('fails');
    expect(found['hands:electrical']?.consequence).toBe('harm');
    expect(status(found, 'hands:refrigerant')).toBe('ok');
  });
  it('takes no answer for no permission, and a yes without marks for all of it', () => {
    expect(status(standing(permit({}), us), 'hands:electrical')).toBe('unknown');
    expect(status(standing({}, us), 'hands:electrical')).toBe('unknown');
    expect(status(standing(permit({ needed: 'yes' }), us), 'hands:electrical')).toBe('fails');
    expect(status(standing({ p: { kind: 'permit', licensed: true } }, us), 'hands:electrical')).toBe('fails');
    expect(status(standing(permit({ needed: 'no' }), us), 'hands:electrical')).toBe('ok');
    expect(status(standing(permit({ needed: 'no' }), {}), 'hands:electrical')).toBe('unknown');
  });
  it('is not settled while one paper of the law is silent', () => {
    const silent: Papers = { ...permit({ needed: 'no' }), i: { kind: 'insurance' } };
    expect(status(standing(silent, us), 'hands:electrical')).toBe('unknown');
  });
  it('speaks of gas only where something burns on a flue or somebody enters it', () => {
    expect(status(standing({}), 'hands:gas')).toBeUndefined();
    expect(status(standing(permit({ needed: 'yes', gas: true })), 'hands:gas')).toBe('unknown');
  });
});

describe('a warranty', () => {
  const of = (warranty: NonNullable<Papers[string]['warranty']>, hands: NonNullable<Project['work']>['hands']) =>
    status(standing({ w: { kind: 'warranty', warranty } }, { hands }), 'warranty-terms:w');
  const all = { selfInstalled: 'allowed', joints: 'any', startUp: 'anyone' } as const;
  const own = { refrigerant: 'us', electrical: 'us', startUp: 'us' } as const;
  const lent = { refrigerant: 'licensed', electrical: 'licensed', startUp: 'licensed' } as const;
  it('ends by whichever term the plan breaks', () => {
    expect(of(all, own)).toBe('ok');
    expect(of({ ...all, selfInstalled: 'void' }, own)).toBe('fails');
    expect(of({ ...all, selfInstalled: 'void' }, lent)).toBe('ok');
    expect(of({ ...all, startUp: 'licensed' }, own)).toBe('fails');
    expect(of({ ...all, startUp: 'licensed' }, lent)).toBe('ok');
    expect(of({ ...all, joints: 'licensed' }, own)).toBe('fails');
  });
  it('may let the owner join a set filled at the factory, and no other', () => {
    const found = (ends: 'once' | 'flare') => {
      const papers: Papers = { w: { kind: 'warranty', warranty: { ...all, joints: 'once' } } };
      const routes = { ...flat.routes, lineset: { ...flat.routes?.lineset, ends } };
      return status(standing(papers, { hands: own }, { routes }), 'warranty-terms:w');
    };
    expect([found('once'), found('flare')]).toEqual(['ok', 'fails']);
  });
  it('is unknown while its terms are', () => {
    expect(of({}, lent)).toBe('unknown');
    expect(of({ ...all, startUp: 'licensed' }, {})).toBe('unknown');
  });
});

describe('an incentive', () => {
  const of = (more: Papers[string], project: Partial<Project> = {}) =>
    standing({ i: { kind: 'incentive', licence: { needed: 'no' }, ...more } }, {}, project);
  it('that must be granted first holds the order', () => {
    const first = { incentive: { beforeOrder: 'yes' as const } };
    expect(status(of(first), 'incentive-first:i')).toBe('fails');
    expect(of(first, ordered)['incentive-first:i']?.what).toContain('ordered already');
    expect(status(of({ ...first, status: 'granted' }), 'incentive-first:i')).toBe('ok');
    expect(status(of({ incentive: { beforeOrder: 'no' } }), 'incentive-first:i')).toBe('ok');
    expect(status(of({}), 'incentive-first:i')).toBe('unknown');
  });
  it('asks for the tier that is entered for the unit', () => {
    const tier = (mine?: string) => {
      const unit = { ...flat.candidates?.['unit-24'], ...(mine === undefined ? {} : { tier: mine }) };
      return status(of({ incentive: { tier: 'Tier 2' } }, { candidates: { 'unit-24': unit } }), 'incentive-terms:i');
    };
    expect([tier(), tier('Tier 1'), tier('tier 2')]).toEqual(['unknown', 'fails', 'ok']);
  });
});

describe('deadlines', () => {
  // Work on Juniper Flat is from 3 to 31 July 2027.
  const of = (kind: 'permit' | 'incentive', due: string) => standing({ d: { kind, due } })['deadline:d'];
  it('are days between the paper and the work, without a clock', () => {
    expect(of('permit', '2027-06-30')?.value).toBe(3);
    expect(of('permit', '2027-07-10')?.status).toBe('fails');
    expect(of('incentive', '2027-08-31')?.value).toBe(31);
    expect(of('incentive', '2027-07-01')?.status).toBe('fails');
  });
  it('say so where the calendar has no such day', () => {
    const found = of('permit', '2027-02-31');
    expect(found?.status).toBe('unknown');
    expect(found?.what).toContain('none of the calendar');
  });
});

describe('quotes', () => {
  const prices = Object.fromEntries(
    ['ducts', 'electrical', 'removal', 'permit', 'condensate', 'lineset', 'startUp'].map((k, i) => [
      k,
      plain(100 * (i + 1)),
    ]),
  );
  const quote = {
    kind: 'quote' as const,
    amount: plain(9000),
    quote: { unit: true, ducts: true, lineset: true, startUp: true },
  };
  const row = (papers: Papers, scopePrices: object = prices) =>
    evaluate({ ...flat, paperwork: papers, work: { ...flat.work, scopePrices } }, {}, { memo }).plan.trades.paperwork
      ?.quotes[0];
  it('come to the same whole: what is missing is added at its price', () => {
    // Electrical 200, removal 300, permit 400, condensate 500.
    expect(row({ q: quote })?.total).toMatchObject({ ok: true, value: { likely: 10_400 } });
    const whole = { ...quote.quote, electrical: true, removal: true, permit: true, condensate: true };
    expect(row({ q: { ...quote, quote: whole } })?.total).toMatchObject({ ok: true, value: { low: 9000, high: 9000 } });
  });
  it('have no total while a price, the amount or all marks are missing, and name what', () => {
    expect(row({ q: quote }, { ...prices, removal: undefined })?.total).toMatchObject({
      paths: ['work.scopePrices.removal'],
    });
    expect(row({ q: { ...quote, amount: plain(0) } })?.total).toMatchObject({ paths: ['paperwork.q.amount'] });
    expect(row({ q: { ...quote, quote: {} } })?.total).toMatchObject({ paths: ['paperwork.q.quote.unit'] });
  });
  it('that leave out more than a tenth fail', () => {
    expect(status(standing({ q: quote }, { scopePrices: prices }), 'quote:q')).toBe('fails');
  });
});

describe('days that papers take', () => {
  const days = (asked: string | undefined, waits: number | undefined, kind: 'permit' | 'inspection' = 'permit') => {
    const found = standing({
      p: {
        ...{ kind, status: 'asked' as const, due: '2027-07-02' },
        ...(asked === undefined ? {} : { asked }),
        ...(waits === undefined ? {} : { waits: plain(waits) }),
      },
    });
    return found['comes:p'];
  };
  it('are held against the day it is needed by', () => {
    // By the calendar: 11 June and 21 days are 2 July, and 22 days are one too many.
    expect(days('2027-06-11', 21)).toMatchObject({ status: 'ok', value: 0 });
    expect(days('2027-06-11', 22)).toMatchObject({ status: 'fails', value: -1 });
    expect(days(undefined, undefined)).toBeUndefined();
  });
  it('give the last day to ask where nobody has asked yet, and ask how long where that is missing', () => {
    expect(days(undefined, 21)).toMatchObject({ status: 'unknown', needs: ['paperwork.p.asked'] });
    expect(days(undefined, 21)?.what).toContain('ask by 2027-06-11');
    expect(days('2027-06-11', undefined)).toMatchObject({ status: 'unknown', needs: ['paperwork.p.waits'] });
  });
  it('move what a permit covers in the plan, and nothing before it', () => {
    const project = {
      ...flat,
      paperwork: { p: { kind: 'permit' as const, status: 'asked' as const, asked: '2027-07-01', waits: plain(10) } },
    };
    const spec = evaluate(project, {}, { memo }).wanted.find((j) => j.kind === workPlanKind)?.inputs as WorkInputs;
    const release = (id: string) => spec.spec.tasks.find((t) => t.id === id)?.release;
    // Windows begin on 3 July: 11 July is eight days later.
    expect(release('circuit/pull')).toBe(8 * 1440);
    expect(release('access/up')).toBeUndefined();
  });
});

describe('a quote', () => {
  const quote = (due: string, deliveries: NonNullable<Project['work']>['deliveries'], more: Partial<Project> = {}) =>
    standing({ q: { kind: 'quote', due, name: 'Quote' } }, { deliveries }, more)['stands:q'];
  const boat = { boat: { day: '2027-06-20', lead: { value: 10 * 86_400, known: 'estimated' as const } } };
  it('is held against the last day to order the unit', () => {
    expect(quote('2027-06-10', boat)).toMatchObject({ status: 'ok', value: 0 });
    expect(quote('2027-06-09', boat)).toMatchObject({ status: 'fails', value: -1 });
    expect(quote('2027-06-09', boat)?.what).toContain('ends before you order');
    expect(quote('2027-06-09', boat, ordered)).toBeUndefined();
  });
  it('is not judged where no day of the order is known', () => {
    expect(quote('2027-06-09', {})).toMatchObject({ status: 'unknown', needs: ['work.deliveries'] });
  });
});
