import { type Given, inIdOrder, type Missing, type ResolvedProject } from '@kneewall/project';
import { choiceOf } from '../../paperwork/papers.ts';
import { plainTier } from '../../paperwork/terms.ts';

type Paper = ResolvedProject['paperwork'][string];
const bought = ['ordered', 'arrived', 'fitted'];
const parts = ['ducts', 'electrical', 'removal', 'permit', 'condensate', 'lineset', 'startUp'] as const;

const given = (x: Given | Missing | undefined): Given | undefined => (x && !('missing' in x) ? x : undefined);

/** A quote for the unit and nothing else: only such a one stands beside a price. */
const unitAlone = ({ quote }: Paper): boolean => quote.unit && !parts.some((p) => quote[p]);

/** What a unit costs to buy: paid where it is ordered, else its price, else a quote for it alone; its path where none is entered. */
export function priceOf(project: ResolvedProject, id: string): Given | Missing {
  const item = inIdOrder(project.items).find(
    ([, x]) => x.of === `candidates.${id}` && bought.includes(choiceOf(x.state, 'idea')),
  );
  const quoted = inIdOrder(project.paperwork).find(
    ([, p]) => choiceOf(p.kind, 'permit') === 'quote' && p.unit === id && unitAlone(p),
  );
  return (
    given(item?.[1].cost) ??
    given(project.candidates[id]?.price) ??
    given(quoted?.[1].amount) ?? { path: `candidates.${id}.price`, missing: true }
  );
}

/** Incentives that are granted and meet the unit; one that asks for a tier nobody has entered for it does not. */
export function incentivesOf(project: ResolvedProject, id: string): Given[] {
  return inIdOrder(project.paperwork).flatMap(([, p]) => {
    const mine = p.unit === undefined || p.unit === id;
    const granted = choiceOf(p.kind, 'permit') === 'incentive' && choiceOf(p.status, 'open') === 'granted';
    const tier = p.incentive.tier;
    const fits = plainTier(tier) === '' || plainTier(tier) === plainTier(project.candidates[id]?.tier);
    const amount = given(p.amount);
    return mine && granted && fits && amount ? [amount] : [];
  });
}
