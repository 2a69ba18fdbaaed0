import { type Project, projectText } from '@kneewall/project';

/** A file name from a project's name: letters, digits and hyphens, and its ending. */
export function fileName(name: string | undefined, ending: 'json' | 'pdf' = 'json'): string {
  const plain = (name ?? '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return `${plain === '' ? 'kneewall-project' : plain.slice(0, 60)}.${ending}`;
}

/** Hands the whole project to the browser as a file. */
export const saveFile = (project: Project): void =>
  handOver(fileName(project.about?.name), projectText(project), 'application/json');

/** Hands a text or bytes to the browser as a file to keep. */
export function handOver(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads the blob after the click returns.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
