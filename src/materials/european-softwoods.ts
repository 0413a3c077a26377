import { changeFrom } from './dimensional-change.js';
import { sourced } from './sourced.js';
import { practice, seen, workedOut } from './sources.js';
import type { Species } from './species.js';
import { ANY_DUST, MILD_TANNIN, NO_TANNIN, PINE_DUST } from './wood-notes.js';

export const EUROPEAN_SOFTWOODS: readonly Species[] = [
  {
    id: 'european-larch',
    name: 'European larch',
    alsoCalled: ['larch', 'siberian larch'],
    kind: 'softwood',
    gravity: sourced(0.52, workedOut('european-wood', '583 kg/m3 at 12 %, / 1.12 / 1000')),
    density12: sourced(583, seen('european-wood', 'larch, density at 12 %')),
    shrinkTangential: sourced(7.8, seen('european-wood', 'larch')),
    shrinkRadial: sourced(3.3, seen('european-wood', 'larch')),
    changeTangential: sourced(0.003, seen('frey-amon', 'larch, differential swelling')),
    changeRadial: sourced(0.0014, seen('frey-amon', 'larch, differential swelling')),
    durability: sourced(
      'EN 350-2 class 3 to 4, class 4 in the 2016 edition: slightly durable in the open.',
      seen('nwpc', 'larch'),
    ),
    tannin: 'some',
    tanninSource: MILD_TANNIN,
    dust: ANY_DUST,
    treated: false,
  },
  {
    id: 'scots-pine',
    name: 'Scots pine',
    alsoCalled: ['european redwood', 'scotch pine'],
    kind: 'softwood',
    gravity: sourced(0.47, workedOut('betterwood', '530 kg/m3 at 12 %, / 1.12 / 1000')),
    density12: sourced(530, seen('betterwood', 'Scots pine, middle of 510 to 550')),
    shrinkTangential: sourced(7.7, practice('usual trade figure for Scots pine')),
    shrinkRadial: sourced(4.0, practice('usual trade figure for Scots pine')),
    changeTangential: sourced(0.0031, seen('betterwood', 'Scots pine, middle of 0.25 to 0.36 %')),
    changeRadial: sourced(0.0017, seen('betterwood', 'Scots pine, middle of 0.15 to 0.19 %')),
    durability: sourced(
      'EN 350 class 3 to 4: slightly to moderately durable.',
      seen('wolman', 'Scots pine'),
    ),
    tannin: 'none',
    tanninSource: NO_TANNIN,
    dust: PINE_DUST,
    treated: false,
  },
  {
    id: 'norway-spruce',
    name: 'Norway spruce',
    alsoCalled: ['spruce', 'european whitewood'],
    kind: 'softwood',
    gravity: sourced(0.39, workedOut('european-wood', '441 kg/m3 at 12 %, / 1.12 / 1000')),
    density12: sourced(441, seen('european-wood', 'Norway spruce, density at 12 %')),
    shrinkTangential: sourced(7.8, seen('european-wood', 'Norway spruce')),
    shrinkRadial: sourced(3.6, seen('european-wood', 'Norway spruce')),
    changeTangential: changeFrom(7.8),
    changeRadial: changeFrom(3.6),
    durability: sourced('EN 350 class 4: slightly durable.', seen('wolman', 'Norway spruce')),
    tannin: 'none',
    tanninSource: NO_TANNIN,
    dust: ANY_DUST,
    treated: false,
  },
];
