// The page's policy forbids building code from text. The schema library would try, fail and leave a warning; this tells
// it not to. It has to run before the first schema is made, so it is the first import of the page and of each worker.
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
