/**
 * Share of the leaking air that leaves by the ceiling into an attic, from a sealed ceiling to one with open hatches and
 * chases. Source: `loads.up-leak`.
 */
export const ceilingLeak = { low: 0.1, likely: 0.3, high: 0.6 } as const;
