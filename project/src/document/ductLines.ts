import type { Project } from '../schema/project.ts';
import { asked, type Problem } from './problem.ts';

/** Lines of stock and prices that say they are duct and not which size, or not how much of it: they are kept and not used. */
export function ductLineProblems({ work, routes }: Project): Problem[] {
  const ask = (path: readonly string[], mend: string) => asked('incomplete', path, mend);
  const lines = (['stock', 'prices'] as const).flatMap((list) =>
    Object.entries(work?.[list] ?? {}).flatMap(([id, line]) => {
      if (line.duct === undefined) return [];
      const round = line.duct === 'flexible' || line.duct === 'round';
      const sized = round ? line.diameter : line.width && line.height;
      if (sized) return [];
      const field = round ? 'diameter' : line.width ? 'height' : 'width';
      const what = round ? 'its diameter' : 'its width and height';
      return [ask(['work', list, id, field], `Say ${what}: until then this line is kept and not used for the sizes.`)];
    }),
  );
  const prices = Object.entries(work?.prices ?? {}).flatMap(([id, p]) =>
    p.duct !== undefined && (p.part ?? 'run') === 'run' && p.price && !p.piece
      ? [ask(['work', 'prices', id, 'piece'], 'Say what length the price buys: until then it is kept and not used.')]
      : [],
  );
  const free = Object.entries(routes?.ducts?.sections ?? {}).flatMap(([id, { space }]) =>
    space?.passes === 'free' && (space.depth || space.width)
      ? [
          ask(
            ['routes', 'ducts', 'sections', id, 'space', 'passes'],
            'It is said to run free, so height and width of its space do not count. Correct the one that is wrong.',
          ),
        ]
      : [],
  );
  return [...lines, ...prices, ...free];
}
