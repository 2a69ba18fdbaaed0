import type { Source } from '@kneewall/engine';

/** A source with how well it is known. */
export function SourceWords({ source, id }: { source: Source | undefined; id: string }) {
  if (!source) return <>{id === 'project' ? 'Your own answers' : id}</>;
  const place = [source.edition, source.place].filter((part) => part !== undefined).join(', ');
  return (
    <>
      {source.title}
      {place !== '' && `, ${place}`} <span className="standing">({source.standing})</span>
    </>
  );
}
