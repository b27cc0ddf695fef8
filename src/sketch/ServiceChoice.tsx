import type { Service } from '../job/job.ts';
import { SERVICES } from '../job/services.ts';
import type { SketchWords } from './words/en.ts';

interface ServiceChoiceProps {
  readonly words: SketchWords;
  readonly label: string;
  readonly service: Service;
  readonly onService: (service: Service) => void;
}

/** What a buried line carries. */
export function ServiceChoice({ words, label, service, onService }: ServiceChoiceProps) {
  return (
    <label className="typed">
      <span>{label}</span>
      <select
        value={service}
        onChange={(event) =>
          onService(SERVICES.find((one) => one === event.target.value) ?? service)
        }
      >
        {SERVICES.map((one) => (
          <option key={one} value={one}>
            {words.drawing.services[one].name}
          </option>
        ))}
      </select>
    </label>
  );
}
