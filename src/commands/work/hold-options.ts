import { LOAD_TIME_FACTOR, type LoadTime } from '../../materials/design-factors-nds.js';
import { type Section, sectionNamed, sectionNames } from '../../materials/section.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import { nearestWord } from '../../measure/suggest.js';
import type { Given, WorkOption } from './rule.js';

export const SECTION_OPTION: WorkOption = {
  name: 'section',
  kind: 'word',
  say: 'the board as it is sold: 2x4, 5/4x6, 45x95',
  example: '2x4',
};

export const STANDS_OPTION: WorkOption = {
  name: 'on',
  kind: 'word',
  say: 'edge or flat: which side it stands on',
  example: 'edge',
  usual: 'edge',
  choices: ['edge', 'flat'],
};

export const WEATHER_OPTION: WorkOption = {
  name: 'weather',
  kind: 'word',
  say: 'wet outdoors, dry indoors or under a roof',
  example: 'wet',
  usual: 'wet',
  choices: ['wet', 'dry'],
};

export const TIME_OPTION: WorkOption = {
  name: 'time',
  kind: 'word',
  say: 'how long the load is there in all: ten-years for people, permanent for pots',
  example: 'ten-years',
  usual: 'ten-years',
  choices: Object.keys(LOAD_TIME_FACTOR),
};

/** What the options say about the use of a board. */
export function usedAs(given: Given) {
  return {
    stands: given.word('on') === 'flat' ? 'flat' : 'edge',
    wet: given.word('weather') === 'wet',
    time: timeOf(given),
  } as const;
}

export function timeOf(given: Given): LoadTime {
  const found = (Object.keys(LOAD_TIME_FACTOR) as LoadTime[]).find(
    time => time === given.word('time'),
  );
  if (found === undefined) throw new Error('a load time was let through');
  return found;
}

/** The section that was asked for, or what is wrong with its name. */
export function sectionOf(given: Given): Parsed<Section> {
  const name = given.word('section');
  const section = sectionNamed(name);
  if (section !== undefined) return parsed(section);
  const near = nearestWord(name, sectionNames());
  const usual = given.display.system === 'metric' ? '45x95' : '2x4';
  return unreadable(
    `--section: ${quoted(name)} is no board that yards sell under that name.`,
    near === undefined
      ? `For example --section ${usual}.`
      : `Did you mean --section ${near}? For example --section ${usual}.`,
  );
}

/** Problems of all that could not be read, told at once. */
export function problemsOf(...reads: readonly Parsed<unknown>[]): readonly string[] {
  return reads.flatMap(read => (read.ok ? [] : [`${read.problem} ${read.hint}`]));
}
