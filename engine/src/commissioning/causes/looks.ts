import type { FaultKind } from './faults.ts';

/** A look without an instrument: yes or no. Chances of yes are invented: `commissioning.looks`. */
export type Look = {
  /** Its id is `look/` and this, and the terminal where there is one for every run. */
  readonly id: string;
  readonly ofRuns?: true;
  readonly minutes: number;
  /** Chance of yes where the cause is there; elsewhere `else`. */
  readonly yes: Partial<Readonly<Record<FaultKind, number>>>;
  readonly else: number;
};

export const looks: readonly Look[] = [
  { id: 'filter', minutes: 2, yes: { 'dirty-filter': 0.85, 'return-leak': 0.2 }, else: 0.08 },
  { id: 'run', ofRuns: true, minutes: 10, yes: { 'crushed-run': 0.85, 'loose-run': 0.9 }, else: 0.05 },
  { id: 'register', ofRuns: true, minutes: 2, yes: { 'shut-damper': 0.8 }, else: 0.03 },
  { id: 'door-gap', ofRuns: true, minutes: 1, yes: { 'no-transfer': 0.9 }, else: 0.05 },
  { id: 'return-way', minutes: 4, yes: { 'return-choked': 0.8 }, else: 0.06 },
  { id: 'return-smoke', minutes: 8, yes: { 'return-leak': 0.9 }, else: 0.06 },
  { id: 'supply-smoke', minutes: 10, yes: { 'supply-leak': 0.85, 'loose-run': 0.7 }, else: 0.08 },
  { id: 'setting', minutes: 5, yes: { 'blower-setting': 0.95 }, else: 0.02 },
  { id: 'speed', minutes: 3, yes: { 'other-speed': 0.9 }, else: 0.04 },
  { id: 'strips', minutes: 4, yes: { 'strips-on': 0.95 }, else: 0.02 },
  { id: 'insulation', minutes: 10, yes: { 'no-insulation': 0.95 }, else: 0.05 },
  { id: 'pan', minutes: 3, yes: { 'blocked-drain': 0.85 }, else: 0.03 },
  { id: 'sensor', minutes: 3, yes: { 'sensor-place': 0.8 }, else: 0.1 },
  { id: 'gauge-hoses', minutes: 4, yes: { 'gauge-wrong': 0.7 }, else: 0.05 },
];

/** Chance of yes under a cause; `subject` is the terminal that the look is at. */
export function chanceOfYes(
  look: Look,
  subject: string | undefined,
  cause: { readonly kind: FaultKind; readonly subject?: string },
): number {
  const chance = look.yes[cause.kind];
  return chance === undefined || (look.ofRuns && cause.subject !== subject) ? look.else : chance;
}

/** The look that an id names, with its terminal. */
export function lookOf(id: string): { readonly look: Look; readonly subject?: string } | undefined {
  const [name, subject] = id.replace(/^look\//, '').split(':');
  const look = id.startsWith('look/') ? looks.find((l) => l.id === name) : undefined;
  if (!look || (look.ofRuns === true) !== (subject !== undefined)) return undefined;
  return { look, ...(subject === undefined ? {} : { subject }) };
}
