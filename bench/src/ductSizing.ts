import { type SizingSection, type SizingSpec, solveSizing } from '@kneewall/engine';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

const sections = 60;
const sizes = 12;

/** 48 supply sections on a trunk of four pieces and 12 return sections on one of three; made by arithmetic, invented. */
function system(budget: number): SizingSpec {
  const section = (i: number): SizingSection => {
    const supply = i < 48;
    const [first, trunk] = supply ? [0, 4] : [48, 3];
    const k = i - first;
    const from = k === 0 ? undefined : k < trunk ? i - 1 : first + ((7 * k) % trunk);
    const length = 2 + ((5 * i) % 9) + 0.1 * (i % 7);
    return {
      id: `s${i}`,
      side: supply ? 'supply' : 'return',
      ...(from === undefined ? {} : { from: `s${from}` }),
      end: k < trunk ? 0 : 3 + (i % 4),
      options: Array.from({ length: sizes }, (_, j) => ({
        id: `size ${j}`,
        loss: (20 * length) / (1 + 0.35 * j) ** 5,
        money: length * (4 + 3 * j) + 0.13 * ((11 * i + 5 * j) % 17),
        labour: 600 + 60 * j,
      })),
    };
  };
  return { sections: Array.from({ length: sections }, (_, i) => section(i)), budget, goal: 'money' };
}

/** Pa along the hardest way of each side, added up way by way from the choice itself. */
function pressureOf({ sections: all }: SizingSpec, choice: Readonly<Record<string, string>>): number {
  const way = (id: string | undefined): number => {
    const s = all.find((x) => x.id === id);
    return s ? (s.options.find((o) => o.id === choice[s.id])?.loss ?? 0) + way(s.from) : 0;
  };
  const worst = (name: SizingSection['side']) =>
    Math.max(...all.filter((s) => s.side === name).map((s) => way(s.id) + s.end));
  return worst('supply') + worst('return');
}

/** Question: are 60 ducts of 12 sizes each sized exactly, with runner-up and next sizes, within 50 ms? */
export function ductSizingBench(): BenchRow[] {
  const [fits, none] = [system(90), system(5)];
  const solved = solveSizing(fits);
  if (solved.status !== 'fits' || solved.proof.kind !== 'proved') throw new Error('the system is sized and proved');
  if (pressureOf(fits, solved.best.choice) > 90 + 1e-4) throw new Error('the choice does not keep to its pressure');
  if (solveSizing(none).status !== 'nothing-fits') throw new Error('nothing fits 5 Pa');
  const times = side(
    () => void solveSizing(fits),
    () => multiplyAdds(50 * perMillisecond),
  );
  const quick = side(
    () => void solveSizing(none),
    () => multiplyAdds(10 * perMillisecond),
  );
  return [
    atMost('60 ducts of 12 sizes, exact', times, 1, 'at most 50 ms'),
    atMost('the same where nothing fits', quick, 1, 'at most 10 ms'),
  ];
}
