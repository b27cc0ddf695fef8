import type { PlacingResult } from '../takeoff/placing/placingResult.ts';
import { stripMark } from '../takeoff/placing/stripMark.ts';
import { addLine, JOINT } from './clearance.ts';
import { type Board, isRoomFor, type Lettered, toMm, write } from './dimension/board.ts';
import type { Mark } from './marks.ts';
import { polyline } from './paths.ts';

/** Head of the arrow of a pull, mm of output, and how much of the pull it is drawn along. */
const HEAD_MM = 2.6;
const FROM = 0.15;
const TO = 0.85;
/** Where along the pull the mark of a strip is tried, and how far beside it, mm. */
const SHARES = [0.5, 0.35, 0.65, 0.25, 0.75];
const BESIDE_MM = [2.2, -2.2, 5, -5];

/** Where one strip ends and the next begins, and which way each is pulled. */
export function drawStrips(board: Board, { strips }: PlacingResult): readonly Mark[] {
  return strips.flatMap(({ openEdge, pull }): readonly Mark[] => {
    const [from, to] = pull;
    const along = (share: number) => ({
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
    });
    const [tail, tip] = [along(FROM), along(TO)];
    const angle = Math.atan2(to.y - from.y, to.x - from.x);
    addLine(board.clearance, JOINT, toMm(board, tail), toMm(board, tip));
    return [
      ...openEdge.map((edge): Mark => {
        addLine(board.clearance, JOINT, toMm(board, edge[0]), toMm(board, edge[1]));
        return { kind: 'line', layer: 'pour', style: 'hidden', path: polyline(edge) };
      }),
      { kind: 'line', layer: 'pour', style: 'guide', path: polyline([tail, tip]) },
      { kind: 'symbol', layer: 'pour', symbol: 'arrow', at: tip, size: HEAD_MM, angle },
    ];
  });
}

/** The mark of every strip beside its arrow, where there is room. */
export function markStrips(board: Board, { strips }: PlacingResult): void {
  strips.forEach(({ pull: [from, to] }, i) => {
    const [a, b] = [toMm(board, from), toMm(board, to)];
    const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const [nx, ny] = [-(b.y - a.y) / long, (b.x - a.x) / long];
    const { label: height } = board.lettering;
    for (const beside of BESIDE_MM) {
      for (const share of SHARES) {
        const lettered: Lettered = {
          text: stripMark(i),
          at: {
            x: a.x + (b.x - a.x) * share + nx * beside,
            y: a.y + (b.y - a.y) * share + ny * beside - height / 2,
          },
          angle: 0,
          anchor: 'middle',
          height,
          style: 'figure',
          layer: 'pour',
        };
        if (!isRoomFor(board, lettered)) continue;
        write(board, lettered);
        return;
      }
    }
  });
}
