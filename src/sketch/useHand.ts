import { useCallback, useEffect, useRef, useState } from 'react';
import type { Command } from '../job/commands.ts';
import type { Job } from '../job/job.ts';
import { type Hand, takeUp } from './tools/hand.ts';
import { NOTHING, type Showing } from './tools/machine.ts';
import type { Effect, Scene, Selection, ToolInput, ToolName } from './tools/tool.ts';
import type { View } from './view.ts';

export interface HandOrders {
  readonly onView: (view: View) => void;
  readonly onSelect: (selection: Selection | null) => void;
  readonly onTool: (tool: ToolName) => void;
  readonly onPreview: (command: Command | null) => void;
  readonly onCommit: (command: Command) => void;
  readonly onAskLength: () => void;
}

export interface HandAtWork {
  readonly showing: Showing;
  readonly send: (input: ToolInput) => void;
}

/**
 * Runs the tool in hand: gives it inputs, carries out what it wants, and lays it down when another is taken up.
 * `sceneNow` is asked at each input, so that a tool never sees an old view or selection.
 */
export function useHand(
  tool: ToolName,
  sceneNow: () => Scene | null,
  orders: HandOrders,
): HandAtWork {
  const hand = useRef<Hand>(takeUp(tool));
  const [showing, setShowing] = useState<Showing>(NOTHING);
  const latest = useRef({ sceneNow, orders });
  latest.current = { sceneNow, orders };

  const send = useCallback((input: ToolInput) => {
    const scene = latest.current.sceneNow();
    if (!scene) return;
    const before = hand.current;
    const next = before.step(input, scene);
    hand.current = next.hand;
    if (next.hand !== before) setShowing(next.hand.show());
    for (const effect of next.effects) carryOut(effect, latest.current.orders);
  }, []);

  useEffect(() => {
    if (hand.current.tool !== tool) {
      send({ kind: 'cancel' });
      hand.current = takeUp(tool);
    }
    setShowing(hand.current.show());
  }, [tool, send]);

  return { showing, send };
}

function carryOut(effect: Effect, orders: HandOrders): void {
  switch (effect.do) {
    case 'preview':
      orders.onPreview(effect.command);
      break;
    case 'commit':
      orders.onCommit(effect.command);
      break;
    case 'discard':
      orders.onPreview(null);
      break;
    case 'select':
      orders.onSelect(effect.selection);
      break;
    case 'look':
      orders.onView(effect.view);
      break;
    case 'ask-length':
      orders.onAskLength();
      break;
    case 'finish':
      orders.onTool('pick');
      break;
    default:
      effect satisfies never;
  }
}

/** The job as it stands without the preview under way: what tools measure from. */
export function useStandingJob(job: Job): {
  readonly standing: Job;
  readonly setPreviewing: (previewing: boolean) => void;
} {
  const previewing = useRef(false);
  const standing = useRef(job);
  if (!previewing.current) standing.current = job;
  const setPreviewing = useCallback((is: boolean) => {
    previewing.current = is;
  }, []);
  return { standing: standing.current, setPreviewing };
}
