import { type ComponentType, useEffect, useState } from 'react';

/** A component in a file of its own, which is fetched when it is first shown, or ahead of that. */
export type Part<Props> = {
  readonly fetch: () => Promise<unknown>;
  readonly here: () => ComponentType<Props> | undefined;
};

export function partOf<Props>(load: () => Promise<ComponentType<Props>>): Part<Props> {
  let here: ComponentType<Props> | undefined;
  const fetch = async () => {
    here ??= await load();
  };
  return { fetch, here: () => here };
}

type LaterProps<Props> = { readonly part: Part<Props>; readonly given: Props; readonly meanwhile?: string };

/** Shows a part, and until it is here what stands in its place. One that cannot be fetched breaks the screen it is for. */
export function Later<Props extends object>({ part, given, meanwhile }: LaterProps<Props>) {
  const [failed, setFailed] = useState(false);
  const [, setFetched] = useState<Part<Props>>();
  const Component = part.here();
  useEffect(() => {
    if (part.here()) return;
    part.fetch().then(
      () => setFetched(part),
      () => setFailed(true),
    );
  }, [part]);
  if (failed) throw new Error('a part of the app could not be fetched');
  if (Component) return <Component {...given} />;
  return meanwhile === undefined ? null : <p className="lead">{meanwhile}</p>;
}
