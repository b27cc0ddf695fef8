import type { ToolName } from '../../sketch/tools/tool.ts';

type Drawn = ToolName | 'draw' | 'fit' | 'undo' | 'redo';

/** Plan views of the things themselves; `fill` is the material. */
const ICONS: Readonly<Record<Drawn, { readonly d: string; readonly fill?: string }>> = {
  pick: { d: 'M6 3l12 9-6 1 4 7-3 1-3-7-4 4z' },
  pan: {
    d: 'M12 2v20M2 12h20M12 2l-3 3M12 2l3 3M12 22l-3-3M12 22l3-3M2 12l3-3M2 12l3 3M22 12l-3-3M22 12l-3 3',
  },
  draw: { d: 'M4 20l1-5L16 4l4 4L9 19zM13 7l4 4' },
  'draw-pad': { d: 'M3 5h12v6h6v9H3z', fill: 'fresh' },
  'draw-existing-slab': { d: 'M3 6h18v13H14l-2-3-3 3H3z', fill: 'old' },
  'draw-building-line': { d: 'M2 9h20v6H2zM6 9l-3 6M11 9l-3 6M16 9l-3 6M21 9l-3 6' },
  'draw-steps': { d: 'M4 4h16v16H4zM4 9.3h16M4 14.6h16', fill: 'old' },
  'draw-patch': { d: 'M2 4h20v16H2zM8 8l5-1 4 4-2 5-6 1-3-4z', fill: 'fresh' },
  'block-out-round': { d: 'M3 3h18v18H3zM12 7.5a4.500 4.500 0 1 0 .01 0z', fill: 'fresh' },
  'block-out-square': { d: 'M3 3h18v18H3zM8 8h8v8H8z', fill: 'fresh' },
  'draw-no-stake-zone': { d: 'M12 3a9 9 0 1 0 .01 0zM5.600 5.600l12.800 12.800', fill: 'soil' },
  // A marking flag over the line that it marks.
  'draw-utility-line': { d: 'M8 17V3l9 3.500L8 10M2 21h4M9.500 21h5M18 21h4' },
  // A slab parted by a groove.
  'draw-joint': { d: 'M3 5h18v14H3zM12 5v3M12 10.500v3M12 16v3', fill: 'fresh' },
  fit: { d: 'M3 8V3h5M16 3h5v5M21 16v5h-5M8 21H3v-5M8 8h8v8H8z' },
  undo: { d: 'M9 5L4 10l5 5M4 10h10a6 6 0 0 1 0 12h-2' },
  redo: { d: 'M15 5l5 5-5 5M20 10H10a6 6 0 0 0 0 12h2' },
};

export function ToolIcon({ tool }: { readonly tool: Drawn }) {
  const { d, fill } = ICONS[tool];
  return (
    <svg
      className="icon"
      data-fill={fill}
      viewBox="0 0 24 24"
      fillRule="evenodd"
      aria-hidden="true"
      focusable="false"
    >
      <path d={d} />
    </svg>
  );
}
