import type { Mistake } from './mistake.js';
import { practice } from './sources.js';

/** Slips at the saw and with the chisel. */
export const CUTTING_MISTAKES: readonly Mistake[] = [
  {
    id: 'cut-short',
    title: 'Cut a little short',
    verdicts: [
      { when: 'a shorter piece of this section is still to be cut', verdict: 'fine after this' },
      { when: 'the gap is hidden, or 1/16 in (1.5 mm) or less', verdict: 'fine after this' },
      { when: 'it carries people or soil and no longer reaches its support', verdict: 'ruined' },
    ],
    look: [
      'Measure the piece again from the other end, with the tape that marked the others.',
      'Hold it in its place: does it still reach under its screws?',
    ],
    act: [
      'Stop the saw. If the stop moved, measure every piece since the last good one.',
      'Mark the piece with its new length and give it to the next shorter place in the cut list.',
      'Where all four of a set may be the same, cut all to the short one rather than pack one out.',
      'Remake it from the rack before you buy: tell the workbook that the piece is spoiled.',
    ],
    next: [
      'First piece from a new stop is measured before the second is cut.',
      'Brush the dust from the stop at every cut.',
      'Of all that is long enough to hold, cut the longest first: one that comes out short can become another part.',
    ],
    source: practice('recovering a short piece; one stop for equal pieces'),
  },
  {
    id: 'wrong-side',
    title: 'Cut on the wrong side of the line',
    verdicts: [
      { when: 'the piece is one blade too long', verdict: 'fine after this' },
      { when: 'it is one blade too short, about 1/8 in (3 mm), and shows', verdict: 'ruined' },
      { when: 'it is one blade too short where nobody sees it', verdict: 'fine after this' },
    ],
    look: [
      'The error is the width of the blade, 3/32 to 1/8 in: measure it, do not guess.',
      'Were other pieces cut to the same mark in the same way?',
    ],
    act: [
      'Too long: take the rest off against the stop, never freehand.',
      'Too short: go on as with a piece that was cut short, and look for a shorter place first.',
    ],
    next: [
      'Put an X on the waste side of every line, and let the blade touch only the X.',
      'Make a shallow test cut in scrap to see where the blade runs.',
    ],
    source: practice('marking the waste; kerf of usual blades'),
  },
  {
    id: 'notch-wide',
    title: 'Notch too wide',
    verdicts: [
      { when: 'the gap is 1/32 in (1 mm) or less', verdict: 'fine after this' },
      {
        when: 'the other board sits loose but its shoulder still bears',
        verdict: 'fine after this',
      },
      { when: 'the tongue beside it is split or thinner than the plan says', verdict: 'ruined' },
    ],
    look: [
      'Push the other board to one shoulder: is the gap on one side only?',
      'Look along the tongue for a crack at the inside corner.',
    ],
    act: [
      'Glue a slip of the same wood to the loose shoulder, grain the same way, and pare it when it has cured.',
      'Do not fill a carrying joint with putty; only epoxy bridges a gap, and it wants gloves.',
      'Keep the screw away from the slip: its hole goes through solid wood.',
    ],
    next: [
      'Mark the notch from the board that goes into it, not from its name.',
      'Saw inside the line and pare the last bit with a chisel.',
    ],
    source: practice('fitting laps: a glued slip beside a wide notch'),
  },
  {
    id: 'notch-deep',
    title: 'Notch too deep',
    verdicts: [
      {
        when: 'the board carries people or soil and less wood is left than the plan says',
        verdict: 'ruined',
      },
      { when: 'it only locates the boards and carries little', verdict: 'fine after this' },
    ],
    look: [
      'Measure what is left beside the notch, not the notch.',
      'Is the deep side up or down in use? The lower edge of a rail is the one that tears.',
      'Look for a saw cut that runs past the inside corner: a crack starts there.',
    ],
    act: [
      'Put a carrying rail aside and remake it; use it shorter, with the notch cut off.',
      'Elsewhere glue a slip to the bottom of the notch and pare it down to the line.',
      'A screw made for the planned thickness may now come out of the far side: hold it beside the joint first.',
    ],
    next: [
      'Set the depth of the saw on a scrap of the same board, and try the other board in it.',
      'Gang equal pieces and mark the depth on all edges at once.',
    ],
    source: practice('depth of laps; notched rails are judged by what is left'),
  },
  {
    id: 'mirrored',
    title: 'Cut as its mirror image',
    verdicts: [
      { when: 'the plan has a piece of the other hand', verdict: 'fine after this' },
      { when: 'a longer remake can be cut from the rack today', verdict: 'fine after this' },
      { when: 'it would have to be joined back with end grain to end grain', verdict: 'ruined' },
    ],
    look: [
      'Stop, and cut nothing more: is it the opposite hand of a piece that is still to be made?',
      'Turn it end for end and face for face before you call it wrong.',
      'What shorter parts fit between the wrong cuts?',
    ],
    act: [
      'Mark it with the other hand and change the cut list, not the wood.',
      'If it is joined back, end grain needs dowels or a plate besides glue, and it no longer carries people.',
      'Weigh a remake against the repair: for a short piece the remake is nearly always quicker.',
    ],
    next: [
      'Mark outside face and foot on both of a pair and stand them up as they will be before any angle.',
      'Cut the angle in scrap first and hold it in its place.',
    ],
    source: practice('pairs marked and stood up before an angle is cut'),
  },
];
