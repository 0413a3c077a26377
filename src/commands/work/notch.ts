import {
  judgeNotch,
  markedLimit,
  NOTCH_LIMIT_SOURCE,
  type NotchJudgement,
  type NotchPlace,
  REMAINING_SOURCE,
  remainingShare,
} from '../../materials/notch-limits.js';
import { NOTCH_SHEAR_SOURCE, notchedShareOfShear } from '../../materials/notch-shear.js';
import type { Section } from '../../materials/section.js';
import { figure } from '../../measure/figure-text.js';
import { formatLengthExact } from '../../measure/format-length.js';
import { inches } from '../../measure/inch.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { problemsOf, SECTION_OPTION, STANDS_OPTION, sectionOf } from './hold-options.js';
import { usualLength } from './length-option.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

const PLACES = ['end', 'outer', 'middle', 'leg', 'post'] as const;

/** `notchbook work notch`: how deep a notch may be, and what it leaves. */
export const NOTCH_RULE: WorkRule = {
  name: 'notch',
  say: 'how deep a notch may be where it is, and how much strength it leaves',
  example: 'notchbook work notch --section 2x6 --place outer --depth 7/8in',
  options: [
    SECTION_OPTION,
    STANDS_OPTION,
    {
      name: 'place',
      kind: 'word',
      say: 'end (over a support), outer or middle third of the span, leg (pushed down), post (pushed sideways)',
      example: 'end',
      choices: PLACES,
    },
    {
      name: 'depth',
      kind: 'length',
      say: 'how deep it is cut',
      example: '7/8in',
      least: inches(1 / 64),
      most: inches(12),
    },
    usualLength('length', 'how long it is along the board', { example: '1-1/2in', usual: '' }),
    {
      name: 'edge',
      kind: 'word',
      say: 'bottom, which is stretched, or top, which is pressed',
      example: 'bottom',
      usual: 'bottom',
      choices: ['bottom', 'top'],
    },
    usualLength('beyond', 'at an end: how far it reaches past the inner face of the support', {
      example: '0',
      usual: '0 mm',
    }),
  ],
  work,
};

function work(given: Given): WorkResult {
  const section = sectionOf(given);
  if (!section.ok) return { ok: false, problems: problemsOf(section) };
  const sizes = sizesOf(section.value, given);
  const depth = given.number('depth');
  const say = (length: Mm) => formatLengthExact(length, given.display);
  if (depth >= sizes.depth) {
    const limit = `From ${say(inches(1 / 64))} to less than ${say(sizes.depth)}, for example --depth 7/8in.`;
    return {
      ok: false,
      problems: [`--depth: ${say(depth)} cuts right through ${say(sizes.depth)} of wood. ${limit}`],
    };
  }
  const place = PLACES.find(it => it === given.word('place'));
  if (place === undefined) throw new Error('a place was let through');
  const left = leftFigures(sizes.depth, depth, given.display);
  return place === 'leg' || place === 'post'
    ? { ok: true, figures: left, more: { verdict: POST_VERDICT[place] }, notes: POST_NOTES[place] }
    : spanResult(place, { sizes, left, given });
}

type Sizes = { readonly depth: Mm; readonly thickness: Mm };

/** Depth in the direction of the load, and the side across it. */
function sizesOf({ thickness, width }: Section, given: Given): Sizes {
  return given.word('on') === 'edge'
    ? { depth: width, thickness }
    : { depth: thickness, thickness: width };
}

function leftFigures(depth: Mm, cut: Mm, display: Display): readonly Answered[] {
  const left = remainingShare(depth, cut);
  const say = (length: Mm) => formatLengthExact(length, display);
  const sum = `${say(depth - cut)} of ${say(depth)} is left`;
  return [
    {
      name: 'left',
      say: 'wood left',
      figure: figure(depth - cut, 'mm', `${say(depth)} less ${say(cut)}`, REMAINING_SOURCE),
    },
    {
      name: 'bending_left',
      say: 'bending strength left',
      figure: figure(left.bending * 100, 'percent', `${sum}, squared`, REMAINING_SOURCE),
    },
    {
      name: 'stiffness_left',
      say: 'stiffness left there',
      figure: figure(left.stiffness * 100, 'percent', `${sum}, cubed`, REMAINING_SOURCE),
    },
  ];
}

