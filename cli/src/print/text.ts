/** Breaks a text at blanks into lines of at most `width`, the first after `first`, the others after `rest`. */
export function wrap(text: string, width: number, first = '', rest = first): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(' ').filter((w) => w !== '')) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    line = empty ? line + word : `${line} ${word}`;
    empty = false;
  }
  return [...lines, line];
}

const colours = { red: 31, yellow: 33, green: 32, blue: 36, bold: 1, dim: 2 } as const;
export type Colour = keyof typeof colours;
export type Paint = (text: string, colour: Colour) => string;

/** Colour on a terminal, plain text everywhere else. */
export const painter = (onTerminal: boolean): Paint =>
  onTerminal ? (text, colour) => `\u001b[${colours[colour]}m${text}\u001b[0m` : (text) => text;
