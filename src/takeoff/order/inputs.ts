import type { WorkingInput } from '../figure.ts';
import type { OrderInputKey } from './keys.ts';

/** A setting of the order's, as an input of a working. */
export function practice(key: OrderInputKey, value: WorkingInput['value']): WorkingInput {
  return { key, value, from: 'practice' };
}
