import './FileButton.css';

type Props = {
  readonly label: string;
  /** Endings of names, or types, with commas between. */
  readonly accept: string;
  readonly multiple?: boolean;
  readonly disabled?: boolean;
  readonly choose: (files: readonly File[]) => void;
};

/** A button that asks for files. The same file may be chosen again after it was mended. */
export function FileButton({ label, accept, multiple = false, disabled = false, choose }: Props) {
  return (
    <label className={`button file-button ${disabled ? 'barred-button' : ''}`}>
      {label}
      <input
        type="file"
        accept={accept}
        multiple={multiple}
        disabled={disabled}
        onChange={(e) => {
          const files = [...(e.currentTarget.files ?? [])];
          e.currentTarget.value = '';
          if (files.length > 0) choose(files);
        }}
      />
    </label>
  );
}
