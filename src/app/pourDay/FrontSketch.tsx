import { type PointerEvent, useRef } from 'react';
import { boxAround, boxOf } from '../../geometry/box.ts';
import { chainOf } from '../../geometry/chain.ts';
import { type Heading, headingOf, ringBehind } from '../../geometry/halfPlane.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import type { Feature, Job } from '../../job/job.ts';
import { jointMark } from '../../takeoff/joints/marks.ts';
import { type Bed, frontThrough } from '../../takeoff/pourDay/front.ts';
import type { JointLayout } from '../../takeoff/result.ts';
import { FOOT, type Grid, INCH } from '../../units/grid.ts';
import { useWords } from '../SessionContext.ts';

interface FrontSketchProps {
  readonly job: Job;
  readonly bed: Bed;
  readonly layout: JointLayout | undefined;
  readonly toward: number;
  readonly along: Grid;
  readonly onDrag: (along: Grid) => void;
  readonly onTap: (along: Grid) => void;
}

/** Ground to see round the pour, so that one knows which side is which. */
const ROUND: Grid = 2 * FOOT;
const CHORDS: Grid = INCH / 8;

/** What tells a person on the site where they stand. */
const SEEN: readonly Feature['kind'][] = ['existing-slab', 'building-line', 'steps'];

/** The pour, what of it is placed, and the front: large, plain, and nothing on it that isn't needed now. */
export function FrontSketch({ job, bed, layout, toward, along, onDrag, onTap }: FrontSketchProps) {
  const words = useWords().app.pourDay.front;
  const svg = useRef<SVGSVGElement>(null);
  const held = useRef(false);
  const box = boxAround(bed.polygons.map(({ outer }) => boxOf(outer)));
  // Inches, y down, from the upper left corner of what is shown.
  const [width, height] = [
    (box.maxX - box.minX + 2 * ROUND) / INCH,
    (box.maxY - box.minY + 2 * ROUND) / INCH,
  ];
  const spot = ({ x, y }: Point) => ({
    x: (x - box.minX + ROUND) / INCH,
    y: (box.maxY + ROUND - y) / INCH,
  });
  const heading = headingOf(toward);
  const front = frontLine(heading, along, (width + height) * INCH, {
    x: (box.minX + box.maxX) / 2,
    y: (box.minY + box.maxY) / 2,
  });
  const letter = Math.max(width, height) / 16;
  const joints = layout?.joints ?? [];
  const marks = marksAlong(joints.map(({ from, to }) => [spot(from), spot(to)] as const));

  /** The place under a finger: the picture keeps its proportions, so both ways are alike. */
  function placeOf(event: PointerEvent): Grid {
    const seen = svg.current?.getBoundingClientRect();
    if (!seen || seen.width === 0 || seen.height === 0) return along;
    const x = ((event.clientX - seen.left) / seen.width) * width;
    const y = ((event.clientY - seen.top) / seen.height) * height;
    const place = { x: box.minX - ROUND + x * INCH, y: box.maxY + ROUND - y * INCH };
    return frontThrough(place, toward);
  }

  return (
    <svg
      ref={svg}
      className="pour-sketch"
      viewBox={`0 0 ${width} ${height}`}
      style={{ aspectRatio: `${width} / ${height}` }}
      role="img"
      aria-label={words.sketch}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = true;
        onDrag(placeOf(event));
      }}
      onPointerMove={(event) => {
        if (held.current) onDrag(placeOf(event));
      }}
      onPointerUp={(event) => {
        if (!held.current) return;
        held.current = false;
        onTap(placeOf(event));
      }}
      onPointerCancel={() => {
        held.current = false;
      }}
    >
      {job.features
        .filter(({ kind }) => SEEN.includes(kind))
        .map((feature) => (
          <path
            key={feature.id}
            className={`pour-${feature.kind}`}
            d={featurePath(feature, spot)}
          />
        ))}
      <path className="pour-bed" d={polygonsPath(bed.polygons, spot)} fillRule="evenodd" />
      <path
        className="pour-placed"
        d={polygonsPath(
          bed.polygons.map(({ outer, holes }) => ({
            outer: ringBehind(outer, heading, along),
            holes: holes.map((hole) => ringBehind(hole, heading, along)),
          })),
          spot,
        )}
        fillRule="evenodd"
      />
      {joints.map(({ from, to }, i) => {
        const [a, b] = [spot(from), spot(to)];
        const place = marks[i]!;
        return (
          <g key={jointMark(joints, i)}>
            <line className="pour-joint" x1={a.x} y1={a.y} x2={b.x} y2={b.y} />
            <text
              className="pour-mark"
              x={place.x}
              y={place.y}
              fontSize={letter}
              textAnchor="middle"
              dominantBaseline="central"
            >
              {jointMark(joints, i)}
            </text>
          </g>
        );
      })}
      <path className="pour-front" d={`${linePath(front.line.map(spot))}`} />
      <path className="pour-way" d={linePath(front.arrow.map(spot))} />
    </svg>
  );
}

/** The front across the whole picture, and an arrow at its middle that shows which way it goes. */
function frontLine(heading: Heading, along: Grid, reach: number, middle: Point) {
  const off = along - (middle.x * heading.x + middle.y * heading.y);
  const at = { x: middle.x + off * heading.x, y: middle.y + off * heading.y };
  const move = (ahead: number, aside: number): Point => ({
    x: at.x + ahead * heading.x - aside * heading.y,
    y: at.y + ahead * heading.y + aside * heading.x,
  });
  const size = reach / 40;
  return {
    line: [move(0, -reach), move(0, reach)],
    arrow: [move(0, 0), move(2 * size, 0), move(size, size), move(2 * size, 0), move(size, -size)],
  };
}

/** Where each joint's mark stands on it: as far from the marks before it as it can. */
function marksAlong(lines: readonly (readonly [Point, Point])[]): readonly Point[] {
  const placed: Point[] = [];
  for (const [a, b] of lines) {
    const places = [0.5, 0.3, 0.7].map((t) => ({
      x: a.x + t * (b.x - a.x),
      y: a.y + t * (b.y - a.y),
    }));
    const room = (one: Point) =>
      Math.min(...placed.map(({ x, y }) => Math.hypot(one.x - x, one.y - y)));
    placed.push(places.reduce((best, one) => (room(one) > room(best) + 1 ? one : best)));
  }
  return placed;
}

function featurePath({ shape }: Feature, spot: (place: Point) => Point): string {
  if (shape.form === 'round') return '';
  const { points, closed } = chainOf(shape.corners, shape.closed, CHORDS);
  return linePath(points.map(spot)) + (closed ? 'Z' : '');
}

function polygonsPath(polygons: readonly Polygon[], spot: (place: Point) => Point): string {
  return polygons
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .filter((ring) => ring.length > 2)
    .map((ring) => `${linePath(ring.map(spot))}Z`)
    .join('');
}

function linePath(places: readonly Point[]): string {
  return places
    .map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`)
    .join('');
}
