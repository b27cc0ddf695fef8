import { useState } from 'react';

interface NoteFieldProps {
  readonly label: string;
  readonly text: string;
  readonly most: number;
  readonly onText: (text: string) => void;
}

/** A longer text, kept when the field is left. */
export function NoteField({ label, text, most, onText }: NoteFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <label className="field">
      {label}
      <textarea
        value={typed ?? text}
        maxLength={most}
        onChange={(event) => setTyped(event.currentTarget.value)}
        onBlur={() => {
          if (typed !== null && typed !== text) onText(typed);
          setTyped(null);
        }}
      />
    </label>
  );
}
