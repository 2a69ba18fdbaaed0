/** Cautions that more than one trade says: the same words everywhere, so that nobody wonders what the difference is. */
export const hotAttic =
  'Hot attic: short turns, water, somebody below. Boards across the joists; never step between them.';

export const heatLimits =
  'Limits are for healthy people who drink enough; lower for the old, the ill, and with some medicines. Never alone. Confused, or no longer sweating: down, cool with water, and call the emergency number.';

/** Wherever someone may touch a wire. */
export const electric =
  'Electricity kills, and charged capacitors bite after it is off: isolate, lock off, wait, prove dead. Follow the local code; have a licensed electrician check and connect it.';
