import * as v from 'valibot';

const ID = /^[A-Za-z0-9_-]{1,40}$/;

export const id = v.pipe(v.string(), v.regex(ID));

export function whole(least: number, most: number) {
  return v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
}

export function positive(most: number) {
  return v.pipe(v.number(), v.gtValue(0), v.maxValue(most));
}

export function text(most: number) {
  return v.pipe(v.string(), v.maxLength(most));
}
