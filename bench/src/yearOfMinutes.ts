export const rows = 525_600;
const two = (n: number): string => String(n).padStart(2, '0');

/** A year of minutes with twelve columns beside the moment, line by line, made by arithmetic; invented. */
export function* yearOfMinutes(): Iterable<string> {
  yield 'time,outdoor °C,indoor °C,bedroom °C,heat W,heat pump kWh,house kWh,supply °C,return °C,flow L/s,wind m/s,sun W/m²,rh %\n';
  let unit = 1000;
  let house = 5000;
  for (let i = 0; i < rows; i++) {
    const day = Math.floor(i / 1440);
    const hour = (i % 1440) / 60;
    const outdoor =
      6 -
      9 * Math.cos((2 * Math.PI * day) / 365) +
      3 * Math.sin(day * 1.7) -
      3 * Math.cos((2 * Math.PI * (hour - 3)) / 24);
    const sun = Math.max(0, 500 * Math.sin(((hour - 6) * Math.PI) / 12) * (0.4 + 0.3 * Math.sin(day * 2.3)));
    const indoor = hour < 6 ? 18 + 0.1 * Math.sin(i) : 20 + 0.1 * Math.sin(i);
    const heat = Math.max(0, 150 * (indoor - outdoor) - 4 * sun - 300 + 100 * Math.sin(day * 0.9));
    unit += heat / 3 / 60_000;
    house += heat / 3 / 60_000 + 0.3 / 60;
    const month = Math.floor(day / 30.5) + 1;
    const date = `2025-${two(month)}-${two(1 + Math.floor(day - 30.5 * (month - 1)))} ${two(Math.floor(hour))}:${two(i % 60)}`;
    yield `${date},${outdoor.toFixed(1)},${indoor.toFixed(2)},19.5,${heat.toFixed(0)},${unit.toFixed(3)},${house.toFixed(3)},35.2,20.1,250.5,${(3 + Math.sin(day)).toFixed(1)},${sun.toFixed(0)},45\n`;
  }
}
