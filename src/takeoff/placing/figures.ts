import type { Practices } from '../../job/job.ts';
import type { PlacingPractices } from '../../job/placing.ts';
import { placingOf, weatherRulesOf } from '../../job/placingDefaults.ts';
import type { Figure, Quantity, WorkingInput } from '../figure.ts';
import type { InputKey } from '../keys.ts';
import {
  areaRate,
  bagYield,
  count,
  length,
  number,
  share,
  area as squares,
  time,
} from '../quantity.ts';
import type { PlacingResult } from './placingResult.ts';
import { stripMark } from './stripMark.ts';

/** How the pour goes by the clock, and the strips that it is struck off in. */
export function placingFigures(practices: Practices, placing: PlacingResult): readonly Figure[] {
  const rules = placingOf(practices);
  return [
    ...paceFigures(rules, placing),
    ...clockFigures(rules, weatherRulesOf(practices).setShift, placing),
    ...screedFigures(rules, placing),
  ];
}

type Rules = PlacingPractices;

function paceFigures(rules: Rules, { batch, timeline }: PlacingResult): readonly Figure[] {
  const { work, minutes, volume, area } = batch;
  const perHour = areaRate((60 * area) / minutes);
  return [
    {
      key: 'placing-batch',
      value: time(minutes),
      working: () => ({
        of: 'placing-batch',
        formula: 'b = max(c ÷ m, w ÷ n)',
        inputs: [
          setting('mixer-cycle', time(rules.cycle)),
          setting('mixers', count(rules.mixers, 'mixer')),
          setting('crew', count(rules.crew, 'hand')),
          setting('haul-distance', length(rules.barrow.distance)),
          setting('barrow-load', bagYield(rules.barrow.load)),
          workedOut('barrow-trips', count(work.trips, 'trip')),
          workedOut('batch-makes', bagYield(volume)),
          workedOut('batch-covers', squares(area)),
          workedOut('work-hauling', time(work.hauling)),
          workedOut('work-placing', time(work.placing)),
          workedOut('work-striking', time(work.striking)),
          workedOut('work-all', time(work.all)),
        ],
        rounding: 'none',
        source: ['barrow-book-1908', 'common-practice', 'user'],
      }),
    },
    {
      key: 'placing-rate',
      value: perHour,
      working: () => ({
        of: 'placing-rate',
        formula: 'R = A ÷ b',
        inputs: [
          workedOut('batch-covers', squares(area)),
          { key: 'placing-batch', value: time(minutes), from: 'figure' },
        ],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'placing-time',
      value: time(timeline.placed),
      working: () => ({
        of: 'placing-time',
        formula: 'T = Σ b',
        inputs: [
          { key: 'batches', value: count(timeline.batches.length, 'batch'), from: 'figure' },
          { key: 'placing-batch', value: time(minutes), from: 'figure' },
          setting('crew', count(rules.crew, 'hand')),
        ],
        rounding: 'none',
        source: ['common-practice', 'user'],
        steps: timeline.strips.map(({ from, to }, i) => ({
          label: stripMark(i),
          value: time(to),
          template: '{0} →',
          values: [time(from)],
        })),
      }),
    },
  ];
}

function clockFigures(
  rules: Rules,
  setShift: number,
  { clock, set, setFactor, oldest, window, strips, timeline, batch }: PlacingResult,
): readonly Figure[] {
  const factor: WorkingInput = { key: 'set-factor', value: number(setFactor), from: 'figure' };
  const strip = strips[oldest.strip];
  return [
    {
      key: 'first-set',
      value: time(clock.initial),
      working: () => ({
        of: 'first-set',
        formula: 't₁ = t₀ × f',
        inputs: [
          setting('blend-initial', time(set.initial)),
          factor,
          setting('set-shift', share(setShift)),
        ],
        rounding: 'none',
        source: ['common-practice', 'user'],
      }),
    },
    {
      key: 'open-edge',
      value: time(oldest.age),
      working: () => ({
        of: 'open-edge',
        formula: 'a ≈ w × l ÷ R',
        inputs: [
          ...(strip
            ? [
                workedOut('strip-width', length(strip.width)),
                workedOut('strip-length-pulled', length(strip.length)),
              ]
            : []),
          {
            key: 'placing-rate',
            value: areaRate((60 * batch.area) / batch.minutes),
            from: 'figure',
          },
        ],
        rounding: 'none',
        source: ['geometry', 'common-practice'],
      }),
    },
    {
      key: 'edge-window',
      value: time(window),
      working: () => ({
        of: 'edge-window',
        formula: 'min(t₂ × min(1, f), t₀ × f)',
        inputs: [
          setting('window-usual', time(rules.edgeWindow)),
          setting('blend-initial', time(set.initial)),
          factor,
        ],
        rounding: 'none',
        source: ['common-practice', 'user'],
      }),
    },
    {
      key: 'finish-time',
      value: time(timeline.done),
      working: () => ({
        of: 'finish-time',
        formula: 'max tᵢ',
        inputs: [factor],
        rounding: 'none',
        source: ['common-practice', 'user'],
        steps: timeline.strips.map(({ done, passes }, i) => ({
          label: stripMark(i),
          value: time(done),
          template: '{0} →',
          values: [time(passes[0]?.from ?? done)],
        })),
      }),
    },
    {
      key: 'forms-off',
      value: time(timeline.formsOff),
      working: () => ({
        of: 'forms-off',
        formula: 't + h × max(1, f)',
        inputs: [
          { key: 'finish-time', value: time(timeline.done), from: 'figure' },
          setting('strip-hours', time(60 * rules.stripHours)),
          factor,
        ],
        rounding: 'none',
        source: ['common-practice', 'user'],
      }),
    },
  ];
}

function screedFigures(rules: Rules, { span, strips }: PlacingResult): readonly Figure[] {
  return [
    {
      key: 'screed-span',
      value: length(span),
      working: () => ({
        of: 'screed-span',
        formula: rules.pulledBy === 'one' ? 's = min(b − e, s₁)' : 's = b − e',
        inputs: [
          setting('screed-board', length(rules.board)),
          setting('screed-bearing', length(rules.boardBearing)),
          ...(rules.pulledBy === 'one' ? [setting('solo-most', length(rules.soloMost))] : []),
        ],
        rounding: 'none',
        source: ['common-practice', 'user'],
      }),
    },
    {
      key: 'screed-strips',
      value: count(strips.length, 'strip'),
      working: () => ({
        of: 'screed-strips',
        formula: 'n = ⌈W ÷ s⌉',
        inputs: [{ key: 'screed-span', value: length(span), from: 'figure' }],
        rounding: 'up',
        source: ['geometry'],
        steps: strips.map(({ width, length: long, area }, i) => ({
          label: stripMark(i),
          value: squares(area),
          template: '{0} × {1}',
          values: [length(width), length(long)],
        })),
      }),
    },
  ];
}

function setting(key: InputKey, value: Quantity): WorkingInput {
  return { key, value, from: 'practice' };
}

function workedOut(key: InputKey, value: Quantity): WorkingInput {
  return { key, value, from: 'worked-out' };
}
