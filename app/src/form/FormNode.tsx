import type { SchemaNode } from '@kneewall/project';
import { lazy, Suspense } from 'react';
import { QuantityField } from '../quantity/QuantityField.tsx';
import { ChoiceField } from './ChoiceField.tsx';
import { FlagField } from './FlagField.tsx';
import { GroupFields } from './GroupFields.tsx';
import { HoursField } from './HoursField.tsx';
import { KeptField } from './KeptField.tsx';
import { MapEntries } from './MapEntries.tsx';
import { RecordedField } from './RecordedField.tsx';
import { ReferenceField } from './ReferenceField.tsx';
import { TextField } from './TextField.tsx';
import { WeatherField } from './WeatherField.tsx';

type Props = { readonly node: SchemaNode; readonly path: readonly string[]; readonly depth: number };

/** The drawing board comes when something to draw is on the screen. */
const DrawnField = lazy(() => import('../drawing/DrawnField.tsx').then((m) => ({ default: m.DrawnField })));

/** For those who have a data sheet as a table. */
const SheetRowsImport = lazy(() => import('./SheetRowsImport.tsx'));
const isSheetRows = (path: readonly string[]): boolean =>
  path[0] === 'candidates' && path[2] === 'rows' && path.length === 3;

/** The form of one place in the schema: whatever the schema grows is drawn without a word here. */
export function FormNode({ node, path, depth }: Props) {
  switch (node.meta.node) {
    case 'group':
      return <GroupFields node={node} path={path} depth={depth} />;
    case 'map':
      if (path.join('.') === 'site.recorded') return <RecordedField node={node} path={path} />;
      return (
        <MapEntries node={node} path={path} depth={depth}>
          {isSheetRows(path) && (
            <Suspense fallback={null}>
              <SheetRowsImport path={path} />
            </Suspense>
          )}
        </MapEntries>
      );
    case 'quantity':
      return <QuantityField node={node} path={path} />;
    case 'choice':
      return <ChoiceField node={node} path={path} />;
    case 'reference':
      return <ReferenceField node={node} path={path} />;
    case 'flag':
      return <FlagField node={node} path={path} />;
    case 'text':
    case 'date':
      return <TextField node={node} path={path} />;
    case 'points':
      return (
        <Suspense fallback={null}>
          <DrawnField node={node} path={path} />
        </Suspense>
      );
    case 'hours':
      return <HoursField node={node} path={path} />;
    case 'blob':
      return path.join('.') === 'site.weather.blob' ? (
        <WeatherField node={node} path={path} />
      ) : (
        <KeptField node={node} path={path} />
      );
    default:
      return <KeptField node={node} path={path} />;
  }
}
