import { quoted } from '../../measure/parsed.js';
import type { CheckProblem, Target } from '../problem.js';
import { didYouMean, sentences, type WordsFor } from './wording.js';

const TARGETS: Readonly<Record<Target, string>> = {
  question: 'question',
  board: 'kind of board',
  part: 'part',
  layout: 'layout',
  assembly: 'assembly',
  take: 'size',
  notch: 'notch',
  joint: 'joint',
  step: 'step',
  size: 'named size',
  tool: 'tool',
  caution: 'caution',
  section: 'section of wood',
  option: 'option',
};

/** Where nothing of that name is found. */
const NOT_THERE: Readonly<Partial<Record<Target, string>>> = {
  option: 'That question has no option',
  take: 'That assembly takes no size',
};

/** How it is said when a recipe does not hold together. */
export const CHECK_WORDS: WordsFor<CheckProblem> = {
  'unknown-target': ({ target, name, near }) => ({
    problem: `${NOT_THERE[target] ?? `There is no ${TARGETS[target]}`} ${quoted(name)}.`,
    hint: sentences(didYouMean(near), howToAdd(target)),
  }),
  'not-measurable': ({ size, got }) => ({
    problem: `${quoted(size)} is ${got}: only a length can be measured with a tape.`,
    hint: 'Name a size that is a length.',
  }),
  'missing-take': ({ take, assembly }) => ({
    problem: `The assembly ${assembly} takes ${take}, and it is not given here.`,
    hint: `Add a line ${take}: = ...`,
  }),
  'wrong-list': ({ name }) => ({
    problem: `The question ${quoted(name)} is not a list of things.`,
    hint: 'Name a question of kind items.',
  }),
  'inside-itself': ({ assembly }) => ({
    problem: `The assembly ${assembly} stands inside itself.`,
    hint: 'Use another one here.',
  }),
  'duplicate-id': ({ id, firstLine }) => ({
    problem: `The name ${quoted(id)} is taken: see line ${firstLine}.`,
    hint: 'Choose another name.',
  }),
  'later-question': ({ name }) => ({
    problem: `${quoted(name)} is asked later, so it is not known here yet.`,
    hint: 'Put that question first.',
  }),
  unused: ({ target, name }) => ({
    problem: `The ${TARGETS[target]} ${quoted(name)} is never used.`,
    hint: 'Remove it, or use it.',
  }),
  'two-axes': () => ({
    problem: 'The wide face looks along the same axis as the length runs.',
    hint: 'Choose one of the two other axes for face.',
  }),
  'stack-on-end': () => ({
    problem: 'The layers of a stack lie flat, so they cannot run upward.',
    hint: 'Write runs: x or runs: y.',
  }),
  'never-cut': ({ path }) => ({
    problem: `No step cuts ${quoted(path)}.`,
    hint: 'Add it to cuts of a step.',
  }),
  'never-notched': ({ path }) => ({
    problem: `No step cuts the notch ${quoted(path)}.`,
    hint: 'Add it to notches of a step.',
  }),
  'never-closed': ({ path }) => ({
    problem: `No step closes the joint ${quoted(path)}.`,
    hint: 'Add it to joins of a step.',
  }),
  'used-before-cut': ({ path, step }) => ({
    problem: `This step needs ${quoted(path)}, which is only cut in the step ${step}.`,
    hint: 'Cut it first.',
  }),
  'used-before-notched': ({ path, step }) => ({
    problem: `This step needs the notch ${quoted(path)}, which is only cut in the step ${step}.`,
    hint: 'Notch it first.',
  }),
  'waits-for-later': ({ step, other }) => ({
    problem: `${quoted(other)} is to wait for the step ${quoted(step)}, which does not come before it.`,
    hint: 'Move this step up, or take the other one out of before.',
  }),
  'range-upside-down': ({ from, to }) => ({
    problem: `The range goes from ${from} to ${to}.`,
    hint: 'Put the smaller one first.',
  }),
  'usual-outside': ({ usual, from, to }) => ({
    problem: `The usual answer ${usual} is not between ${from} and ${to}.`,
    hint: 'Move the range or the usual answer.',
  }),
  'usual-unreadable': ({ problem, hint }) => ({
    problem: `The usual answer cannot be read. ${problem}`,
    hint,
  }),
};

function howToAdd(target: Target): string {
  if (target === 'part') return 'Write use.part for a part inside an assembly.';
  if (target === 'size') return 'Write use.size for a size inside an assembly.';
  return target === 'section' ? 'Write it as it is sold, such as 2x4 or 45x95.' : '';
}
