import { describe, expect, test } from 'vitest';
import { meaningOf } from '../../src/sketch/stageKeys.ts';

const VIEW = { center: { x: 0, y: 0 }, gridPerPx: 1000 };
const SIZE = { width: 400, height: 300 };

describe('keys on the stage', () => {
  test('plus and minus look closer and from farther off, about the middle', () => {
    const closer = meaningOf('+', false, VIEW, SIZE);
    expect(closer).toMatchObject({ do: 'look', view: { center: { x: 0, y: 0 }, gridPerPx: 800 } });
    expect(meaningOf('=', false, VIEW, SIZE)).toEqual(closer);
    expect(meaningOf('-', false, VIEW, SIZE)).toMatchObject({ view: { gridPerPx: 1250 } });
  });

  test('Escape cancels; tool keys go to the tool with Shift as far', () => {
    expect(meaningOf('Escape', false, VIEW, SIZE)).toEqual({
      do: 'send',
      input: { kind: 'cancel' },
    });
    expect(meaningOf('ArrowUp', true, VIEW, SIZE)).toEqual({
      do: 'send',
      input: { kind: 'key', key: 'ArrowUp', far: true },
    });
  });

  test('other keys are left to the page', () => {
    expect(['Tab', 'a', 'F5', ' '].map((key) => meaningOf(key, false, VIEW, SIZE))).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});
