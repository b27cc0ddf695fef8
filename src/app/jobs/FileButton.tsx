interface FileButtonProps {
  readonly label: string;
  /** Endings and kinds that are offered. */
  readonly accept: string;
  readonly onFile: (file: File) => void | Promise<void>;
}

/** Asks the device for a file; the same one may be asked for again. */
export function FileButton({ label, accept, onFile }: FileButtonProps) {
  return (
    <label className="plain file-button">
      {label}
      <input
        type="file"
        accept={accept}
        className="visually-hidden"
        onChange={async (event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          input.value = '';
          if (file) await onFile(file);
        }}
      />
    </label>
  );
}
