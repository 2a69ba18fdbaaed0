/** Numbers from a row as it is typed or pasted: parted by blanks, new lines, tabs, semicolons, or commas with a blank after them. */
export function hoursFrom(text: string): number[] | 'not-numbers' {
  const parts = text
    .trim()
    .split(/[\s;]+|,\s+/)
    .map((part) => part.replace(/,$/, ''))
    .filter((part) => part !== '');
  const numbers = parts.map((part) => Number(part.replace(',', '.')));
  return numbers.every((x) => Number.isFinite(x) && x >= 0) ? numbers : 'not-numbers';
}
