import { readFileSync } from 'node:fs';
import { type Asked, evaluate, reachMap, type Wall } from '@kneewall/engine';
import { openProject } from '@kneewall/project';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

/** The walls of the demo as its plan lays them out. */
function tern(): { readonly walls: readonly Wall[]; readonly asked: Asked } {
  const opened = openProject(readFileSync(new URL('../../demos/tern-ledge.json', import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error('the demo does not open');
  const { lineset } = evaluate(opened.project, {}).plan.trades;
  if (!lineset?.walls.ok || !lineset.asked.ok) throw new Error('the walls are not known');
  return { walls: lineset.walls.value, asked: lineset.asked.value };
}

/** Question: are the maps of all walls, and of the ground before them, by 25 mm, done in 100 ms? */
export function reachMapsBench(): BenchRow[] {
  const { walls, asked } = tern();
  const cells = (stands: 'wall' | 'ground') =>
    walls.reduce(
      (sum, wall) =>
        sum +
        reachMap(wall, asked, stands).rows.reduce((row, runs) => row + runs.reduce((n, r) => n + r.to - r.from, 0), 0),
      0,
    );
  if (!(cells('wall') > 0 && cells('ground') > 0)) throw new Error('nothing is reached');
  const times = side(
    () => {
      for (const wall of walls) for (const stands of ['wall', 'ground'] as const) reachMap(wall, asked, stands);
    },
    () => multiplyAdds(100 * perMillisecond),
  );
  return [
    atMost(
      'reach maps: Tern Ledge, all walls and ground, 25 mm',
      times,
      1,
      'at most the time of 70 million multiply-adds, about 100 ms',
    ),
  ];
}
