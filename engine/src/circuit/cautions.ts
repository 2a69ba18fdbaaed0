/** What stands wherever a battery is near. */
export const battery =
  'A battery cannot be switched off at its terminals: one slipped spanner welds, burns and blinds. Cover, gloves, no rings, fuse out first.';
