import type { Briefing } from './briefings.js';

/** Edges, glue and finish. */
export const CAREFUL_BRIEFINGS: readonly Briefing[] = [
  {
    tool: 'push-stick',
    caution: 'ripping',
    inShort: 'The stick goes near the blade, a hand does not; nobody pulls at the far end.',
    asked: [
      {
        ask: 'The strip is narrow. What pushes it past the blade?',
        listenFor: 'The push stick, all the way; no hand between blade and fence.',
      },
      {
        ask: 'You hold the far end. What do you do with it?',
        listenFor: 'Hold it up, from the side, and not pull.',
      },
    ],
  },
  {
    tool: 'chisel',
    caution: 'chisel',
    inShort: 'Both hands behind the edge, work clamped, thin slices.',
    asked: [
      {
        ask: 'Where are your two hands?',
        listenFor: 'Both behind the edge, and the work is held by a clamp.',
      },
      {
        ask: 'It needs force. What is wrong?',
        listenFor: 'It is dull, or the slice is too thick. A dull one slips.',
      },
    ],
  },
  {
    tool: 'glue-brush',
    caution: 'glue',
    inShort: 'Both faces, thin and even, off the skin and out of the eyes.',
    asked: [
      {
        ask: 'Which faces of the joint get glue?',
        listenFor: 'Both: glue on one only leaves dry patches.',
      },
      {
        ask: 'Some got into your eye. What now?',
        listenFor: 'Rinse with clean water for 15 minutes, call for help, then a doctor.',
      },
    ],
  },
  {
    tool: 'brush',
    caution: 'sealer',
    inShort: 'Fresh air, gloves, no flame; rags flat outdoors or under water, never in a heap.',
    asked: [
      {
        ask: 'What happens to the rag when you are done?',
        listenFor:
          'Flat and single outdoors, or under water in a metal can with a lid. Never crumpled up.',
      },
      {
        ask: 'Why not in the trash?',
        listenFor: 'It heats up by itself and can burn hours later.',
      },
      {
        ask: 'What must not be near while it is wet?',
        listenFor: 'Flames, pilot lights, cigarettes.',
      },
    ],
  },
  {
    tool: 'pump-sprayer',
    caution: 'spray',
    inShort: 'Mask with cartridges, outdoors, nobody downwind.',
    asked: [
      {
        ask: 'Who may stand downwind?',
        listenFor: 'Nobody, and no window is open there.',
      },
      {
        ask: 'Which mask?',
        listenFor: 'With cartridges for vapor and a prefilter; a dust mask does not stop vapor.',
      },
    ],
  },
];

/** Tools that hardly hurt, but spoil wood in hands that were told nothing. Common practice. */
export const QUIET_BRIEFINGS: readonly Briefing[] = [
  {
    tool: 'tape',
    inShort: 'Hook it once, read all marks from that end.',
    asked: [
      {
        ask: 'The hook is loose. Is the tape broken?',
        listenFor: 'No: it slides by its own thickness, so that hooking and pushing read the same.',
      },
    ],
  },
  {
    tool: 'pencil',
    inShort: 'Thin line, and a cross on the side that is cut away.',
    asked: [
      {
        ask: 'There is a cross beside the line. Where does the blade go?',
        listenFor: 'On the side of the cross; the line stays on the piece.',
      },
    ],
  },
  {
    tool: 'square',
    inShort: 'Thick side tight against the edge, then draw.',
    asked: [
      {
        ask: 'How do you see that a corner is square?',
        listenFor: 'Hold the square to it: no light shows along either side.',
      },
    ],
  },
  {
    tool: 'stop-block',
    inShort: 'Board against the stop, no dust between, and nobody moves the stop.',
    asked: [
      {
        ask: 'Why is the dust brushed off the stop after each cut?',
        listenFor: 'What lies between board and stop makes the next piece short.',
      },
    ],
  },
  {
    tool: 'spacers',
    inShort: 'The pencil mark decides; the spacer only holds.',
    asked: [
      {
        ask: 'Spacer and pencil mark do not agree. Which is right?',
        listenFor: 'The mark: small errors of a spacer add up.',
      },
    ],
  },
  {
    tool: 'hand-saw',
    inShort: 'Work clamped, start slowly, fingers well beside the teeth.',
    asked: [
      {
        ask: 'What holds the board?',
        listenFor: 'A clamp, not a hand near the teeth.',
      },
    ],
  },
  {
    tool: 'mallet',
    inShort: 'On a scrap, not on the piece.',
    asked: [
      {
        ask: 'What do you hit?',
        listenFor: 'A scrap laid on the joint, so that the piece gets no dents.',
      },
    ],
  },
  {
    tool: 'clamps',
    inShort: 'Snug, not crushing, and off only when the timer says so.',
    asked: [
      {
        ask: 'How tight?',
        listenFor:
          'Until small beads of glue come out and the joint is closed; more squeezes the glue away.',
      },
    ],
  },
  {
    tool: 'countersink',
    inShort: 'Stop when the hole is as wide as the head.',
    asked: [
      {
        ask: 'When is it deep enough?',
        listenFor: 'When the screw head would lie just below the wood.',
      },
    ],
  },
  {
    tool: 'sanding-block',
    inShort: 'With the grain, a few strokes on each edge.',
    asked: [
      {
        ask: 'Which way do you rub?',
        listenFor: 'Along the grain; across it leaves scratches that the sealer shows.',
      },
    ],
  },
  {
    tool: 'level',
    inShort: 'Read it, turn it end for end, read it again.',
    asked: [
      {
        ask: 'How do you know that the level itself is right?',
        listenFor: 'Turned end for end on the same spot it shows the same.',
      },
    ],
  },
  {
    tool: 'moisture-meter',
    inShort: 'Pins along the grain, away from the ends.',
    asked: [
      {
        ask: 'Where on the board do you measure?',
        listenFor: 'A foot or more from the ends, which dry first, with the pins along the grain.',
      },
    ],
  },
];
