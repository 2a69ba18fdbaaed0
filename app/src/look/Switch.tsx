import './Switch.css';

type Props<K extends string> = {
  readonly label: string;
  readonly value: K;
  readonly options: Readonly<Record<K, string>>;
  readonly choose: (key: K) => void;
};

/** A few answers side by side of which one holds. */
export function Switch<K extends string>({ label, value, options, choose }: Props<K>) {
  return (
    <fieldset className="switch" aria-label={label}>
      {(Object.keys(options) as K[]).map((key) => (
        <button key={key} type="button" aria-pressed={key === value} onClick={() => choose(key)}>
          {options[key]}
        </button>
      ))}
    </fieldset>
  );
}
