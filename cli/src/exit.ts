import type { Problem } from '@kneewall/project';

/** What each exit code says. */
export const exitCodes = { nothingFails: 0, fails: 1, refused: 2, fault: 3, interrupted: 130 } as const;

/** Input or usage that is not taken; carries everything wrong with it. */
export class Refused extends Error {
  readonly problems: readonly Problem[];
  constructor(message: string, problems: readonly Problem[] = []) {
    super(message);
    this.problems = problems;
  }
}
