/** How the regions of a map are filled: told apart by their lines, in black and white as well. */
export const patterns = [
  { size: 7, lines: 'M0 3.5H7M3.5 0V7', width: 2.2, turn: 45 },
  { size: 7, lines: 'M0 3.5H7', width: 1.8, turn: -45 },
  { size: 8, lines: 'M4 2.6V5.4', width: 2.8, turn: 0 },
  { size: 10, lines: 'M0 5H10', width: 1.2, turn: 0 },
] as const;

/** The letter of a stock length, the shortest first. */
export const letterOf = (stock: number): string => String.fromCharCode(65 + (stock % 26));

export const patternId = (map: string, stock: number): string => `${map}-${stock % patterns.length}`;

/** The patterns of one map, for its drawing and its key. */
export function ReachPatterns({ map }: { map: string }) {
  return (
    <defs>
      {patterns.map(({ size, lines, width, turn }, k) => (
        <pattern
          key={lines}
          id={patternId(map, k)}
          width={size}
          height={size}
          patternUnits="userSpaceOnUse"
          patternTransform={`rotate(${turn})`}
        >
          <path className="reach-line" d={lines} strokeWidth={width} />
        </pattern>
      ))}
    </defs>
  );
}
