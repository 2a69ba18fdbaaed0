/** A text with each number held to the short word after it, so that no line ends between 2 and 1/8", or 3 and Pa. */
export const glued = (text: string): string => text.replaceAll(/(?<=\d['"]?) (?=\S{1,6}(?:[\s.,;:)]|$))/g, '\u00a0');
