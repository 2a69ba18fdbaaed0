import fastifyStatic from '@fastify/static';
import Fastify, { type FastifyInstance } from 'fastify';

export type Served = { readonly port: number; readonly close: () => Promise<void> };

/** Another program holds the port. Another port would be another origin, and open an empty app. */
export class PortBusy extends Error {
  readonly port: number;
  constructor(port: number) {
    super(`Port ${port} is taken by another program.`);
    this.port = port;
  }
}

const securityHeaders = {
  'content-security-policy':
    // Compiled programs may run (the solver), text as code may not.
    "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; img-src 'self' data: blob:; style-src 'self'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'; form-action 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
} as const;

/** Names under which this machine may be asked; anything else is a page elsewhere that points its name here. */
const ownNames: ReadonlySet<string> = new Set(['127.0.0.1', 'localhost', '[::1]']);

/**
 * Serves the built app from a folder, and nothing else. `port` 0 takes a free one. Throws `PortBusy` when the port is
 * held. Only reading is offered, only to this machine's own names.
 */
export async function serveApp(options: { root: string; port: number; host?: string }): Promise<Served> {
  const app = Fastify({ logger: false, requestTimeout: 10_000, bodyLimit: 1024, connectionTimeout: 30_000 });
  guard(app);
  await app.register(fastifyStatic, {
    root: options.root,
    index: 'index.html',
    cacheControl: true,
    maxAge: 0,
    etag: true,
    setHeaders: (reply, path) => {
      // These files carry a hash of what is in them in their names.
      if (/[\\/]assets[\\/]/.test(path)) reply.header('cache-control', 'public, max-age=31536000, immutable');
    },
  });
  try {
    await app.listen({ port: options.port, host: options.host ?? '127.0.0.1' });
  } catch (error) {
    await app.close();
    if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE') throw new PortBusy(options.port);
    throw error;
  }
  const address = app.server.address();
  const port = address !== null && typeof address === 'object' ? address.port : options.port;
  return { port, close: () => app.close() };
}

function guard(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    const name = (request.headers.host ?? '').replace(/:\d+$/, '').toLowerCase();
    if (!ownNames.has(name)) await reply.code(421).send('This address is not served here.');
    else if (request.method !== 'GET' && request.method !== 'HEAD')
      await reply.code(405).send('Only reading is offered.');
  });
  app.addHook('onSend', async (_request, reply) => {
    reply.headers(securityHeaders);
  });
}
