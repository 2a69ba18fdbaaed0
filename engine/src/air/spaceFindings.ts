import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { Bought } from './bought.ts';
import type { AirModel, DuctSection } from './ductwork.ts';
import type { Found } from './found.ts';
import { type Space, spacesOf } from './sizing/asked.ts';
import { outerSize } from './sizing/geometry.ts';
import { passing } from './sizing/passing.ts';
import { shapeOf } from './sizing/reshape.ts';

/** Whether each duct as drawn goes through the space it has to pass, its insulation counted. */
export function spaceFindings(model: AirModel, view: PlanView, bought: Bought): Found[] {
  const spaces = spacesOf(view.project.routes.ducts);
  return model.sections.flatMap((x) => {
    const space = spaces[x.id];
    return space ? [spaceFinding(x, space, bought[x.id])] : [];
  });
}

function spaceFinding(x: DuctSection, space: Space, item: string | undefined): Found {
  const side = tighter(x, space);
  const { recorder, steps } = recordWorking();
  const inputs = { inner: side.inner, wrap: (side.outer - side.inner) / 2 };
  const outer = inputs.inner + 2 * inputs.wrap;
  recorder.step('outer', 'inner + 2 * wrap', inputs, outer, 'm', 'air.space');
  return {
    draft: {
      id: `space:${x.id}`,
      subject: x.id,
      ...(item === undefined ? {} : { item }),
      holdPoint: 'order',
      consequence: 'money',
      kind: 'length',
      value: { ok: true, value: outer },
      limit: { max: side.most },
      source: 'air.space',
      working: `air/space:${x.id}`,
      facts: {
        name: x.name,
        side: side.name,
        bought: item === undefined ? 0 : 1,
        ...(space.passes === undefined ? {} : { passes: space.passes }),
      },
    },
    working: steps,
  };
}

/** The side with the least to spare, in the position in which the duct goes in. */
function tighter(x: DuctSection, space: Space) {
  const shape = shapeOf(x);
  const { onEdge } = passing(shape, x.insulation, space);
  const outer = outerSize(shape, x.insulation);
  const inner =
    'diameter' in shape
      ? { depth: shape.diameter, width: shape.diameter }
      : { depth: shape.height, width: shape.width };
  const turned = <T>(sides: { depth: T; width: T }) => (onEdge ? { depth: sides.width, width: sides.depth } : sides);
  const [out, ins] = [turned(outer), turned(inner)];
  const sides = (['depth', 'width'] as const).flatMap((name) => {
    const most = space[name];
    return most === undefined ? [] : [{ name, most, outer: out[name], inner: ins[name] }];
  });
  const [worst = { name: 'depth' as const, most: 0, outer: 0, inner: 0 }] = sides.sort(
    (a, b) => a.most - a.outer - (b.most - b.outer),
  );
  return worst;
}
