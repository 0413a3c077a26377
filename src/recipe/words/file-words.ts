import { capital } from '../../measure/capital.js';
import { quoted } from '../../measure/parsed.js';
import type { FileProblem } from '../problem.js';
import { choices, didYouMean, sentences, type WordsFor } from './wording.js';

/** How mistakes in the words of a file are said. */
export const FILE_WORDS: WordsFor<FileProblem> = {
  'file-too-large': ({ bytes, most }) => ({
    problem: `This file has ${Math.ceil(bytes / 1024)} KB, more than ${most / 1024} KB.`,
    hint: 'A project file is a few pages of text; check that it is the right one.',
  }),
  'not-yaml': ({ why, hint }) => ({ problem: why, hint }),
  'yaml-alias': () => ({
    problem: 'References with & and * are not read here.',
    hint: 'Write it out, or make an assembly and use it twice.',
  }),
  'yaml-tag': ({ tag }) => ({
    problem: `The tag ${quoted(tag.replace('tag:yaml.org,2002:', '!!'))} is not read here.`,
    hint: 'Leave it out, or put the whole text in quotes.',
  }),
  'too-deep': ({ most }) => ({
    problem: `More than ${most} levels lie inside each other.`,
    hint: 'A project file needs about eight; look for brackets that are not closed.',
  }),
  'other-format': ({ found }) => ({
    problem: `This recipe is written in format ${quoted(found)}, and format 1 is read here.`,
    hint: 'Write recipe: 1, or use the release that the file was made for.',
  }),
  'no-format': () => ({
    problem: 'This is not a recipe: it does not say which format it is in.',
    hint: 'Begin the file with the line recipe: 1.',
  }),
  'wrong-shape': ({ wanted, got }) => ({
    problem: `Here should be ${wanted}; it is ${got}.`,
    hint: '',
  }),
  'unknown-word': ({ word, near, words }) => ({
    problem: `${quoted(word)} is not a word that can stand here.`,
    hint: near === undefined ? choices(words) : didYouMean(near),
  }),
  'text-after-comma': ({ text }) => ({
    problem: `The comma before ${quoted(text)} ends the text.`,
    hint: 'Put a text that has a comma in quotes: { why: "red, not blue" }.',
  }),
  'missing-word': ({ word, of }) => ({
    problem: `${capital(of)} needs the word ${word}.`,
    hint: `Add a line ${word}: ...`,
  }),
  'duplicate-word': ({ word, firstLine }) => ({
    problem: `${quoted(word)} stands here a second time.`,
    hint: `It is in line ${firstLine} already; rename or remove one of them.`,
  }),
  'bad-id': ({ id, hyphens }) => ({
    problem: `${quoted(id)} cannot be a name.`,
    hint: hyphens
      ? 'Use small letters, digits, hyphens and underscores.'
      : 'Use small letters, digits and underscores, beginning with a letter, such as seat_rail.',
  }),
  'reserved-id': ({ id }) => ({
    problem: `${quoted(id)} means something else in a formula.`,
    hint: 'Choose another name.',
  }),
  'not-one-of': ({ text, near, words }) => ({
    problem: `${quoted(text)} cannot stand here.`,
    hint: sentences(didYouMean(near), choices(words)),
  }),
  'empty-text': () => ({
    problem: 'Nothing is written here.',
    hint: 'Write it, or leave the word out.',
  }),
  'text-too-long': ({ length, most }) => ({
    problem: `This text has ${length} characters, more than ${most}.`,
    hint: 'Say it in fewer words, or in several entries.',
  }),
  'too-many': ({ what, count, most }) => ({
    problem: `There are ${count} ${what}, more than ${most}.`,
    hint: 'Split the project into several.',
  }),
  'hole-open': () => ({
    problem: 'A { begins a formula here, and no } ends it.',
    hint: 'Close it, or write {{ for the brace itself.',
  }),
  'brace-alone': () => ({
    problem: 'This } closes nothing.',
    hint: 'Write }} for the brace itself.',
  }),
};
