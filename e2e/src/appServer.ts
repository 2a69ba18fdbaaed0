import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export type AppServer = {
  readonly url: string;
  /** Ends the process, as pulling the plug would, and waits until it is gone. */
  kill(): Promise<void>;
};

const serving = fileURLToPath(new URL('./serve.ts', import.meta.url));
const loader = import.meta.resolve('tsx');

/** The built app, or another folder, served by a process of its own on a free port, so that a test can end it. */
export function startAppServer(port = 0, root = ''): Promise<AppServer> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, ['--import', loader, serving, String(port), root], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
    child.once('exit', (code) => fail(new Error(`the server ended with ${code}`)));
    child.stdout?.once('data', (said: Buffer) => done({ url: said.toString().trim(), kill: () => end(child, gone) }));
  });
}

async function end(child: ChildProcess, gone: Promise<void>): Promise<void> {
  child.kill('SIGKILL');
  await gone;
}
