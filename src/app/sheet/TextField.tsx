import { useId, useState } from 'react';

interface TextFieldProps {
  readonly label: string;
  readonly text: string;
  /** No more letters than this. */
  readonly most: number;
  readonly lines?: boolean;
  readonly onText: (text: string) => void;
}

/** Free text, taken over when the field is left: one step of undo, not one a letter. */
export function TextField({ label, text, most, lines = false, onText }: TextFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const shared = {
    id,
    maxLength: most,
    value: typed ?? text,
    onChange: (event: { readonly currentTarget: { readonly value: string } }) =>
      setTyped(event.currentTarget.value),
    onBlur: () => {
      if (typed !== null && typed !== text) onText(typed);
      setTyped(null);
    },
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {lines ? <textarea {...shared} /> : <input {...shared} />}
    </div>
  );
}
