/** What anybody who goes into an attic has to hear, whatever the work; common practice, no source. */
export const hotAttic =
  'Hot attic: short turns, water, somebody below, never alone. Boards across the joists; never step between them, the ceiling does not carry you.';

/** And what may lie there. */
const oldAttic =
  'Old loose insulation, grey or gold flakes above all, may hold asbestos, and old wiring may be bare: stop and have it looked at.';

/** The cautions of every task in an attic. */
export const atticWork: readonly string[] = [hotAttic, oldAttic];
