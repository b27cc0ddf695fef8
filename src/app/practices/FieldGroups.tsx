import type { Practices, UnitStyle } from '../../job/job.ts';
import { useWords } from '../SessionContext.ts';
import { FieldRow } from './FieldRow.tsx';
import type { FieldGroup } from './field.ts';

interface FieldGroupsProps {
  readonly groups: readonly FieldGroup[];
  readonly practices: Practices;
  readonly units: UnitStyle;
  readonly onPractices: (practices: Practices) => void;
}

/** Many fields, folded away by what they are about; the first group lies open. */
export function FieldGroups({ groups, ...rows }: FieldGroupsProps) {
  const words = useWords().app.practices.groups;
  return groups.map(({ key, fields }, index) => (
    <details key={key} className="practice-group" open={index === 0}>
      <summary>
        <h3>{words[key]}</h3>
      </summary>
      {fields
        .filter(({ shown }) => shown?.(rows.practices) ?? true)
        .map((field) => (
          <FieldRow key={field.key} field={field} {...rows} />
        ))}
    </details>
  ));
}
