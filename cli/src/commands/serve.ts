import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { PortBusy, serveApp } from '@kneewall/server';
import { Refused } from '../exit.ts';
import { readOptions } from '../options.ts';

const appFolder = fileURLToPath(new URL('../../app/dist/', import.meta.url));

/** `kneewall serve [--port]`: serves the built app until interrupted. */
export async function serve(args: readonly string[]): Promise<number> {
  const { values } = readOptions(args, { port: { type: 'string', default: '4173' } }, 0);
  const port = Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new Refused(`A port is a whole number up to 65535, not "${String(values.port).slice(0, 40)}".`);
  if (!existsSync(appFolder)) throw new Refused('The app is not built yet. Run "npm start" in the checkout.');
  const served = await listen(port);
  process.stdout.write(`Kneewall is at http://127.0.0.1:${served.port}/\nStop it with Ctrl+C.\n`);
  return await new Promise<number>(() => {});
}

async function listen(port: number) {
  try {
    return await serveApp({ root: appFolder, port });
  } catch (thrown) {
    if (thrown instanceof PortBusy)
      throw new Refused(`${thrown.message} End it, or set PORT to another; the app keeps its work apart by port.`);
    throw thrown;
  }
}
