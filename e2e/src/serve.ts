import { fileURLToPath } from 'node:url';
import { serveApp } from '@kneewall/server';

/** Serves the built app and prints its address: the process that a browser test starts and ends. */
const root = fileURLToPath(new URL('../../app/dist/', import.meta.url));
const { port } = await serveApp({ root, port: Number(process.argv[2] ?? 0), host: '127.0.0.1' });
process.stdout.write(`http://127.0.0.1:${port}\n`);
