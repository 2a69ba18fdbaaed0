import type { LogBytes } from '@kneewall/project';

/** A file's bytes, fetched as they are read. Only for workers: nothing else may wait for a disk. */
export const bytesOf = (file: Blob): LogBytes => {
  const reader = new FileReaderSync();
  return {
    size: file.size,
    bytes: (from, to) => new Uint8Array(reader.readAsArrayBuffer(file.slice(from, to))),
  };
};
