import { fileURLToPath } from 'node:url';
import { serveApp } from '@kneewall/server';

/** Serves the built app and prints its address: the process that a browser test starts and ends. */
const [asked = '0', folder = ''] = process.argv.slice(2);
const root = folder === '' ? fileURLToPath(new URL('../../app/dist/', import.meta.url)) : folder;
const { port } = await serveApp({ root, port: Number(asked), host: '127.0.0.1' });
process.stdout.write(`http://127.0.0.1:${port}\n`);
