import { required } from '../../plan/outcome.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { StartUp } from './startUp.ts';

/** Whether the mornings after the work are cold enough to prove heating, or a test has to be planned for later. */
export const heatingTestFinding = ({ heating }: StartUp): Found =>
  telling('commissioning', 'visits')(
    {
      id: 'heating-test',
      holdPoint: 'start',
      consequence: 'money',
      kind: 'temperature',
      limit: heating.ok ? { max: heating.value.below } : {},
      source: 'commissioning.heating-test',
      ...(heating.ok ? { facts: { month: heating.value.month, next: heating.value.next ?? 0 } } : {}),
    },
    (rec) => {
      const { mornings, below } = required(heating);
      rec.step('t_most', 'table', {}, below, '°C', 'commissioning.heating-test');
      rec.step('t_morning', 'table', {}, mornings, '°C', 'climate.months');
      return mornings;
    },
  );
