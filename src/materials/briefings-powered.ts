import type { Briefing } from './briefings.js';

/** Tools that cut, bore, shoot or abrade by themselves. */
export const POWERED_BRIEFINGS: readonly Briefing[] = [
  {
    tool: 'miter-saw',
    caution: 'miter-saw',
    inShort: 'Hands stay 6-3/8 in from the blade, and nobody reaches in until it stands still.',
    asked: [
      {
        ask: 'How near may a hand come to the line of the blade?',
        listenFor: 'No nearer than 6-3/8 in; a shorter piece is clamped, or not cut.',
      },
      {
        ask: 'When does the head go up again?',
        listenFor: 'When the blade stands still, not before.',
      },
      {
        ask: 'What do you do when I am cutting and you want something?',
        listenFor:
          'Wait where I see you, and speak when the saw is quiet. Never touch an arm or a board.',
      },
    ],
  },
  {
    tool: 'circular-saw',
    caution: 'circular-saw',
    inShort: 'The cut has to open, both hands are on the saw, and nobody stands behind it.',
    asked: [
      {
        ask: 'What happens when the cut closes on the blade?',
        listenFor: 'It pinches, and the saw jumps back at whoever stands behind it.',
      },
      {
        ask: 'When may the saw be put down?',
        listenFor: 'When the blade has stopped.',
      },
    ],
  },
  {
    tool: 'table-saw',
    caution: 'table-saw',
    inShort: 'Guard on, nobody in line with the blade, and a push stick instead of fingers.',
    asked: [
      {
        ask: 'Where does nobody stand?',
        listenFor: 'In line with the blade: a pinched board comes back that way.',
      },
      {
        ask: 'What is done before a hand touches blade or guard?',
        listenFor: 'The plug is pulled.',
      },
    ],
  },
  {
    tool: 'jigsaw',
    caution: 'jigsaw',
    inShort: 'The work is clamped, and nothing of anybody is under the cut.',
    asked: [
      {
        ask: 'Where is the blade that you do not see?',
        listenFor: 'Under the board: no hand and no knee there.',
      },
      {
        ask: 'When is the saw lifted out of the cut?',
        listenFor: 'When the blade has stopped.',
      },
    ],
  },
  {
    tool: 'brad-nailer',
    caution: 'nailer',
    inShort: 'The holding hand is a foot away, and the nose never points at anybody.',
    asked: [
      {
        ask: 'How far from the nose is the hand that holds?',
        listenFor: '12 in or more: a brad can turn in the wood and come out at the side.',
      },
      {
        ask: 'It is jammed. What comes first?',
        listenFor: 'Air hose or battery off, then look.',
      },
      {
        ask: 'Who wears glasses?',
        listenFor: 'Everybody in reach, not only who holds it.',
      },
    ],
  },
  {
    tool: 'drill-driver',
    caution: 'drill',
    inShort:
      'The work is clamped, no hand is behind the hole, and the battery is off for a new bit.',
    asked: [
      {
        ask: 'Where must your other hand not be?',
        listenFor: 'Behind or under the hole, where the bit or the screw comes out.',
      },
      {
        ask: 'What comes off before you change the bit?',
        listenFor: 'The battery.',
      },
      {
        ask: 'You feel the bit breaking through. What do you do?',
        listenFor: 'Push less, and let it finish slowly.',
      },
    ],
  },
  {
    tool: 'sander',
    caution: 'sander',
    inShort: 'Mask and glasses on, flat on the wood, always moving.',
    asked: [
      {
        ask: 'What do you put on before it runs?',
        listenFor: 'Dust mask, glasses, hearing protection.',
      },
      {
        ask: 'What happens where it stands still?',
        listenFor: 'It digs a hollow: keep it moving, and let it stop before it is put down.',
      },
    ],
  },
];
