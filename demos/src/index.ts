export { alderHall } from './alderHall.ts';

export type Demo = {
  readonly id: string;
  readonly name: string;
  /** What it shows, in one sentence. */
  readonly sentence: string;
  /** The project as it stands in its file. */
  readonly load: () => Promise<unknown>;
};

const file = async (loaded: Promise<{ default: unknown }>): Promise<unknown> => (await loaded).default;

/** The invented projects, the tour first. */
export const demos: readonly Demo[] = [
  {
    id: 'tern-ledge',
    name: 'Tern Ledge',
    sentence: "A keeper's cottage on a cold island, on its own power. Invented.",
    load: () => file(import('../tern-ledge.json')),
  },
  {
    id: 'juniper-flat',
    name: 'Juniper Flat',
    sentence: 'A high-desert ranch house on the grid with old ducts in a hot attic. Invented.',
    load: () => file(import('../juniper-flat.json')),
  },
  {
    id: 'tern-ledge-after',
    name: 'Tern Ledge, the winter after',
    sentence: 'Built, and the south bedroom is cold: go on reading, and find out why. Invented.',
    load: async () => (await import('./winterAfter.ts')).winterAfter(),
  },
];
