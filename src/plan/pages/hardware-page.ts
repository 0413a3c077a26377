import { formatFigure } from '../../measure/figure-text.js';
import type { Display } from '../../measure/quantities.js';
import { listWords } from '../../text/list.js';
import type { Block, Fact, Page } from '../../text/page.js';
import type { FastenerRow, Plan, SealerPlan } from '../plan.js';
import { dayBlocks, glueUpBlocks } from './glue-blocks.js';

/** Screws, brads, glue and sealer: what to buy and what they do where. */
export function hardwarePage(plan: Plan): Page {
  return {
    id: 'hardware',
    title: 'Screws, glue, sealer',
    blocks: [
      { kind: 'table', table: hardwareTable(plan) },
      { kind: 'heading', text: 'Where each goes' },
      { kind: 'table', table: fastenerTable(plan) },
      ...whereBlocks(plan.screws),
      { kind: 'list', items: fastenerNotes(plan.screws) },
      { kind: 'heading', text: 'Glue' },
      glueFacts(plan),
      { kind: 'list', items: plan.glue.notes },
      ...dayBlocks('glue', plan.glueDay),
      ...glueUpBlocks(plan),
      { kind: 'heading', text: 'Sealer' },
      sealerFacts(plan),
      { kind: 'list', items: plan.sealer.notes },
      ...dayBlocks('seal', plan.sealDay),
    ],
  };
}

/** What to buy besides boards, also for a spreadsheet. */
export function hardwareTable(plan: Plan) {
  return {
    id: 'hardware',
    columns: [
      { title: 'What', grow: true },
      { title: 'Needed', align: 'right' as const },
      { title: 'Buy', grow: true },
      { title: 'Note', grow: true },
    ],
    rows: plan.hardware.map(row => [
      row.what,
      formatFigure(row.count, plan.display),
      row.buy,
      row.note,
    ]),
  };
}

function fastenerTable(plan: Plan) {
  return {
    id: 'fasteners',
    columns: [
      { title: 'Joint', grow: true },
      { title: 'Count', align: 'right' as const },
      // Wide enough for "No. 10 x 3-1/2 in" in one line; a size must never be cut off.
      { title: 'What', grow: true, least: 17 },
      { title: 'Through', align: 'right' as const },
      { title: 'Bite', align: 'right' as const },
      { title: 'Clearance, pilot', grow: true },
    ],
    rows: plan.screws.map(row => [
      row.joint,
      String(row.count),
      row.what,
      formatFigure(row.through, plan.display),
      `${formatFigure(row.bite, plan.display)}${row.grain === 'end' ? ' end grain' : ''}`,
      row.drills.replace('clearance ', '').replace('pilot ', ''),
    ]),
  };
}

/** How far from ends and edges, for each different overlap. */
function whereBlocks(rows: readonly FastenerRow[]): readonly Block[] {
  const items = rows.flatMap(row => row.where.map(words => `${row.joint}: ${words}.`));
  if (items.length === 0) return [];
  return [
    { kind: 'heading', text: 'Where in each overlap, along the grain and across it' },
    { kind: 'list', items: [...new Set(items)] },
  ];
}

function fastenerNotes(rows: readonly FastenerRow[]): readonly string[] {
  const without = rows.flatMap(row =>
    row.without === undefined ? [] : [`${row.joint}: ${row.without}.`],
  );
  return [...new Set([...without, ...sharedNotes(rows)])];
}

/** Notes that several joints share are told once, with the names of all. */
function sharedNotes(rows: readonly FastenerRow[]): readonly string[] {
  const joints = new Map<string, Set<string>>();
  for (const { joint, notes, noRoom } of rows) {
    for (const note of [...noRoom, ...notes]) {
      const own = note.startsWith(`${joint}: `);
      const text = own ? note.slice(joint.length + 2) : note;
      const names = joints.get(text) ?? new Set();
      joints.set(text, own ? names.add(joint) : names);
    }
  }
  return [...joints].map(([text, names]) =>
    names.size === 0 ? text : `${listWords([...names])}: ${text}`,
  );
}

function glueFacts({ glue, display }: Plan): Block {
  return {
    kind: 'facts',
    facts: [
      { name: 'Kind', text: glue.kind },
      {
        name: 'Amount',
        text: `${formatFigure(glue.amount, display)} for ${formatFigure(glue.area, display)}; ${glue.buy}`,
        because: glue.amount.because,
      },
      {
        name: 'Close within',
        text: formatFigure(glue.openTime, display),
        because: glue.openTime.because,
      },
      {
        name: 'Clamps stay',
        text: formatFigure(glue.clampTime, display),
        because: glue.clampTime.because,
      },
      {
        name: 'Full strength',
        text: formatFigure(glue.cureTime, display),
        because: glue.cureTime.because,
      },
    ],
  };
}

/** Told where it is another choice than the fewest cans. */
function leastOverFact({ buy, leastOver }: SealerPlan, display: Display): readonly Fact[] {
  const { cans, over } = leastOver;
  if (cans === buy) return [];
  const left = formatFigure(over, display);
  return [{ name: 'Least left over', text: `${cans}, ${left} left`, because: over.because }];
}

function sealerFacts({ sealer, display }: Plan): Block {
  return {
    kind: 'facts',
    facts: [
      { name: 'Kind', text: sealer.kind },
      {
        name: 'Amount',
        text: `${formatFigure(sealer.amount, display)} for ${formatFigure(sealer.faces, display)} of faces and ${formatFigure(sealer.endGrain, display)} of end grain; ${sealer.buy}`,
        because: sealer.amount.because,
      },
      ...leastOverFact(sealer, display),
      {
        name: 'Wipe after',
        text: formatFigure(sealer.dwell, display),
        because: sealer.dwell.because,
      },
      { name: 'Dry after', text: formatFigure(sealer.dry, display), because: sealer.dry.because },
    ],
  };
}
