import type { Recorder } from '../recorder.ts';

/** One layer: its resistance between framing, and where framing crosses it, the framing's share and resistance. */
export type Layer = {
  /** m²K/W */
  readonly resistance: number;
  readonly framing?: { readonly share: number; readonly resistance: number };
};

export type Resistance = {
  readonly upper: number;
  readonly lower: number;
  /** m²K/W, surface to surface and films. */
  readonly total: number;
};

/**
 * Total resistance by the combined method of ISO 6946: the mean of the limits with heat flowing straight through
 * (upper) and with every layer at one temperature (lower). All framing is taken as one path from face to face.
 * `films` in m²K/W, inside and outside. Source: `iso-6946.combined`.
 */
export function combinedResistance(
  layers: readonly Layer[],
  films: { inside: number; outside: number },
  rec?: Recorder,
): Resistance {
  const edge = films.inside + films.outside;
  const share = Math.max(0, ...layers.map((l) => l.framing?.share ?? 0));
  const clear = edge + sum(layers.map((l) => l.resistance));
  const framed = edge + sum(layers.map((l) => l.framing?.resistance ?? l.resistance));
  const upper = 1 / ((1 - share) / clear + share / framed);
  const lower = edge + sum(layers.map(mixed));
  const total = (upper + lower) / 2;
  rec?.step(
    "R'",
    '1 / ((1 - f) / R_clear + f / R_framed)',
    { f: share, R_clear: clear, R_framed: framed },
    upper,
    'm²K/W',
    'iso-6946.combined',
  );
  rec?.step('R_T', '(R_upper + R_lower) / 2', { R_upper: upper, R_lower: lower }, total, 'm²K/W', 'iso-6946.combined');
  return { upper, lower, total };
}

/** The layer at one temperature: its two paths side by side. */
const mixed = (l: Layer): number =>
  l.framing ? 1 / ((1 - l.framing.share) / l.resistance + l.framing.share / l.framing.resistance) : l.resistance;

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
