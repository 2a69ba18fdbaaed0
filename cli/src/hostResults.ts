import { type Results, readWeather } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { readBlob } from './projectFile.ts';

/** What the engine cannot fetch for itself: the weather file named in the project, read and parsed. */
export async function gatherResults(project: Project, file: string): Promise<Results> {
  const weather = project.site?.weather;
  if (weather?.blob === undefined) return {};
  const bytes = await readBlob(file, weather.blob);
  if (!bytes) {
    process.stderr.write(
      `The weather file ${weather.name ?? weather.blob.slice(0, 12)} is not beside the project; what depends on it stays unknown.\n`,
    );
    return {};
  }
  const read = readWeather(new TextDecoder().decode(bytes), weather, project.site);
  return read.value ? { [`blob:${weather.blob}`]: read.value } : {};
}
