import { sectionNamed, sectionNames } from '../../materials/section.js';
import { formatBoardLength } from '../../measure/format-length.js';
import { parseLength } from '../../measure/length.js';
import { formatMoney, parseMoney } from '../../measure/money.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import type { Display, Mm } from '../../measure/quantities.js';
import type { Offer, OnHand } from '../values.js';
import { NONE, splitList } from './split-list.js';

const MOST = 120;
const MOST_ALIKE = 500;
const BOARD = /^(\d+(?:-?\d+\/\d+|\/\d+)?\s*[x×]\s*\d+(?:\s*mm)?)\s+(\S.*)$/i;
const OFFER_HINT = 'Write section, length and price, such as 2x4 8 ft @ 7.48.';
const ON_HAND_HINT = 'Write section, length and how many, such as 2x4 52 in *2.';

/** Boards to be bought: `2x4 8ft @ 7.48, 2x4 10ft @ 9.98`; the price may be left out. */
export function parseOffers(text: string): Parsed<readonly Offer[]> {
  return allOf(text, parseOffer);
}

/** Boards already there: `2x4 52in *2, 1x3 6ft`. */
export function parseOnHand(text: string): Parsed<readonly OnHand[]> {
  return allOf(text, parseBoard);
}

function allOf<T>(text: string, read: (piece: string) => Parsed<T>): Parsed<readonly T[]> {
  const all: T[] = [];
  for (const piece of splitList(text)) {
    const one = read(piece);
    if (!one.ok) return one;
    all.push(one.value);
  }
  if (all.length <= MOST) return parsed(all);
  return unreadable(`These are ${all.length} boards, more than ${MOST}.`, 'Leave some out.');
}

function parseOffer(text: string): Parsed<Offer> {
  const [board = '', price, more] = text.split('@');
  if (more !== undefined) {
    return unreadable(`${quoted(text)} has two prices.`, 'Put a comma and a space between boards.');
  }
  const stick = parseStick(board, OFFER_HINT);
  if (!stick.ok || price === undefined) return stick;
  const cents = parseMoney(price);
  return cents.ok ? parsed({ ...stick.value, cents: cents.value }) : cents;
}

function parseBoard(text: string): Parsed<OnHand> {
  const [, board = '', times = '1'] = /^(.*?)(?:\s*[*×]\s*(\d{1,6}))?\s*$/s.exec(text) ?? [];
  const stick = parseStick(board, ON_HAND_HINT);
  if (!stick.ok) return stick;
  const count = Number(times);
  if (count >= 1 && count <= MOST_ALIKE) return parsed({ ...stick.value, count });
  return unreadable(`${quoted(times)} boards is not from 1 to ${MOST_ALIKE}.`, ON_HAND_HINT);
}

type Stick = { readonly section: string; readonly length: Mm };

function parseStick(text: string, hint: string): Parsed<Stick> {
  const [, name = '', written = ''] = BOARD.exec(text.trim()) ?? [];
  if (name === '') return unreadable(`${quoted(text)} is not a board.`, hint);
  const section = sectionNamed(name);
  if (section === undefined) return unknownSection(name, hint);
  if (/^[\d\s./,-]+$/.test(written)) {
    return unreadable(`The length in ${quoted(text)} has no unit.`, hint);
  }
  const length = parseLength(written, 'inch');
  if (!length.ok) return length;
  if (length.value === 0) return unreadable(`${quoted(text)} has no length.`, hint);
  return parsed({ section: section.name, length: length.value });
}

/** A yard has several widths of one thickness: they help more than one guess. */
function unknownSection(name: string, hint: string): Parsed<never> {
  const [thickness = ''] = name.replace(/\s+/g, '').split(/[x×]/i);
  const alike = sectionNames().filter(known => known.startsWith(`${thickness}x`));
  const advice = alike.length === 0 ? hint : `There are ${alike.join(', ')}.`;
  return unreadable(`No section is sold as ${quoted(name)}.`, advice);
}

/** The offers as they are typed. */
export function offersText(offers: readonly Offer[], display: Display): string {
  const written = offers.map(({ section, length, cents }) => {
    const board = `${section} ${formatBoardLength(length, display)}`;
    return cents === undefined ? board : `${board} @ ${formatMoney(cents)}`;
  });
  return written.length === 0 ? NONE : written.join(', ');
}

/** The boards on hand as they are typed. */
export function onHandText(boards: readonly OnHand[], display: Display): string {
  const written = boards.map(({ section, length, count }) => {
    const board = `${section} ${formatBoardLength(length, display)}`;
    return count === 1 ? board : `${board} *${count}`;
  });
  return written.length === 0 ? NONE : written.join(', ');
}
