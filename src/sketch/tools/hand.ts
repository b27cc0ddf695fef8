import { blockOutRound } from './blockOutRound.ts';
import { blockOutSquare } from './blockOutSquare.ts';
import { drawOutline } from './drawOutline.ts';
import type { Machine, Showing } from './machine.ts';
import { pan } from './pan.ts';
import { pick } from './pick.ts';
import type { Effect, Scene, ToolInput, ToolName } from './tool.ts';

/** A tool in the hand, with its state inside: what is done to it gives the next hand and what it wants done. */
export interface Hand {
  readonly tool: ToolName;
  readonly idle: boolean;
  readonly step: (
    input: ToolInput,
    scene: Scene,
  ) => { readonly hand: Hand; readonly effects: readonly Effect[] };
  readonly show: () => Showing;
}

/** Takes up a tool. */
export function takeUp(tool: ToolName): Hand {
  switch (tool) {
    case 'pick':
      return holding(tool, pick, pick.idle);
    case 'pan':
      return holding(tool, pan, pan.idle);
    case 'draw-pad':
      return drawing(tool, 'pad');
    case 'draw-existing-slab':
      return drawing(tool, 'existing-slab');
    case 'draw-building-line':
      return drawing(tool, 'building-line');
    case 'draw-steps':
      return drawing(tool, 'steps');
    case 'draw-patch':
      return drawing(tool, 'patch');
    case 'draw-no-stake-zone':
      return drawing(tool, 'no-stake-zone');
    case 'draw-utility-line':
      return drawing(tool, 'utility-line');
    case 'draw-joint':
      return drawing(tool, 'joint');
    case 'block-out-round':
      return holding(tool, blockOutRound, blockOutRound.idle);
    case 'block-out-square':
      return holding(tool, blockOutSquare, blockOutSquare.idle);
  }
}

function drawing(tool: ToolName, kind: Parameters<typeof drawOutline>[0]): Hand {
  const machine = drawOutline(kind);
  return holding(tool, machine, machine.idle);
}

function holding<S>(tool: ToolName, machine: Machine<S>, state: S): Hand {
  return {
    tool,
    idle: state === machine.idle,
    step(input, scene) {
      const next = machine.step(state, input, scene);
      const hand = next.state === state ? this : holding(tool, machine, next.state);
      return { hand, effects: next.effects };
    },
    show: () => machine.show(state),
  };
}
