/** A task's name for a heading or a sentence: what it says before its first colon, semicolon or bracket. */
export const taskName = (what: string): string => what.split(/[:;(]/, 1)[0]?.trim() ?? what;
