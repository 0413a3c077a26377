import { GRAINS, type Grain } from '../../materials/movement.js';
import { type Species, speciesNamed, speciesNames } from '../../materials/species.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import { nearestWord } from '../../measure/suggest.js';
import type { Given, WorkOption } from './rule.js';

/** Wetter than this and somebody misread the meter; sapwood can hold twice its own weight in water. */
const WETTEST = 200;

export const WOOD_OPTION: WorkOption = {
  name: 'wood',
  kind: 'word',
  say: 'the wood, by its trade name',
  example: '"white oak"',
};

export const GRAIN_OPTION: WorkOption = {
  name: 'grain',
  kind: 'word',
  say: 'flat, quarter, or unknown, which counts as whichever moves more',
  example: 'flat',
  usual: 'unknown',
  choices: GRAINS,
};

/** An option for a moisture percent. */
export function percentOption(name: string, say: string, example: string): WorkOption {
  return { name, kind: 'number', say, example, least: 0, most: WETTEST };
}

/** The wood that was asked for, or what is wrong with its name. */
export function woodOf(given: Given): Parsed<Species> {
  const name = given.word('wood');
  const wood = speciesNamed(name);
  if (wood !== undefined) return parsed(wood);
  const near = nearestWord(name, speciesNames());
  return unreadable(
    `--wood: ${quoted(name)} is not a wood known here.`,
    near === undefined
      ? 'For example --wood redwood, --wood "white oak" or --wood "treated pine".'
      : `Did you mean --wood "${near}"?`,
  );
}

export function grainOf(given: Given): Grain {
  const word = given.word('grain');
  const grain = GRAINS.find(it => it === word);
  if (grain === undefined) throw new Error(`grain ${word} was let through`);
  return grain;
}
