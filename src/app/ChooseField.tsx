import { useId } from 'react';

interface ChooseFieldProps {
  readonly label: string;
  /** By key; the keys of what is offered. */
  readonly options: readonly (readonly [string, string])[];
  readonly value: string;
  /** Said when the value is none of the options. */
  readonly gone?: string;
  readonly onChoose: (key: string) => void;
}

/** One of a list. What was chosen and is no longer there stays chosen, and says so. */
export function ChooseField({ label, options, value, gone, onChoose }: ChooseFieldProps) {
  const id = useId();
  const known = options.some(([key]) => key === value);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChoose(event.currentTarget.value)}>
        {known ? null : <option value={value}>{gone ?? ''}</option>}
        {options.map(([key, says]) => (
          <option key={key} value={key}>
            {says}
          </option>
        ))}
      </select>
    </div>
  );
}
