/** A ratio of whole numbers: typed decimals and fractions are kept exact until they are put on the grid. */
export interface Ratio {
  readonly top: bigint;
  readonly bottom: bigint;
}

export function ratio(top: bigint | number, bottom: bigint | number = 1n): Ratio {
  return { top: BigInt(top), bottom: BigInt(bottom) };
}

/** A run of digits with at most one point (`12`, `12.25`, `.5`, `12.`), exactly. */
export function decimal(digits: string): Ratio {
  const [whole = '', part = ''] = digits.split('.');
  return { top: BigInt(whole + part || '0'), bottom: 10n ** BigInt(part.length) };
}

export function add(a: Ratio, b: Ratio): Ratio {
  return { top: a.top * b.bottom + b.top * a.bottom, bottom: a.bottom * b.bottom };
}

export function times(a: Ratio, b: Ratio): Ratio {
  return { top: a.top * b.top, bottom: a.bottom * b.bottom };
}

/** The nearest whole number to a ratio that isn't negative, halves up, and whether it is the ratio itself. */
export function nearestWhole({ top, bottom }: Ratio): {
  readonly whole: bigint;
  readonly exact: boolean;
} {
  return { whole: (2n * top + bottom) / (2n * bottom), exact: top % bottom === 0n };
}

/** The nearest plain number, to fifteen places after the point and more. */
export function toNumber({ top, bottom }: Ratio): number {
  const whole = top / bottom;
  return Number(whole) + Number(top - whole * bottom) / Number(bottom);
}
