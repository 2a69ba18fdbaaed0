import type { Judged } from './judge.ts';

/** What a finding is about, its name before it where it has one, so that two of one kind never read alike: “Boat”: by which day to order. */
export function namedSubject({ id, facts }: Pick<Judged, 'id' | 'facts'>, subject: string): string {
  const own = id.split(':').slice(1).join(':');
  const name = String(facts?.name ?? own);
  return name === '' ? subject : `“${name}”: ${subject.slice(0, 1).toLowerCase()}${subject.slice(1)}`;
}
