import type { Entry, Listed, LogRecord, StoredProject } from './records.ts';
import type { Store } from './store.ts';

const databaseName = 'kneewall';
const version = 1;

/**
 * The store in the browser. Writes are strict: they complete only when the disk has them. `outbox` names the acts that
 * no other device has acknowledged, and is written in the same transaction as they are.
 */
export function indexedDbStore(): Store {
  let opened: Promise<IDBDatabase> | undefined;
  const forget = () => {
    opened = undefined;
  };
  const database = (): Promise<IDBDatabase> => {
    opened ??= openDatabase(forget).catch((error: unknown) => {
      forget();
      throw error;
    });
    return opened;
  };
  return {
    list: async () => {
      const tx = (await database()).transaction('listed', 'readonly');
      return (await answer(tx.objectStore('listed').getAll())) as Listed[];
    },
    load: async (id) => loaded(await database(), id),
    append: async (entries) => append(await database(), entries),
    putBlob: async (sha, text) => putBlob(await database(), sha, text),
    blob: async (sha) => {
      const tx = (await database()).transaction('blobs', 'readonly');
      const kept = (await answer(tx.objectStore('blobs').get(sha))) as { text?: string } | undefined;
      return kept?.text;
    },
    putFile: async (sha, file, signal) => putFile(await database(), sha, file, signal),
    file: async (sha) => {
      const tx = (await database()).transaction('blobs', 'readonly');
      const kept = (await answer(tx.objectStore('blobs').get(sha))) as { text?: string; file?: Blob } | undefined;
      // Logs taken by earlier versions stand as text.
      return kept?.file ?? (kept?.text === undefined ? undefined : new Blob([kept.text]));
    },
    reopen: () => {
      opened?.then((db) => db.close()).catch(() => undefined);
      forget();
    },
  };
}

function openDatabase(forget: () => void): Promise<IDBDatabase> {
  return new Promise((done, fail) => {
    const asked = indexedDB.open(databaseName, version);
    asked.onupgradeneeded = () => {
      const db = asked.result;
      db.createObjectStore('bases', { keyPath: 'id' });
      db.createObjectStore('log', { keyPath: ['project', 'number'] });
      db.createObjectStore('outbox', { keyPath: ['project', 'number'] });
      db.createObjectStore('listed', { keyPath: 'id' });
      db.createObjectStore('blobs', { keyPath: 'sha' });
    };
    asked.onsuccess = () => {
      const db = asked.result;
      // A newer app in another tab may need to change the store; an old connection would block it for ever.
      db.onversionchange = () => {
        db.close();
        forget();
      };
      db.onclose = forget;
      done(db);
    };
    asked.onerror = () => fail(asked.error);
    asked.onblocked = () => fail(new Error('blocked'));
  });
}

async function loaded(db: IDBDatabase, id: string): Promise<StoredProject | undefined> {
  const tx = db.transaction(['bases', 'log'], 'readonly');
  const base = answer(tx.objectStore('bases').get(id));
  const records = answer(tx.objectStore('log').getAll(IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER])));
  const found = (await base) as StoredProject['base'] | undefined;
  return found ? { base: found, records: (await records) as LogRecord[] } : undefined;
}

const append = (db: IDBDatabase, entries: readonly Entry[]): Promise<void> =>
  strictly(db, ['bases', 'log', 'outbox', 'listed'], (tx) => {
    for (const { record, listed, base } of entries) {
      if (base) tx.objectStore('bases').put(base);
      tx.objectStore('log').put(record);
      tx.objectStore('outbox').put({ project: record.project, number: record.number });
      tx.objectStore('listed').put(listed);
    }
    // Asked for at once: a page that is being closed lives no longer than this.
    tx.commit();
  });

const putBlob = (db: IDBDatabase, sha: string, text: string): Promise<void> =>
  strictly(db, ['blobs'], (tx) => tx.objectStore('blobs').put({ sha, text }));

/** A file is kept as its bytes, without the name and date it had; an abort in the midst undoes the write. */
const putFile = (db: IDBDatabase, sha: string, file: Blob, signal: AbortSignal): Promise<void> =>
  strictly(db, ['blobs'], (tx) => {
    signal.throwIfAborted();
    signal.addEventListener('abort', () => abort(tx), { once: true });
    tx.objectStore('blobs').put({ sha, file: file.slice() });
  });

function abort(tx: IDBTransaction): void {
  try {
    tx.abort();
  } catch {
    // It was written already: whoever asked looks at the signal.
  }
}

/** One write, settled only when the disk has it. */
function strictly(db: IDBDatabase, stores: readonly string[], write: (tx: IDBTransaction) => void): Promise<void> {
  return new Promise((done, fail) => {
    const tx = db.transaction(stores, 'readwrite', { durability: 'strict' });
    tx.oncomplete = () => done();
    tx.onabort = () => fail(tx.error ?? new Error('aborted'));
    tx.onerror = () => fail(tx.error ?? new Error('failed'));
    write(tx);
  });
}

const answer = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });
