type Document = Readonly<Record<string, unknown>>;

/**
 * Steps from one version to the next, in order and without gaps: pure, document to document, never edited after
 * release. Version 1 is the first, so there is none yet; `test/old/` keeps a real document of every version.
 */
const steps: readonly { readonly to: number; readonly up: (document: Document) => Document }[] = [];

/** Brings a document of an older version up to this one. */
export function migrate(document: Document): Document {
  const from = Number(document.schema);
  return steps.filter((s) => s.to > from).reduce((d, s) => ({ ...s.up(d), schema: s.to }), document);
}
