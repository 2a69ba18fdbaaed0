import type { TradeResults } from '@kneewall/engine';

/** All that is cut for a plan. */
export type Cut = Extract<TradeResults['materials']['cut'], { ok: true }>['value'];

/** The sheets of one kind and thickness with the pieces on them. */
export type Sheets = Cut['sheets'][number];
export type CutPiece = Sheets['pieces'][number];
