import { useEffect, useState } from 'react';

/** How long the hand rests before what was put off is done. */
const REST_MS = 150;

/** True once a value has stayed the same for a while. */
export function useRests(value: unknown): boolean {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setRested(value), REST_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return rested === value;
}
