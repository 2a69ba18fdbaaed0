import { entries, gradualContraction } from './openings.ts';
import { derived, type Looked, lookUp } from './table.ts';
import { angleFactor, butterfly, rectangularMitre, rectangularSmooth, roundSmooth } from './tables.ts';

/** What is known of a fitting beside its kind. Angle in degrees: of a bend, or of a damper from open. */
export type FittingShape = {
  /** Centre-line radius over diameter or width. */
  readonly radius?: number;
  readonly angle?: number;
};

/** Fittings that need no shape. Collars and boots are common practice. Source: `flow.fittings`. */
const plain = {
  'elbow-rectangular-vaned': 0.13,
  collar: 0.55,
  'collar-rounded': 0.2,
  // Velocity in the branch 0.6 of the common duct's.
  'tee-branch': 1.36,
  'tee-straight': 0.1,
  reducer: gradualContraction,
  'boot-elbow': 1.0,
  'boot-straight': 0.35,
  entry: entries.flush,
} as const satisfies Readonly<Record<string, number>>;

const bent = ['elbow-round', 'elbow-round-tight', 'elbow-rectangular', 'bend-flexible', 'damper'] as const;

/** A bend of flexible duct on a radius of one diameter, against a smooth one's 0.22. Common practice, no source. */
const flexibleBend = 0.3;
const flexibleOverSmooth = flexibleBend / 0.22;
export type FittingKind = keyof typeof plain | (typeof bent)[number];

/** Height over width of a square corner of which nobody said which way it turns. */
const unknownWay = 1;

/**
 * Loss coefficient of a fitting on the velocity of the section it is drawn on. Where its shape is not said, an elbow turns
 * 90 degrees on a radius of one diameter (a tight one half of it, a flexible one with a third more, a rectangular one with a square corner) and a damper
 * stands open. A shape that no table covers gives the table's ends instead. Round numbers: the true loss of a site-made
 * fitting scatters by far more than the second figure. Source: `flow.fittings`.
 */
export function fittingLoss(kind: FittingKind, shape: FittingShape = {}): Looked {
  switch (kind) {
    case 'elbow-round':
      return turned(lookUp(roundSmooth, shape.radius ?? 1), shape);
    case 'elbow-round-tight':
      return turned(lookUp(roundSmooth, shape.radius ?? 0.5), shape);
    case 'bend-flexible':
      return shape.radius === undefined
        ? turned({ ok: true, value: flexibleBend }, shape)
        : turned(
            derived(lookUp(roundSmooth, shape.radius), (smooth) => flexibleOverSmooth * smooth),
            shape,
          );
    case 'elbow-rectangular':
      return turned(
        shape.radius === undefined ? lookUp(rectangularMitre, unknownWay) : lookUp(rectangularSmooth, shape.radius),
        shape,
      );
    case 'damper':
      return lookUp(butterfly, shape.angle ?? 0);
    default:
      return { ok: true, value: plain[kind] };
  }
}

function turned(square: Looked, { angle }: FittingShape): Looked {
  if (angle === undefined || !square.ok) return square;
  return derived(lookUp(angleFactor, angle), (factor) => factor * square.value);
}
