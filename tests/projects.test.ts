import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../src/measure/displays.js';
import { checkPiece } from '../src/plan/check-piece.js';
import { makePlan } from '../src/plan/make-plan.js';
import type { Plan } from '../src/plan/plan.js';
import { problemLine } from '../src/recipe/problem-words.js';
import { rangeCorners } from '../src/recipe/range-corners.js';
import { PROJECT_NAMES, planOf, project } from './support/projects.js';

describe.each(PROJECT_NAMES)('%s', name => {
  const recipe = project(name);

  test('has no problem at its usual answers, at the ends of its ranges, or at pairs of ends', () => {
    expect(checkPiece(recipe).map(problem => problemLine(problem, name))).toEqual([]);
  });

  test('gives a whole plan at every end of its ranges', () => {
    const corners = rangeCorners(recipe).filter((_, at) => at % 7 === 0);
    for (const answers of corners) {
      const made = makePlan(recipe, answers, SIXTEENTHS);
      expect(made.ok, JSON.stringify(answers)).toBe(true);
      if (!made.ok) continue;
      expect(unmet(made.plan), JSON.stringify(answers)).toEqual([]);
    }
  });

  test('every figure of its plan says why, and where it is from', () => {
    const { model: _boards, ...plan } = planOf(recipe);
    const dumb = figuresIn(plan, 'plan').filter(
      ({ figure }) => figure.because.trim() === '' || figure.source.publication.trim() === '',
    );
    expect(dumb.map(({ at }) => at)).toEqual([]);
  });

  test('the same answers give the same plan, byte for byte', () => {
    expect(JSON.stringify(planOf(recipe))).toBe(JSON.stringify(planOf(recipe)));
  });

  test('every piece of the model is on the cut list once, and comes from some board', () => {
    const plan = planOf(recipe);
    const listed = plan.cutList.flatMap(row => row.pieces);
    expect([...listed].sort()).toEqual(plan.model.parts.map(part => part.id).sort());
    const cut = plan.purchases.flatMap(it => it.boards.flatMap(board => board.cuts));
    expect(cut.length).toBe(listed.length);
  });

  test('its steps cut every piece, each once', () => {
    const plan = planOf(recipe);
    const cut = plan.steps
      .filter(step => step.phase === 'cut' && step.tally)
      .flatMap(step => step.bright);
    expect([...cut].sort()).toEqual(plan.model.parts.map(part => part.id).sort());
  });
});

/** What a plan must never have: pieces without a board, joints without a fastener. */
function unmet(plan: Plan): readonly string[] {
  const missing = plan.purchases.flatMap(purchase => purchase.missing);
  const joints = new Set(
    plan.model.joints.filter(it => it.with !== 'glue' && it.each > 0).map(it => it.name),
  );
  const held = new Set(plan.screws.map(row => row.joint));
  return [...missing, ...[...joints].filter(joint => !held.has(joint))];
}

type Found = {
  readonly at: string;
  readonly figure: { because: string; source: { publication: string } };
};

function figuresIn(value: unknown, at: string): readonly Found[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = isFigure(value) ? [{ at, figure: value }] : [];
  return [
    ...own,
    ...Object.entries(value).flatMap(([key, inner]) => figuresIn(inner, `${at}.${key}`)),
  ];
}

function isFigure(value: object): value is Found['figure'] & { value: number } {
  return 'value' in value && 'unit' in value && 'because' in value && 'source' in value;
}
