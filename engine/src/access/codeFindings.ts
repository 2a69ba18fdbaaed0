import { type Given, inOrder, type Missing, type ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import type { Found } from '../plan/telling.ts';
import { entered } from '../plan/telling.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { answered, told } from './found.ts';
import { hatchLeast } from './passing.ts';

type Routes = ResolvedProject['routes'];
type Passage = Routes['passages'][string];

/** m. Sources: `access.opening`, `access.passage`, `access.space`. */
const passageLeast = [0.559, 0.762] as const;
const floorLeast = 0.61;
const lengthMost = 6.096;
/** m of height from which the length of a passage is not limited. */
const upright = 1.829;
const spaceLeast = 0.762;

/** What codes commonly ask of the way to an appliance in an attic; the local one decides. */
export function codeFindings({ passages, access }: Routes): Found[] {
  return [
    ...inOrder(passages).flatMap(([id, p]) => ofPassage(id, p)),
    told(
      {
        id: 'service-space',
        subject: 'service',
        holdPoint: 'decide',
        consequence: 'money',
        kind: 'length',
        limit: { min: spaceLeast },
        source: 'access.space',
      },
      least([access.service.depth, access.service.width]),
    ),
    answered(
      { id: 'light', subject: 'service', holdPoint: 'connect', consequence: 'harm', source: 'access.light' },
      access.service.light,
      ['yes'],
    ),
    answered(
      { id: 'receptacle', subject: 'service', holdPoint: 'connect', consequence: 'money', source: 'access.light' },
      access.service.receptacle,
      ['yes'],
    ),
  ];
}

/** The smaller of two measures. */
const least =
  ([x, y]: readonly [Given | Missing, Given | Missing]) =>
  (rec: WorkingRecorder): number => {
    const [a, b] = [entered('a', x)(rec), entered('b', y)(rec)];
    const value = Math.min(a, b);
    rec.step('least', 'min(a, b)', { a, b }, value, 'm', 'access.space');
    return value;
  };

function ofPassage(id: string, p: Passage): Found[] {
  const kind = 'choice' in p.kind ? p.kind.choice : 'door';
  const handler = 'choice' in p.carries && p.carries.choice !== 'outdoor';
  if (kind === 'hatch' && handler) return [beyond('opening', id, p, hatchLeast, 'access.opening')];
  if (kind !== 'crawl') return [];
  return [
    beyond('way-size', id, p, passageLeast, 'access.passage'),
    told({ ...common('way-length', id, p), limit: { max: lengthMost } }, entered('L', p.length)),
    told({ ...common('way-floor', id, p), limit: { min: floorLeast } }, entered('w', p.floor)),
  ].filter((f) => !f.draft.id.startsWith('way-length') || !isHigh(p));
}

const isHigh = (p: Passage): boolean =>
  !('missing' in p.height) &&
  !('missing' in p.width) &&
  p.height.likely >= upright &&
  p.width.likely >= passageLeast[0];

const common = (word: string, id: string, p: Passage) => ({
  id: `${word}:${id}`,
  subject: id,
  item: id,
  holdPoint: 'decide' as const,
  consequence: 'money' as const,
  kind: 'length' as const,
  source: 'access.passage',
  facts: { name: p.name ?? id },
});

/** m by which an opening, or a way as high and wide, exceeds the least; an opening counts either way round. */
function beyond(word: string, id: string, p: Passage, [short, long]: readonly [number, number], source: string): Found {
  const facts = { name: p.name ?? id, short, long };
  return told({ ...common(word, id, p), source, limit: { min: 0 }, facts }, (rec) => {
    if ('missing' in p.width) return unresolved('missing', p.width.path);
    if ('missing' in p.height) return unresolved('missing', p.height.path);
    const [w, h] = [p.width.likely, p.height.likely];
    rec.given('w', p.width);
    rec.given('h', p.height);
    const inputs = { w, h, short, long };
    const upright = word === 'way-size';
    const value = upright ? Math.min(w - short, h - long) : Math.min(Math.min(w, h) - short, Math.max(w, h) - long);
    const formula = upright ? 'min(w - short, h - long)' : 'min(min(w, h) - short, max(w, h) - long)';
    rec.step('beyond', formula, inputs, value, 'm', source);
    return value;
  });
}
