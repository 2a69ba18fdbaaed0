import { type Results, readWeather, type WeatherRead } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import type { WeatherText } from './messages.ts';

/** What the engine cannot fetch for itself: the project's weather file, read. The same objects while nothing of it moved. */
export function weatherReader() {
  const none: Results = {};
  let kept: { site: Project['site']; file: WeatherText; read: WeatherRead; results: Results } | undefined;
  return (
    project: Project,
    file: WeatherText | undefined,
  ): Pick<WeatherRead, 'problems'> & { readonly results: Results } => {
    const { site } = project;
    if (!file || !site?.weather || site.weather.blob !== file.sha) return { results: none, problems: [] };
    if (kept?.site !== site || kept.file !== file) {
      const read = readWeather(file.text, site.weather, site);
      kept = { site, file, read, results: read.value ? { [`blob:${file.sha}`]: read.value } : none };
    }
    return { results: kept.results, problems: kept.read.problems };
  };
}
