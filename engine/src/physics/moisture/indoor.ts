/**
 * Pa of vapour that a room holds over the outdoor air by its humidity class, 1 (storage) to 5 (laundry), at an outdoor
 * temperature: full at or below 0 °C, falling in a line to nothing at 20 °C. Upper limits of the classes; class 5 from
 * the national annexes. Source: `iso-13788.classes` (from memory).
 */
export function vapourExcess(humidityClass: 1 | 2 | 3 | 4 | 5, outdoor: number): number {
  const full = 270 * humidityClass;
  return full * Math.max(0, Math.min(1, (20 - outdoor) / 20));
}
