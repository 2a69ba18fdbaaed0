import type { Leading } from '../kernels/boxes.ts';
import type { View } from './scene.ts';

/** How far an answer is proved. `twisting` out of the plane is never looked at. */
export type Proof = 'replayed' | 'width' | 'closed' | 'open';

/** One plane of a planned way, as it is drawn: m, degrees nowhere, turns in radians. */
export type PlannedStage = {
  readonly view: View;
  readonly sides: readonly [Leading, Leading];
  /** Its length and width in this plane, and the third side. */
  readonly piece: readonly [number, number];
  readonly outlines: readonly (readonly (readonly [number, number])[])[];
  /** x, y, turn one after the other. The path of the piece, or of one that is `lacking` narrower all round where it does not pass. */
  readonly path: readonly number[];
  /** Where the piece has least room: x, y, turn, share of the path, and the clearance there, below 0 where it touches. */
  readonly tightest: readonly [number, number, number, number, number];
  readonly tilted?: number;
};

/** What motion planning found of one piece at one passage. */
export type Planned = {
  readonly answer: 'passes' | 'blocked' | 'unknown';
  readonly proof: Proof;
  /** m in all by which the piece could be thicker and still pass: certified from below and from above; negative where it has to be thinner. */
  readonly spare: { readonly low: number; readonly high: number };
  readonly stages: readonly PlannedStage[];
  /** Of a hatch: m of free height above it that are certainly enough for this piece, with room to spare. */
  readonly headroom?: number;
  /** Where it does not pass: the smallest opening found that would do with room to spare, m; and what was looked at. */
  readonly opening?: readonly [number, number];
};
