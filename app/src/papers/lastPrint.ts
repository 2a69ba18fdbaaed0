import type { Letters, PartId, SheetMarks } from '@kneewall/documents/planSet';
import type { System } from '@kneewall/project';

/** The last print of a project made on this device: when, how, and the mark of each of its sheets. */
export type LastPrint = {
  readonly day: string;
  readonly units: System;
  readonly letters: Letters;
  readonly parts: readonly PartId[];
  readonly marks: SheetMarks;
};

const keyOf = (project: string): string => `kneewall.printed.${project}`;

/** Kept on this device only: another does not know what lies on the table here. A full store loses nothing else. */
export function keepLastPrint(project: string, print: LastPrint): void {
  try {
    localStorage.setItem(keyOf(project), JSON.stringify(print));
  } catch {
    // A browser that keeps nothing: it will not be told what has changed.
  }
}

export function lastPrintOf(project: string): LastPrint | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(project)) ?? 'null');
    return isPrint(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

const isPrint = (kept: unknown): kept is LastPrint =>
  typeof kept === 'object' && kept !== null && 'marks' in kept && 'day' in kept && 'parts' in kept;
