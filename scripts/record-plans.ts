import { writeFileSync } from 'node:fs';
import { evaluate } from '@kneewall/engine';
import { demo, demoNames } from '../engine/test/demos.ts';
import { planShape } from '../engine/test/planShape.ts';

/** Records the demos' plans anew, after a change that is meant to move them. The difference is the review. */
for (const name of demoNames)
  writeFileSync(
    new URL(`../engine/test/fixtures/${name}.json`, import.meta.url),
    `${JSON.stringify(planShape(evaluate(demo(name), {}).plan), null, 1)}\n`,
  );
