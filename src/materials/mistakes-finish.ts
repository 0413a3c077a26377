import type { Mistake } from './mistake.js';
import { practice, seen } from './sources.js';

/** Slips with sealer, and boards that moved. */
export const FINISH_MISTAKES: readonly Mistake[] = [
  {
    id: 'sealer-sticky',
    title: 'Sealer stays sticky',
    verdicts: [
      { when: 'it was put on late, in the damp or in the cold', verdict: 'wait' },
      { when: 'it is still sticky after two warm dry days', verdict: 'fine after this' },
    ],
    look: [
      'A film that pulls at the finger has not soaked in. Color on the finger has not dried.',
      'Was it dew? The wood has to be 5 °F (3 °C) above the dew point until the coat has dried.',
    ],
    act: [
      'Give it two warm, dry days with moving air. Nobody sits on it.',
      'Then rub the sticky places with a rag damp with what the label names for cleaning up, and wipe dry.',
      'Coat again only where a drop of water still soaks in.',
      'Every such rag is spread flat outdoors until hard, or drowned in a lidded metal can: it can catch fire by itself.',
    ],
    next: [
      'Wipe off all that has not soaked in, and look again after 1, 4 and 24 h on open-pored wood.',
      'Start when the dew has gone, stop 4 h before sunset.',
    ],
    source: seen('coating-weather', '3 °C or 5 °F above the dew point; the rest is practice'),
  },
  {
    id: 'sealer-blotchy',
    title: 'Sealer came out blotchy',
    verdicts: [
      {
        when: 'it is only darker and lighter, and water beads on all of it',
        verdict: 'fine after this',
      },
      { when: 'it is still wet or sticky', verdict: 'wait' },
    ],
    look: [
      'Shiny spots: too much stood there. Dull spots: too little, or glue on the wood.',
      'Overlaps with hard edges: an edge dried before the next stroke met it.',
    ],
    act: [
      'Shiny: wipe with the cleaning liquid of the label, then dry.',
      'Glue spots take no finish: scrape and sand them, then touch in with the same can.',
      'Overlaps: a thin second coat over whole boards, if this kind may have one.',
      'Weather evens out most of what is left within a season.',
    ],
    next: [
      'Whole boards from end to end with a wet edge, out of the sun.',
      'Sand all boards with the same last grit, and wipe squeeze-out while it is wet.',
      'Stir often: the color sinks.',
    ],
    source: practice('lap marks, shiny spots and glue spots'),
  },
  {
    id: 'board-twisted',
    title: 'Board has twisted since it was bought',
    verdicts: [
      { when: 'it can be pressed straight by hand where it goes', verdict: 'fine after this' },
      { when: 'short straight pieces can be cut from it', verdict: 'fine after this' },
      { when: 'it is long, carries, and takes a clamp to come straight', verdict: 'ruined' },
    ],
    look: [
      'Sight along it, and lay two sticks across its ends: how far apart are they at the tips?',
      'Is it heavy and cool? Then it is still wet and moves more.',
    ],
    act: [
      'Sort the stack again before cutting: the straightest boards become the longest parts.',
      'Cut short parts from the twisted ones; half the length has half the twist.',
      'Sticker the rest off the floor every 16 to 24 in, weight on top, out of the sun.',
    ],
    next: [
      'Buy near the day of cutting, with a spare, and build within a day or two; or sticker for weeks.',
      'Pick dry, light boards with tight rings at the end.',
    ],
    source: practice('framing lumber leaves the store at 19 % or wetter and moves as it dries'),
  },
];