const POST_VERDICT: Readonly<Record<'leg' | 'post', string>> = {
  leg: 'holds where it only carries down',
  post: 'look again',
};

const POST_NOTES: Readonly<Record<'leg' | 'post', readonly string[]>> = {
  leg: [
    'A leg that only carries straight down may be notched so, if what it carries stands on the shoulder and two bolts pass through the wood that is left.',
    'Not checked: a leg that is also pushed sideways is a post; ask with --place post.',
  ],
  post: [
    'A post that is pushed sideways bends most just where it is notched: only the share above is left.',
    'Deck guides do not let guard posts be notched at all. Ask the local code; nothing here checks a guard.',
  ],
};

type Asked = {
  readonly sizes: Sizes;
  readonly left: readonly Answered[];
  readonly given: Given;
};

function spanResult(place: NotchPlace, { sizes, left, given }: Asked): WorkResult {
  const { display } = given;
  const edge = given.word('edge') === 'top' ? 'top' : 'bottom';
  const depth = given.number('depth');
  const judged = judgeNotch(
    {
      memberDepth: sizes.depth,
      memberThickness: sizes.thickness,
      place,
      edge,
      depth,
      ...(given.has('length') ? { length: given.number('length') } : {}),
    },
    display,
  );
  const shear = place === 'end' ? shearFigure({ sizes, edge, given }) : [];
  return {
    ok: true,
    figures: [...limitFigures(judged, place, display), ...left, ...shear],
    more: { verdict: judged.verdict },
    notes: [...verdictNotes(judged, place, edge), NOT_CHECKED],
  };
}

const NOT_CHECKED =
  'Not checked: the load, knots at the notch, cracks that start in its corner. Round the corner or cut it on a slope. For joists of decks and houses ask the local code.';

function limitFigures(
  { deepest, longest, because }: NotchJudgement,
  place: NotchPlace,
  display: Display,
): readonly Answered[] {
  const rule: Answered = {
    name: 'deepest',
    say: 'deepest',
    figure: figure(markedLimit(deepest, display), 'mm', because, NOTCH_LIMIT_SOURCE),
  };
  if (place === 'end') return [rule];
  const length = markedLimit(longest, display);
  return [
    rule,
    {
      name: 'longest',
      say: 'longest',
      figure: figure(length, 'mm', 'a third of the depth, rounded down', NOTCH_LIMIT_SOURCE),
    },
  ];
}

function shearFigure({
  sizes,
  edge,
  given,
}: {
  readonly sizes: Sizes;
  readonly edge: 'top' | 'bottom';
  readonly given: Given;
}): readonly Answered[] {
  const beyond = given.number('beyond');
  const depth = given.number('depth');
  const share = notchedShareOfShear({ edge, depth, beyond }, sizes.depth);
  const because =
    edge === 'bottom'
      ? 'stretched edge: what is left of the depth, cubed'
      : `pressed edge, ${formatLengthExact(beyond, given.display)} past the support: a notch wholly over its support costs nothing`;
  return [
    {
      name: 'shear_left',
      say: 'shear strength left',
      figure: figure(share * 100, 'percent', because, NOTCH_SHEAR_SOURCE),
    },
  ];
}

function verdictNotes(
  { verdict }: NotchJudgement,
  place: NotchPlace,
  edge: 'top' | 'bottom',
): readonly string[] {
  const words = {
    'within the rule': 'Within the usual rule.',
    'over the rule': 'Over the usual rule: make it shallower or shorter.',
    'no notch there': 'The usual rule allows no notch there.',
  }[verdict];
  const pressed = place === 'end' && edge === 'top' && verdict === 'over the rule';
  return pressed
    ? [
        words,
        'The rule is made for joists notched from below; wholly over its support and on the pressed edge the wood loses no strength by the NDS. Keep all of it over the support.',
      ]
    : [words];
}
