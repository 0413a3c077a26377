import type { Caution } from './cautions.js';
import { practice, recalled, seen } from './sources.js';

/** Cautions for tools that cut, bore, drive or abrade. */
export const CUTTING_CAUTIONS = {
  'miter-saw': {
    title: 'Miter saw',
    lines: [
      'Hands stay 6-3/8 in or more from the line of the blade; clamp any piece that would bring one nearer.',
      'Glasses and hearing protection on; no gloves, no loose sleeves, long hair tied.',
      'Let the blade reach full speed before the cut, and stop fully before the head goes up.',
      'Never cross your arms, and make one dry pass with the power off to see where the blade goes.',
      'The saw manual comes first.',
    ],
    source: seen(
      'miter-saw-manuals',
      '6 in and 6-3/8 in no-hands zones, the larger is used; gloves and arms: woodwork magazine 2008',
    ),
  },
  'small-pieces': {
    title: 'Short pieces',
    lines: [
      'Cut them off a long board; the part you hold stays long enough to keep your hand 6-3/8 in from the blade.',
      'Clamp what your hand would have to hold nearer than that, and leave the last bit of the board uncut.',
      'Wait until the blade stands still before you pick up the short piece.',
      'The saw manual comes first.',
    ],
    source: seen('miter-saw-manuals', '6-3/8 in: a piece that brings a hand nearer is too small'),
  },
  'circular-saw': {
    title: 'Circular saw',
    lines: [
      'Support the board so that the cut opens; a closing cut pinches the blade and throws the saw back.',
      'Blade 1/4 in deeper than the board, no more; lower guard free to snap shut.',
      'Both hands on the saw, body to the side of the line, cord behind you.',
      'Wait until the blade has stopped before you set the saw down. The saw manual comes first.',
    ],
    source: recalled('osha-hand-tools', 'portable circular saws'),
  },
  'table-saw': {
    title: 'Table saw',
    lines: [
      'Guard and riving knife on; blade just above the board; unplug before you touch either.',
      'Stand to the side of the blade line: a pinched board comes back at you.',
      'Against the fence or the miter gauge, never freehand and never both; a push stick within 6 in of the blade.',
      'The saw manual comes first.',
    ],
    source: recalled('osha-hand-tools', 'table saws, and common practice'),
  },
  ripping: {
    title: 'Ripping',
    lines: [
      'Straight, flat boards only, a straight edge along the fence: a twisted board pinches the blade and is thrown back.',
      'A push stick for every strip narrower than 6 in, and a stick on the last foot of any board; no hand between blade and fence.',
      'Nobody stands behind the board. Whoever holds the far end holds it up and does not pull.',
      'Never draw a board back out of a running blade: push it past, or switch off and wait.',
      'The saw manual comes first.',
    ],
    source: recalled('osha-hand-tools', 'table saws, ripping, and common practice'),
  },
  jigsaw: {
    title: 'Jigsaw',
    lines: [
      'Clamp the work, and look below the cut: the blade comes out underneath.',
      'Keep the base flat on the wood with both sides of the line supported.',
      'Let the blade stop before you lift. Unplug or take the battery off to change it.',
      'The jigsaw manual comes first.',
    ],
    source: recalled('osha-hand-tools', 'saws, and common practice with jigsaws'),
  },
  chisel: {
    title: 'Chisel',
    lines: [
      'Clamp the work. Both hands stay behind the edge, and it never points at anybody.',
      'A dull chisel needs force and slips: hone it first.',
      'Take thin slices, and lay the chisel down with its edge away from the table edge.',
      'Have somebody who knows show you first if it is new to you.',
    ],
    source: practice('chisel work'),
  },
  drill: {
    title: 'Drill and driver',
    lines: [
      'Clamp small parts; the holding hand stays out of the line where the bit or screw comes out.',
      'Ease off as the bit breaks through. Set the clutch low for driving.',
      'Take the battery off before you change a bit. The tool manual comes first.',
    ],
    source: practice('drilling, with the Power Tool Institute general rules'),
  },
  nailer: {
    title: 'Brad nailer',
    lines: [
      'Full sequential trigger only: the bump trigger doubles the injuries.',
      'The holding hand stays 12 in or more from the nose; brads turn with the grain and come out sideways.',
      'Glasses on for everybody in reach, hearing protection too.',
      'Take the air or battery off before clearing a jam. A brad in the hand is for a clinician.',
      'The nailer manual comes first.',
    ],
    source: seen('nail-gun-guide', 'sequential trigger; the 12 in is recalled from the same guide'),
  },
  sander: {
    title: 'Sander',
    lines: [
      'Dust mask, glasses, and the vacuum on the sander; sand outdoors if you can.',
      'Hold it flat, keep it moving, and let it stop before you put it down.',
      'Unplug or take the battery off to change the paper.',
      'The sander manual comes first.',
    ],
    source: seen('tool-institute', 'dust mask, eye protection, unplug before changing'),
  },
  noise: {
    title: 'Noise',
    lines: [
      'Hearing protection for every powered cut and every nail, for everyone near.',
      'At 100 dB(A) a day is used up in 15 minutes, and hand-held saws have been read at 100 to 118.',
      'Workplaces have rules of their own.',
    ],
    source: seen('noise-survey', '85 dB(A) for 8 h, halved for every 3 dB more'),
  },
  electric: {
    title: 'Power outdoors',
    lines: [
      'Plug in through a ground-fault interrupter (GFCI) and press its test button first.',
      'Three-wire outdoor cord, unwound, with its joints off wet ground; no chains of cords.',
      'No power tools in rain or on wet grass. Local electrical rules come first.',
    ],
    source: seen('outdoor-cords', 'GFCI outdoors, three-wire cords inspected before use'),
  },
} as const satisfies Record<string, Caution>;
