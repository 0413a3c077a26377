import type { Caution } from './cautions.js';
import { practice, seen } from './sources.js';

/** Cautions for who helps, where the piece stands and who uses it. */
export const PLACE_CAUTIONS = {
  children: {
    title: 'Young helpers',
    lines: [
      'Powered saws and nailers are for a grown person; marking, sanding by hand, glue and hand driving can be shared.',
      'Glasses, hair and sleeves, work clamped, one tool at a time, somebody watching.',
      'Under 18 nobody may be employed at powered woodworking tools in the United States; other places have their own rules.',
    ],
    source: seen('cfr-570-55', 'under 18, power-driven woodworking machines'),
  },
  'deck-load': {
    title: 'Weight on a deck, balcony or roof',
    lines: [
      'Decks are usually built for 40 lb on a square foot, people included; older ones may carry less.',
      'Wet planters belong near a bearing wall or over a beam and posts, not at an outer edge, each across two joists or more.',
      'On a roof nothing may pierce or press into its skin: ask which pads the roofer allows under feet.',
      'This is a sum, not an inspection: for an old, high or unknown deck ask a licensed engineer or the building department.',
    ],
    source: seen('deck-loads', '40 lb/ft2 live load'),
  },
  'trapped-fingers': {
    title: 'Gaps that trap',
    lines: [
      'Between slats keep 1/4 in or less, or 1/2 in or more: in between, a finger can be held. Small children want 1 in or more.',
      'No opening closed all round between 3-1/2 and 9 in where small children play: a head can be caught.',
      'The rule for playgrounds and the like is local; ask when the piece stands in public.',
    ],
    source: seen('cpsc', 'B.2.5, openings of more than 3.5 in and less than 9 in'),
  },
  'bench-tip': {
    title: 'Tipping',
    lines: [
      'Try it before anybody trusts it: a grown person sits slowly on each end, then on the front edge.',
      'Stand it on level, firm ground. Fix it down where children climb or wind reaches.',
      'A piece that rocks or leans is not used until it has been put right.',
      'A piece for the public has local rules to meet.',
    ],
    source: practice('trying a bench'),
  },
} as const satisfies Record<string, Caution>;
