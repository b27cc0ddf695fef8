/** A seeded stream of chance: the same seed gives the same numbers on every machine. */
export interface Chance {
  /** A float from 0 up to 1. */
  readonly share: () => number;
  /** A whole number from least to most, both included. */
  readonly whole: (least: number, most: number) => number;
  readonly between: (least: number, most: number) => number;
  /** True in this share of the draws. */
  readonly likely: (share: number) => boolean;
  readonly oneOf: <T>(choices: readonly T[]) => T;
}

export function chance(seed: number): Chance {
  // Mulberry32: 32 bits of state, good enough to spread test cases.
  let state = (seed * 2654435761) >>> 0;
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (least: number, most: number) => least + share() * (most - least);
  const whole = (least: number, most: number) => least + Math.floor(share() * (most - least + 1));
  return {
    share,
    whole,
    between,
    likely: (part) => share() < part,
    oneOf: (choices) => choices[whole(0, choices.length - 1)]!,
  };
}
