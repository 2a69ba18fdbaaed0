/**
 * Minutes that clock hours leave, from those of solar hours, where clocks are `ahead` hours of the sun. A clock hour lies
 * across two or, by the sun's own quarter of an hour either way, three solar hours: the least of them counts.
 */
export function atticClock(solar: readonly number[], ahead: number): number[] {
  const uneven = 0.28;
  return Array.from({ length: 24 }, (_, clock) => {
    const first = Math.floor(clock - ahead - uneven);
    const last = Math.ceil(clock + 1 - ahead + uneven) - 1;
    let least = 60;
    for (let h = first; h <= last; h++) least = Math.min(least, solar[((h % 24) + 24) % 24] ?? 0);
    return least;
  });
}
