/** The cautions that stand wherever someone may touch a wire. */
export const electric =
  'Electricity kills, and charged capacitors bite after it is off: isolate, lock off, wait, prove dead. Follow the local code; have a licensed electrician check and connect it.';

export const battery =
  'A battery cannot be switched off at its terminals: one slipped spanner welds, burns and blinds. Cover, gloves, no rings, fuse out first.';
