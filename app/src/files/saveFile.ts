import { type Project, projectText } from '@kneewall/project';

/** A file name from a project's name: letters, digits and hyphens. */
export function fileName(name: string | undefined): string {
  const plain = (name ?? '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return `${plain === '' ? 'kneewall-project' : plain.slice(0, 60)}.json`;
}

/** Hands the whole project to the browser as a file. */
export function saveFile(project: Project): void {
  const url = URL.createObjectURL(new Blob([projectText(project)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName(project.about?.name);
  link.click();
  // The browser reads the blob after the click returns.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
