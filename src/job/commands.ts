import { type AddFeature, addFeature } from './commands/addFeature.ts';
import { type DrawJoints, drawJoints } from './commands/drawJoints.ts';
import { type FreeStake, type FreeStakes, freeStake, freeStakes } from './commands/freeStake.ts';
import { type InsertCorner, insertCorner } from './commands/insertCorner.ts';
import { type MirrorFeature, mirrorFeature } from './commands/mirrorFeature.ts';
import { type MoveCorner, moveCorner } from './commands/moveCorner.ts';
import { type MoveFeature, moveFeature } from './commands/moveFeature.ts';
import { type OrderFeature, orderFeature } from './commands/orderFeature.ts';
import { type PinStake, pinStake } from './commands/pinStake.ts';
import { type RemoveCorner, removeCorner } from './commands/removeCorner.ts';
import { type RemoveFeature, removeFeature } from './commands/removeFeature.ts';
import { type RemoveStake, removeStake } from './commands/removeStake.ts';
import { type SetBid, setBid } from './commands/setBid.ts';
import { type SetCloseOut, setCloseOut } from './commands/setCloseOut.ts';
import { type SetEdgeDirection, setEdgeDirection } from './commands/setEdgeDirection.ts';
import { type SetEdgeLength, setEdgeLength } from './commands/setEdgeLength.ts';
import { type SetFeature, setFeature } from './commands/setFeature.ts';
import { type SetGround, setGround } from './commands/setGround.ts';
import { type SetLumber, setLumber } from './commands/setLumber.ts';
import { type SetMeshStock, setMeshStock } from './commands/setMeshStock.ts';
import { type SetPourLog, setPourLog } from './commands/setPourLog.ts';
import { type SetPractices, setPractices } from './commands/setPractices.ts';
import { type SetPrices, setPrices } from './commands/setPrices.ts';
import { type SetRise, setRise } from './commands/setRise.ts';
import { type SetRound, setRound } from './commands/setRound.ts';
import { type SetText, type SetUnits, setText, setUnits } from './commands/setText.ts';
import { type SetTitle, setTitle } from './commands/setTitle.ts';
import { type SetWeather, setWeather } from './commands/setWeather.ts';
import { type TurnFeature, turnFeature } from './commands/turnFeature.ts';
import type { Job } from './job.ts';
import type { JobProblemCode } from './problems.ts';
import { type Outcome, type Refusal as RefusalOf, refuse } from './refusal.ts';
import { attachmentRefusal, settle } from './settle.ts';
import { unsoundness } from './soundness.ts';

/** Everything that can be done to a job. Plain data: each can be previewed, listed and tested. */
export type Command =
  | AddFeature
  | RemoveFeature
  | SetFeature
  | OrderFeature
  | MoveCorner
  | MoveFeature
  | InsertCorner
  | RemoveCorner
  | SetRise
  | SetRound
  | TurnFeature
  | MirrorFeature
  | SetEdgeLength
  | SetEdgeDirection
  | SetPractices
  | DrawJoints
  | SetMeshStock
  | SetGround
  | SetWeather
  | SetLumber
  | SetPrices
  | SetBid
  | PinStake
  | RemoveStake
  | FreeStake
  | FreeStakes
  | SetPourLog
  | SetCloseOut
  | SetUnits
  | SetText
  | SetTitle;

export type Refusal = RefusalOf;

/**
 * The job after a command: corners that stay on edges are back on them, and every place is on the grid. The same job
 * (the same object) when nothing changes. What can't be done is refused with a code and a place, and nothing is done.
 */
export function apply(job: Job, command: Command): Outcome {
  const done = carryOut(job, command);
  if (!done.ok || done.value === job || done.value.features === job.features) return done;
  const unheld = attachmentRefusal(done.value);
  if (unheld) return { ok: false, problems: unheld };
  // Before settling, only what would spoil the arithmetic: two corners on one place may yet be parted by it.
  const spoilt = firstUnsound(done.value, (code) => code === 'not-on-grid' || code === 'too-far');
  if (spoilt) return spoilt;
  const settled = settle(done.value);
  return firstUnsound(settled) ?? { ok: true, value: settled };
}

function firstUnsound(job: Job, matters: (code: JobProblemCode) => boolean = () => true) {
  const found = unsoundness(job).find(({ code }) => matters(code));
  if (!found) return null;
  const { code, feature, facts, at } = found;
  return refuse(code, feature, { ...(facts ? { facts } : {}), ...(at ? { at } : {}) });
}

function carryOut(job: Job, command: Command): Outcome {
  switch (command.do) {
    case 'add-feature':
      return addFeature(job, command);
    case 'remove-feature':
      return removeFeature(job, command);
    case 'set-feature':
      return setFeature(job, command);
    case 'order-feature':
      return orderFeature(job, command);
    case 'move-corner':
      return moveCorner(job, command);
    case 'move-feature':
      return moveFeature(job, command);
    case 'insert-corner':
      return insertCorner(job, command);
    case 'remove-corner':
      return removeCorner(job, command);
    case 'set-rise':
      return setRise(job, command);
    case 'set-round':
      return setRound(job, command);
    case 'turn-feature':
      return turnFeature(job, command);
    case 'mirror-feature':
      return mirrorFeature(job, command);
    case 'set-edge-length':
      return setEdgeLength(job, command);
    case 'set-edge-direction':
      return setEdgeDirection(job, command);
    case 'draw-joints':
      return drawJoints(job, command);
    case 'set-practices':
      return setPractices(job, command);
    case 'set-prices':
      return setPrices(job, command);
    case 'set-bid':
      return setBid(job, command);
    case 'set-lumber':
      return setLumber(job, command);
    case 'pin-stake':
      return pinStake(job, command);
    case 'remove-stake':
      return removeStake(job, command);
    case 'free-stake':
      return freeStake(job, command);
    case 'free-stakes':
      return freeStakes(job);
    case 'set-ground':
      return setGround(job, command);
    case 'set-mesh-stock':
      return setMeshStock(job, command);
    case 'set-pour-log':
      return setPourLog(job, command);
    case 'set-close-out':
      return setCloseOut(job, command);
    case 'set-weather':
      return setWeather(job, command);
    case 'set-units':
      return setUnits(job, command);
    case 'set-text':
      return setText(job, command);
    case 'set-title':
      return setTitle(job, command);
  }
}
