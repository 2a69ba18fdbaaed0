import { createInterface } from 'node:readline';
import type { Project, System } from '@kneewall/project';
import { exitCodes, Refused } from '../exit.ts';
import { isOver, questionLines, startInterview, takeLine } from './interview.ts';

const opening = `Answer what you know; “don’t know” is an answer too: leave the line empty or
type ?. “back” goes one question back. Nothing is written before the last one.
`;

/** Asks the first questions on this terminal, or reads the answers from a pipe, a line each. Nothing is written here. */
export async function askAll(units: System): Promise<Project> {
  const onTerminal = process.stdin.isTTY === true;
  const lines = createInterface({ input: process.stdin, output: process.stdout, terminal: onTerminal, prompt: '  > ' });
  // A terminal in line mode hands Ctrl+C to its reader instead of the process.
  lines.on('SIGINT', () => {
    process.stdout.write('\nInterrupted. Nothing was written.\n');
    process.exit(exitCodes.interrupted);
  });
  const say = (text: readonly string[]): void => {
    if (text.length > 0) process.stdout.write(`${text.join('\n')}\n`);
  };
  let interview = startInterview(units);
  process.stdout.write(opening);
  say(questionLines(interview));
  lines.prompt();
  for await (const line of lines) {
    const took = takeLine(interview, line);
    // A pipe does not show what was typed.
    if (!onTerminal) process.stdout.write('\n');
    say(took.say);
    const moved = took.next.at !== interview.at;
    interview = took.next;
    if (isOver(interview)) break;
    if (moved) say(questionLines(interview));
    lines.prompt();
  }
  lines.close();
  if (!isOver(interview)) throw new Refused('\nThe answers ended before the questions did. Nothing was written.');
  return interview.project;
}
