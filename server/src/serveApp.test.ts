import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PortBusy, type Served, serveApp } from './index.ts';

type Asked = { status: number; body: string; csp: string | undefined };

/** Node's own client, because fetch does not let a test lie about the host. */
const ask = (port: number, path: string, init: { host?: string; method?: string } = {}): Promise<Asked> =>
  new Promise((done, fail) => {
    const headers = { host: init.host ?? `127.0.0.1:${port}` };
    const r = request({ port, path, method: init.method ?? 'GET', host: '127.0.0.1', headers }, (answer) => {
      let body = '';
      answer.on('data', (piece) => {
        body += piece;
      });
      answer.on('end', () =>
        done({ status: answer.statusCode ?? 0, body, csp: answer.headers['content-security-policy'] as string }),
      );
    });
    r.on('error', fail);
    r.end();
  });

describe('the app is served to this machine and to nobody else', () => {
  let root = '';
  let served: Served;
  beforeAll(async () => {
    root = await mkdtemp(join(tmpdir(), 'kneewall-app-'));
    await writeFile(join(root, 'index.html'), '<!doctype html><title>here</title>');
    served = await serveApp({ root, port: 0 });
  });
  afterAll(async () => {
    await served.close();
    await rm(root, { recursive: true });
  });

  it('gives the page, with a policy that allows no foreign code', async () => {
    const page = await ask(served.port, '/');
    expect(page.status).toBe(200);
    expect(page.body).toContain('here');
    expect(page.csp).toContain("default-src 'self'");
    expect(page.csp).not.toContain("'unsafe-eval'");
  });

  it.each(['evil.example', 'evil.example:80', '127.0.0.1.evil.example', '0.0.0.0'])(
    'refuses the host name %j',
    async (host) => {
      expect((await ask(served.port, '/', { host })).status).not.toBe(200);
    },
  );

  it.each(['POST', 'PUT', 'DELETE'])('refuses %s', async (method) => {
    expect((await ask(served.port, '/', { method })).status).toBe(405);
  });

  it.each(['/../package.json', '/%2e%2e/package.json', '/..%2fpackage.json', '/missing.js'])(
    'gives nothing for %s',
    async (path) => {
      const answer = await ask(served.port, path);
      expect(answer.status).toBeGreaterThanOrEqual(400);
    },
  );

  it('says so when the port is taken', async () => {
    await expect(serveApp({ root, port: served.port })).rejects.toBeInstanceOf(PortBusy);
  });
});
