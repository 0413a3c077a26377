import type { Mistake } from './mistake.js';
import { practice, seen } from './sources.js';

/** Slips with screws, glue and the whole piece. */
export const JOINING_MISTAKES: readonly Mistake[] = [
  {
    id: 'screw-snapped',
    title: 'Screw snapped off',
    verdicts: [
      { when: 'the stub stands out far enough for locking pliers', verdict: 'fine after this' },
      { when: 'a new screw fits beside it with room to the edge', verdict: 'fine after this' },
      { when: 'the board has split along the stub', verdict: 'ruined' },
    ],
    look: [
      'Where did it break: under the head, or where thread and shank meet?',
      'Hold the bits beside a new screw. For a No. 8 in dense wood the pilot is 7/64 in, the hole for the shank 11/64 in.',
      'Is there room beside it that keeps the distances of the plan?',
    ],
    act: [
      'Goggles on: broken steel flies. Clamp the work.',
      'Stub out of the wood: turn it back with locking pliers, a little at a time.',
      'Stub inside: leave it, if a new screw can stand beside it; the old hole is plugged.',
      'In the way: drill round it with a plug cutter or hollow drill, glue a plug in, let it cure, bore new.',
      'Then go on with the right two bits, wax on the thread, and the clutch low.',
    ],
    next: [
      'Two bits and both depths: pilot for the thread, a wider hole for the shank.',
      'Brass and soft stainless in hardwood: cut the thread with a steel screw of the same size first.',
      'Wax, not soap: soap draws water.',
    ],
    source: seen('design-text', 'lead holes, 90 % of the root in dense wood; the rest is practice'),
  },
  {
    id: 'split-end',
    title: 'End split by a screw',
    verdicts: [
      { when: 'the crack is fine and closes under a clamp', verdict: 'fine after this' },
      { when: 'it runs through to the far face, or a carrying board has it', verdict: 'ruined' },
    ],
    look: [
      'Back the screw out and look how far the crack runs; a drop of water shows its end.',
      'Does it reach another screw or the notch?',
    ],
    act: [
      'Work outdoor glue into the crack with a thin blade, clamp it across, wait until it has cured.',
      'Bore a clearance hole and a pilot hole, farther from the end if the joint allows it.',
      'A carrying board that has split through is remade.',
    ],
    next: [
      'Bore before every screw within 4 in of an end.',
      'Blunt boards, dry wood and a missing clearance hole split; so does the last turn of the driver.',
    ],
    source: practice('splits near the ends of boards'),
  },
  {
    id: 'glue-skinned',
    title: 'Glue skinned over before it was closed',
    verdicts: [
      { when: 'it is still wet under the skin and nothing is closed', verdict: 'fine after this' },
      { when: 'the joint was closed on a dry skin', verdict: 'wait' },
    ],
    look: [
      'Touch it: does it still pull a wet thread?',
      'No beads along the seam after clamping: the joint is starved or was too late.',
    ],
    act: [
      'Not closed yet: scrape and wipe both faces down to clean wood, then brush fresh.',
      'Closed already: leave the clamps their full time, then try to rack the joint by hand. If it opens, scrape to bare wood and glue again.',
      'Where screws carry the joint anyway, drive them all.',
    ],
    next: [
      'Fewer joints in one go: count four fifths of the open time, less the minutes for the clamps.',
      'Time a dry run. Heat, sun and wind shorten the open time.',
      'One brushes, one closes.',
    ],
    source: practice('open time and batches; new glue wants bare wood'),
  },
  {
    id: 'glue-white',
    title: 'Glue dried white and powdery',
    verdicts: [
      { when: 'the joint comes apart or shows white, chalky glue', verdict: 'ruined' },
      { when: 'only the squeeze-out is white and the joint stayed warm', verdict: 'wait' },
    ],
    look: [
      'White and powdery means that it was too cold while it dried: it stays weak for good, warmth later does not help.',
      'How cold was the wood, not the air, and in the night as well?',
    ],
    act: [
      'Try the joint before anybody leans on it. What opens is scraped and sanded to bare wood and glued again in the warm.',
      'Glue from a bottle that has frozen: use it if it is creamy, throw it out if it is lumpy or pulls strings.',
      'Screws hold the piece together meanwhile, as a joint without glue.',
    ],
    next: [
      'Wood, glue and air above the number on the label for a day and the night, 36 h if only just above.',
      'Bring the wood in the day before.',
    ],
    source: seen('pva-guide', 'chalk temperature; the 24 to 36 h are glue maker advice'),
  },
  {
    id: 'rocks',
    title: 'It rocks on flat ground',
    verdicts: [
      { when: 'the gap under one foot is less than the feet can lose', verdict: 'fine after this' },
      { when: 'a joint has opened or a rail has split', verdict: 'ruined' },
    ],
    look: [
      'Try it on a floor that is known to be flat, or turn it by a quarter: does the gap stay with the foot?',
      'Lay two straight sticks across the frame and look over them: are they parallel?',
    ],
    act: [
      'A twist: loosen the screws at two opposite corners, clamp the frame flat, drive them again.',
      'Else wedge it until the seat is level, scribe every foot to the largest gap, and cut all to the line.',
      'One foot cut by the whole gap stops the rocking and leaves the seat out of level.',
    ],
    next: [
      'Look for twist with two sticks before the first screw, and screw opposite corners in turn.',
    ],
    source: practice('winding sticks; scribing all feet'),
  },
];
