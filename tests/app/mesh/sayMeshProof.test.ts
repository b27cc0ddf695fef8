import { expect, test } from 'vitest';
import { sayMeshProof } from '../../../src/app/mesh/sayMeshProof.ts';
import { meshEn } from '../../../src/app/words/meshEn.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { searchMesh } from '../../../src/takeoff/steel/searchMesh.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { slab } from '../../takeoff/steel/steelJobs.ts';

const says = meshEn.standing;
const { mesh } = takeoff(slab(20, 12)).steel!;
const said = (proof: NonNullable<typeof mesh>['plan']['proof'], count = mesh!.least!.count) =>
  sayMeshProof(
    says,
    en,
    {
      plan: { ...mesh!.plan, proof },
      least: { ...mesh!.least!, count },
    },
    'feet-inches',
  );

test('what is known of a layout: nothing yet, proved least, or the best with what could be less', () => {
  const bought = mesh!.plan.used.filter(({ from }) => from === 'yard').length;
  expect(said({ is: 'first' })).toBe(says.first);
  expect(said({ is: 'least' })).toBe(says.least);
  const gap = said({ is: 'searched', seconds: 3.2 }, bought - 1);
  expect(gap).toContain(`3.2 s`);
  expect(gap).toContain(`${bought} sheets`);
  expect(gap).toContain(`${bought - 1} sheets`);
  expect(said({ is: 'searched', seconds: 3 }, bought)).toBe(says.otherKind(3));
});

test('a finished search always says how it stands', () => {
  const plan = searchMesh(mesh!.problem)!;
  expect(plan.proof.is).not.toBe('first');
  expect(sayMeshProof(says, en, { plan, least: mesh!.least }, 'feet-inches')).not.toBe(says.first);
});
