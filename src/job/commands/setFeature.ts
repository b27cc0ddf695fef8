import { fieldProblems } from '../fields.ts';
import { findFeature, withFeature } from '../find.ts';
import type { Feature, Job, JointUse, Service } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';
import { featureSchema } from '../schema.ts';
import { withAttachmentsTo } from '../settle.ts';

/** What is left out stays as it is. */
export interface SetFeature {
  readonly do: 'set-feature';
  readonly feature: string;
  readonly name?: string;
  /** Building lines alone. */
  readonly pourAgainst?: boolean;
  /** Building lines alone: a footprint, or the line of one wall face. */
  readonly closed?: boolean;
  /** Steps alone. */
  readonly treads?: number;
  /** Utility lines alone. */
  readonly service?: Service;
  /** Joints alone. */
  readonly joint?: JointUse;
}

export function setFeature(job: Job, command: SetFeature): Outcome {
  const found = findFeature(job, command.feature);
  if (!found.ok) return found;
  const feature = found.value;
  const foreign = foreignSetting(feature, command);
  if (foreign) {
    const facts = { setting: foreign, kind: feature.kind };
    return refuse('not-for-this-kind', feature.id, { facts });
  }
  const changed = changedFeature(feature, command);
  const [problem] = fieldProblems(featureSchema, changed, '');
  if (problem) return { ok: false, problems: { ...problem, where: feature.id } };
  const next = withFeature(job, changed);
  // The edge from the last corner back to the first is gone; what was on it stays where it is.
  if (command.closed === false && changed.shape.form === 'outline') {
    const last = changed.shape.corners.at(-1)?.id;
    return {
      ok: true,
      value: withAttachmentsTo(next, feature.id, (on) => (on.corner === last ? null : on)),
    };
  }
  return { ok: true, value: next };
}

function foreignSetting({ kind }: Feature, command: SetFeature): string | null {
  if (kind !== 'building-line' && command.pourAgainst !== undefined) return 'pourAgainst';
  if (kind !== 'building-line' && command.closed !== undefined) return 'closed';
  if (kind !== 'steps' && command.treads !== undefined) return 'treads';
  if (kind !== 'joint' && command.joint !== undefined) return 'joint';
  return kind !== 'utility-line' && command.service !== undefined ? 'service' : null;
}

function changedFeature(feature: Feature, command: SetFeature): Feature {
  const { name = feature.name } = command;
  switch (feature.kind) {
    case 'building-line': {
      const { pourAgainst = feature.pourAgainst, closed = feature.shape.closed } = command;
      return { ...feature, name, pourAgainst, shape: { ...feature.shape, closed } };
    }
    case 'steps':
      return { ...feature, name, treads: command.treads ?? feature.treads };
    case 'utility-line':
      return { ...feature, name, service: command.service ?? feature.service };
    case 'joint':
      return { ...feature, name, joint: command.joint ?? feature.joint };
    default:
      return { ...feature, name };
  }
}
