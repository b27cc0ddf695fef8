import { describe, expect, test } from 'vitest';
import {
  type FingerEvent,
  type FingerStep,
  type Fingers,
  NO_FINGERS,
  stepFingers,
} from '../../src/sketch/fingers.ts';

const VIEW = { center: { x: 0, y: 0 }, gridPerPx: 1000 };
const SIZE = { width: 400, height: 400 };

function play(...events: readonly FingerEvent[]): readonly FingerStep[] {
  let fingers: Fingers = NO_FINGERS;
  return events.map((event) => {
    const step = stepFingers(fingers, event, VIEW, SIZE);
    fingers = step.fingers;
    return step;
  });
}
function finger(kind: FingerEvent['kind'], id: number, x: number, y: number): FingerEvent {
  return { kind, id, spot: { x, y }, touch: true };
}

describe('one finger', () => {
  test('is a press, moves and a release, with places of the site', () => {
    const steps = play(
      finger('down', 1, 200, 200),
      finger('move', 1, 210, 190),
      finger('up', 1, 210, 190),
    );
    expect(steps.map(({ input }) => input?.kind)).toEqual(['press', 'move', 'release']);
    expect(steps[1]?.input).toMatchObject({ at: { x: 10_000, y: 10_000 }, touch: true });
  });

  test('that is lost is void', () => {
    const steps = play(finger('down', 1, 0, 0), finger('lost', 1, 0, 0));
    expect(steps[1]?.input).toEqual({ kind: 'interrupt' });
    expect(steps[1]?.fingers).toEqual(NO_FINGERS);
  });
});

describe('two fingers', () => {
  const pinched = play(
    finger('down', 1, 100, 200),
    finger('down', 2, 200, 200),
    finger('move', 2, 300, 200),
    finger('up', 1, 100, 200),
    finger('move', 2, 0, 0),
    finger('up', 2, 0, 0),
    finger('down', 3, 50, 50),
  );

  test('void what the first had begun', () => {
    expect(pinched[1]?.input).toEqual({ kind: 'interrupt' });
  });

  test('twice as far apart look twice as close', () => {
    expect(pinched[2]?.view?.gridPerPx).toBeCloseTo(500, 6);
    expect(pinched[2]?.input).toBeNull();
  });

  test('nothing is touched until both are up', () => {
    expect(pinched[4]).toMatchObject({ input: null, view: null });
    expect(pinched[6]?.input?.kind).toBe('press');
  });
});

test('a mouse that hovers moves the aim; a hovering pen or finger counts only when down', () => {
  const hover = { kind: 'move', id: 1, spot: { x: 1, y: 1 }, touch: false } as const;
  expect(play(hover)[0]?.input?.kind).toBe('move');
  expect(play({ ...hover, touch: true })[0]?.input).toBeNull();
});
