import { readingName } from '@kneewall/engine';
import { useSession } from '../services.ts';

/** What a reading is called, by the id of what it is held against, with the register or room it belongs to. */
export function useReadingName(): (expected: string) => string {
  const terminals = useSession((s) => s.project.routes?.ducts?.terminals) ?? {};
  const rooms = useSession((s) => s.project.house?.rooms) ?? {};
  return (expected) => {
    const [, at] = expected.split(':');
    return readingName(expected, at === undefined ? '' : (terminals[at]?.name ?? rooms[at]?.name ?? at));
  };
}
