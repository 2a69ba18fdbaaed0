import { type ControlWay, savedBy } from '../coupling/foresight/foresightAnswers.ts';
import { required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';

/** What other control could save: by a rule that can be set at home, up to the least that any control could burn. */
export function smarterControl({ season }: PlanView): Found {
  const source = 'offgrid.control';
  const year = season.foresight.ok ? season.foresight.value : undefined;
  const saved = (id: ControlWay['id']): number => (year ? savedBy(year, id) : 0);
  const facts = year
    ? {
        of: year.of,
        ahead: year.rule.ahead,
        less: year.rule.cooler,
        restAt: year.rule.restAt,
        rule: saved('rule'),
        today: saved('rule-like-today'),
        cooler: saved('cooler'),
        timing: saved('timing'),
        best: saved('best'),
      }
    : {};
  const of = { id: 'smarter-control', holdPoint: 'season', consequence: 'money', kind: 'fraction' } as const;
  return found({ ...of, limit: { max: 0.1 }, source, facts }, (recorder) => {
    const known = required(season.foresight);
    const [likely, best] = [savedBy(known, 'rule'), savedBy(known, 'best')];
    recorder.step('best', 'table', {}, best, '', 'offgrid.foresight');
    recorder.step('rule', 'table', {}, likely, '', 'offgrid.simple-rule');
    return { low: Math.min(likely, savedBy(known, 'rule-like-today')), likely, high: Math.max(likely, best) };
  });
}
