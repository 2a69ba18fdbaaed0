import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';
import { nominalAir, solveFlows } from '../flows.ts';
import { allowedOptions, everyOption, type SectionNeed } from './candidates.ts';
import { priceBook } from './priceBook.ts';
import { type DuctKind, stockOf } from './stock.ts';
import { unitPressure } from './unitPressure.ts';
import { type DuctRole, quietVelocities } from './velocity.ts';

const { air } = evaluate(demo('tern-ledge'), {}).plan.trades;
if (!air?.model.ok) throw new Error('the demo has ducts');
const model = air.model.value;
const [section] = model.sections;
if (!section) throw new Error('the demo has a section');

const feetPerMinute = 0.00508;
const need = (kind: DuctKind, role: DuctRole, flow: number): SectionNeed => ({
  section,
  fittings: undefined,
  flow,
  role,
  air: { density: 1.204, viscosity: 1.825e-5 },
  shapes: stockOf(kind),
  space: {},
  limits: quietVelocities,
  book: priceBook({}, []),
  joints: undefined,
});

describe('speed limits', () => {
  // Noise-based maxima, from memory of residential practice: supply trunk 900 fpm rigid and 700 flexible, returns 700.
  // Branches 500 to 700 fpm, looked up on a trade school's page: the upper end, in every kind.
  it.each<[DuctKind, DuctRole, number]>([
    ['round', 'supply trunk', 900],
    ['rectangular', 'supply trunk', 900],
    ['board', 'supply trunk', 900],
    ['flexible', 'supply trunk', 700],
    ['round', 'supply branch', 700],
    ['flexible', 'supply branch', 700],
    ['round', 'return', 700],
    ['flexible', 'return', 700],
  ])('%s, %s: up to %s fpm, and all that keep to it', (kind, role, most) => {
    for (const flow of [0.03, 0.1, 0.25]) {
      const quiet = allowedOptions(need(kind, role, flow)).map((o) => o.id);
      const all = everyOption(need(kind, role, flow)).filter((o) => o.runs === 1);
      expect(all.length).toBeGreaterThan(10);
      const slow = all.filter((o) => o.velocity <= most * feetPerMinute + 1e-6);
      expect(quiet).toEqual(slow.map((o) => o.id));
    }
  });

  it('two ducts side by side carry half each', () => {
    const options = everyOption(need('round', 'supply trunk', 0.2));
    const [one, two] = ['round 254', '2 x round 254'].map((id) => options.find((o) => o.id === id));
    expect((two?.velocity ?? 0) * 2).toBeCloseTo(one?.velocity ?? 0, 12);
    expect(two?.money).toBeCloseTo(2 * (one?.money ?? 0), 9);
  });
});

describe('what the unit leaves for ducts', () => {
  const flows = solveFlows(model, nominalAir);

  it('is, at the flow that really moves, what the ducts and registers really take', () => {
    const { left, filter, added } = unitPressure(model, nominalAir, flows.flow);
    expect(filter).toBeCloseTo(flows.filterPressure, 6);
    expect(left).toBeCloseTo(flows.staticPressure - flows.filterPressure - added, 6);
  });

  it('is never more than the sheet’s most static less filter and what is added', () => {
    const { left, filter, added, blower } = unitPressure(model, nominalAir, flows.flow, 100);
    expect(blower).toBeGreaterThan(100);
    expect(left).toBeCloseTo(100 - filter - added, 12);
  });
});
