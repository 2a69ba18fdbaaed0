import { type Air, compressionFactor, straightDrop } from '../../physics/flow/index.ts';
import type { DuctSection } from '../ductwork.ts';
import { slackOf } from '../mend.ts';
import { roughness } from '../model.ts';
import { unitEndLoss } from '../unitEnd.ts';
import { type Fitting, lossIn } from './fittingLoss.ts';
import { geometryOf } from './geometry.ts';
import type { DuctShape } from './stock.ts';

/** Slack left in flexible duct where the drawn duct is of another kind. Source: `air.sizing-slack` (common practice). */
const usualSlack = 0.12;

/** Slack of a section where it is made of flexible duct. */
export const slackIn = (x: DuctSection): number => (x.kind === 'flexible' ? slackOf(x) : usualSlack);

/**
 * The section made in another kind and size: same way, insulation and leaks; flexible duct keeps its slack, and the
 * piece at the unit is another one. Without its list of fittings the sum of their losses stays as it was.
 */
export function reshaped(x: DuctSection, shape: DuctShape, fittings: readonly Fitting[] | undefined): DuctSection {
  const g = geometryOf(shape);
  const kept = shape.kind === 'flexible' ? (x.sagLoss ?? 0) : 0;
  const met = x.unitEnd ? unitEndLoss(x.unitEnd, x.side, shape, g.area) : 0;
  return {
    ...x,
    kind: shape.kind,
    diameter: g.diameter,
    area: g.area,
    surface: g.perimeter * x.length,
    roughness: roughness[shape.kind],
    frictionFactor: shape.kind === 'flexible' ? compressionFactor(slackIn(x), g.diameter) : 1,
    lossCoefficient:
      (fittings ? lossIn(shape.kind, fittings) + kept : x.lossCoefficient - (x.unitEnd?.loss ?? 0)) + met,
    ...(x.unitEnd ? { unitEnd: { ...x.unitEnd, loss: met } } : {}),
  };
}

/** Inner sides or diameter again from area and hydraulic diameter: half the perimeter is the sum of the sides. */
export function shapeOf(x: DuctSection): DuctShape {
  const round = Math.abs(x.area - (Math.PI * x.diameter ** 2) / 4) < 1e-9;
  if (round) return { kind: x.kind, diameter: x.diameter };
  const half = (2 * x.area) / x.diameter;
  const root = Math.sqrt(Math.max(0, half * half - 4 * x.area));
  return { kind: x.kind, width: (half + root) / 2, height: (half - root) / 2 };
}

/** Pa lost along a section, fittings included, at m³/s of the air in it. */
export function sectionLoss(x: DuctSection, flow: number, air: Air): number {
  const v = flow / x.area;
  return straightDrop(x, flow, air, x.frictionFactor) + (x.lossCoefficient * air.density * v * v) / 2;
}
