import { changeCoefficient } from './dimensional-change.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, recalled, seen, workedOut } from './sources.js';
import type { Species } from './species.js';
import { densityFromGravity12 } from './wood-density.js';

const SHRINKAGE = seen('wood-handbook', 'Table 4-3, shrinkage');
const CHANGE = seen('wood-handbook', 'Table 13-5, dimensional change coefficients');
const DECAY = seen('fpl-0153', 'heartwood decay resistance groups');
const SOME_TANNIN = practice('some tannin');

/** A change coefficient that follows from the shrinkage, when no table prints it. */
function changeFrom(shrinkPercent: number, saturation = 30): Sourced<number> {
  const saturated = saturation === 30 ? '' : ` and saturation at ${saturation} %`;
  return sourced(
    Math.round(changeCoefficient(shrinkPercent, saturation) * 1e5) / 1e5,
    workedOut('wood-handbook', `form of Table 13-5 from ${shrinkPercent} % shrinkage${saturated}`),
  );
}

export const HARDWOODS: readonly Species[] = [
  {
    id: 'white-oak',
    name: 'White oak',
    alsoCalled: ['oak', 'american white oak'],
    kind: 'hardwood',
    gravity: sourced(0.73, recalled('nds', 'Table 12.3.3A, white oak')),
    density12: densityFromGravity12(sourced(0.68, recalled('wood-handbook', 'Table 5-3, at 12 %'))),
    shrinkTangential: sourced(10.5, SHRINKAGE),
    shrinkRadial: sourced(5.6, SHRINKAGE),
    changeTangential: sourced(0.00365, CHANGE),
    changeRadial: sourced(0.0018, CHANGE),
    durability: sourced('Heartwood resists decay well (EN 350 class 2 to 3).', DECAY),
    tannin: 'high',
    tanninSource: seen('fpl-stain', 'oak, redwood, cypress and cedar stain most'),
    dust: sourced(
      'Oak dust is linked to cancer of the nose in long exposure: mask and extraction every time.',
      seen('oak-dust', 'oak and beech'),
    ),
    treated: false,
  },
  {
    id: 'black-locust',
    name: 'Black locust',
    alsoCalled: ['robinia', 'locust', 'false acacia'],
    kind: 'hardwood',
    gravity: sourced(0.69, seen('synthmind', 'black locust, at 12 %')),
    density12: sourced(761, seen('frey-amon', 'robinia, density at 12 %')),
    shrinkTangential: sourced(7.2, recalled('wood-handbook', 'Table 4-3, shrinkage')),
    shrinkRadial: sourced(4.6, recalled('wood-handbook', 'Table 4-3, shrinkage')),
    changeTangential: sourced(0.00252, CHANGE),
    changeRadial: sourced(0.00158, CHANGE),
    durability: sourced('Exceptionally resistant (EN 350 class 1 to 2).', DECAY),
    tannin: 'some',
    tanninSource: SOME_TANNIN,
    dust: sourced(
      'Robinia dust: treat it as an irritant; no published note was at hand.',
      practice('care with dense hardwoods'),
    ),
    treated: false,
  },
  {
    id: 'teak',
    name: 'Teak',
    alsoCalled: [],
    kind: 'hardwood',
    gravity: sourced(0.55, seen('wood-handbook', 'Table 5-5b, on green volume')),
    density12: sourced(660, seen('wood-database', 'teak, mass and volume at 12 %')),
    shrinkTangential: sourced(5.3, seen('wood-database', 'teak')),
    shrinkRadial: sourced(2.6, seen('wood-database', 'teak')),
    changeTangential: sourced(0.00186, seen('nwfa', 'teak, tangential')),
    changeRadial: sourced(0.00101, recalled('wood-handbook', 'Table 13-5, teak')),
    durability: sourced(
      'EN 350 class 1 from old forest, 1 to 3 from plantations.',
      seen('nwpc', 'teak'),
    ),
    tannin: 'some',
    tanninSource: SOME_TANNIN,
    dust: sourced('Teak dust: skin rash and allergy are known.', practice('care with teak')),
    treated: false,
  },
  {
    id: 'ipe',
    name: 'Ipe',
    alsoCalled: ['lapacho'],
    kind: 'hardwood',
    gravity: sourced(0.91, seen('fpl-ipe', 'middle of 0.85 to 0.97, on green volume')),
    density12: sourced(1025, seen('wood-handbook', 'chapter 2, ipe, at 12 %')),
    shrinkTangential: sourced(10.1, seen('dekma', 'Tabebuia serratifolia')),
    shrinkRadial: sourced(7.4, seen('dekma', 'Tabebuia serratifolia')),
    changeTangential: changeFrom(10.1),
    changeRadial: changeFrom(7.4),
    durability: sourced('Very resistant (EN 350 class 1).', recalled('en350', 'ipe')),
    tannin: 'some',
    tanninSource: SOME_TANNIN,
    dust: sourced(
      'Ipe dust: skin rash and allergy are known (lapachol).',
      practice('care with ipe'),
    ),
    treated: false,
  },
  {
    id: 'iroko',
    name: 'Iroko',
    alsoCalled: [],
    kind: 'hardwood',
    gravity: sourced(0.55, seen('wood-database', 'iroko, on green volume')),
    density12: sourced(640, seen('cirad', 'iroko, density at 12 %')),
    shrinkTangential: sourced(5.4, seen('cirad', 'iroko')),
    shrinkRadial: sourced(3.5, seen('cirad', 'iroko')),
    changeTangential: changeFrom(5.4, 23),
    changeRadial: changeFrom(3.5, 23),
    durability: sourced('EN 350 class 1 to 2.', seen('cirad', 'iroko, quoting EN 350-2')),
    tannin: 'some',
    tanninSource: SOME_TANNIN,
    dust: sourced(
      'Iroko dust sensitizes and irritates; lung inflammation is reported.',
      seen('wood-database', 'iroko, health note'),
    ),
    treated: false,
  },
  {
    id: 'sweet-chestnut',
    name: 'Sweet chestnut',
    alsoCalled: ['chestnut', 'european chestnut'],
    kind: 'hardwood',
    gravity: sourced(0.49, workedOut('whitmores', '550 kg/m3 at 12 %, / 1.12 / 1000')),
    density12: sourced(550, workedOut('whitmores', 'middle of 540 (ESPEN) and 560')),
    shrinkTangential: sourced(6.5, seen('espen', 'sweet chestnut')),
    shrinkRadial: sourced(3.8, seen('espen', 'sweet chestnut')),
    changeTangential: changeFrom(6.5),
    changeRadial: changeFrom(3.8),
    durability: sourced('EN 350 class 1 to 2.', seen('espen', 'sweet chestnut')),
    tannin: 'high',
    tanninSource: seen('whitmores', 'acid: attacks metal when damp, stains black with iron'),
    dust: sourced(
      'No particular trouble is on record for this wood; its dust still belongs in a mask and a vacuum.',
      practice('general care with wood dust'),
    ),
    treated: false,
  },
];
