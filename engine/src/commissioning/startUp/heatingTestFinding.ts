import { required } from '../../plan/outcome.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { HeatingTest, StartUp } from './result.ts';

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
      ...(heating.ok ? { facts: factsOf(heating.value) } : {}),
    },
    (rec) => {
      const test = required(heating);
      rec.step('t_most', 'table', {}, test.below, '°C', 'commissioning.heating-test');
      if (test.read) {
        rec.step('t_read', 'table', {}, test.read.outdoor, '°C', 'project');
        return test.read.outdoor;
      }
      const { mornings } = test;
      rec.step('t_morning', 'table', {}, mornings, '°C', 'climate.months');
      return mornings;
    },
  );

const factsOf = (test: HeatingTest) =>
  test.read ? { day: test.read.day } : { month: test.month, next: test.next ?? 0 };
