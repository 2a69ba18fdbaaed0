/** How well a source is known. Values recalled and not looked up say so. */
export type Standing =
  | 'standard'
  | 'paper'
  | 'handbook'
  | 'definition'
  | 'maker'
  | 'common practice'
  | 'from memory'
  | 'project';

export type Source = {
  readonly title: string;
  readonly edition?: string;
  readonly place?: string;
  readonly standing: Standing;
};

export type Sources = Readonly<Record<string, Source>>;
