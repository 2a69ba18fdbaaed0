/** Conductor area of an American Wire Gauge size, mm²; n is -1, -2, -3 for 2/0, 3/0, 4/0. Definition: ASTM B258. */
export const gaugeArea = (n: number): number => (Math.PI / 4) * (0.127 * 92 ** ((36 - n) / 39)) ** 2;

/** `12 AWG`, `#12`, `1/0`, `2/0 AWG`; mm², undefined when it is no gauge between 40 and 4/0. */
export function wireArea(text: string): number | undefined {
  const large = /^#? ?([1-4])\/0(?: ?AWG)?$/i.exec(text);
  if (large) return gaugeArea(1 - Number(large[1]));
  const size = /^(?:# ?(\d{1,2})|(\d{1,2}) ?AWG|AWG ?(\d{1,2}))$/i.exec(text);
  if (!size) return undefined;
  const n = Number(size[1] ?? size[2] ?? size[3]);
  return n <= 40 ? gaugeArea(n) : undefined;
}
